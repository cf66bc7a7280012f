package org.fretgloss.annotator.cli;

import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.fretgloss.page.RulePage;
import org.fretgloss.pitch.UnknownNameException;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Rulebook;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists the rules, or shows one rule's page. */
@Command(name = "rules", description = "Lists the rules; with an ID shows that rule's page.")
final class RulesCommand implements Callable<Integer> {

    private final Console console;

    @Spec
    @Nullable CommandSpec spec;

    @Parameters(arity = "0..1", paramLabel = "ID", description = "a rule, such as bend")
    @Nullable String id;

    @Option(names = "--help", usageHelp = true, description = "show this page")
    boolean help;

    RulesCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws Exception {
        Rulebook rulebook = Rulebook.load(RulesCommand.class.getClassLoader());
        String result = id == null ? list(rulebook) : page(rulebook, id);
        console.out().write(result.getBytes(StandardCharsets.UTF_8));
        console.out().flush();
        return ExitCode.DONE.number();
    }

    private static String list(Rulebook rulebook) {
        int width = rulebook.rules().stream()
                .mapToInt(rule -> rule.id().length())
                .max()
                .orElse(0);
        StringBuilder list = new StringBuilder();
        for (Rule rule : rulebook.rules()) {
            String sentence = RulePage.of(rule).map(RulePage::summary).orElse("has no page");
            list.append(rule.id())
                    .append(" ".repeat(width - rule.id().length() + 2))
                    .append(sentence)
                    .append('\n');
        }
        return list.toString();
    }

    private String page(Rulebook rulebook, String name) {
        try {
            Rule rule = rulebook.rule(name);
            return RulePage.of(rule).map(RulePage::text).orElse("the rule '" + name + "' has no page\n");
        } catch (UnknownNameException e) {
            throw new ParameterException(
                    Objects.requireNonNull(spec).commandLine(),
                    e.getMessage() + "; " + Nearest.hint(e.given(), e.known()));
        }
    }
}
