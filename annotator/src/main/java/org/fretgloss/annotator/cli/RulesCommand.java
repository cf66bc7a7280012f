package org.fretgloss.annotator.cli;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fretgloss.annotator.names.Nearest;
import org.fretgloss.page.RulePage;
import org.fretgloss.pitch.UnknownNameException;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Rulebook;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists the rules, each with the line it writes on, or shows one rule's page. */
@Command(
        name = "rules",
        versionProvider = TopCommand.OfVersion.class,
        description = "Lists the rules and the line each writes on; with an ID shows that rule's page.")
final class RulesCommand implements Callable<Integer> {

    private final Console console;

    @Spec
    @Nullable CommandSpec spec;

    @Parameters(arity = "0..1", paramLabel = "ID", description = "a rule, such as bend")
    @Nullable String id;

    @Mixin
    HelpOptions help = new HelpOptions();

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
        List<Rule> rules = rulebook.rules();
        int ids = widest(rules.stream().map(Rule::id));
        int lines = widest(rules.stream().map(rule -> rule.line().toString()));
        return rules.stream()
                .map(rule -> padded(rule.id(), ids)
                        + padded(rule.line().toString(), lines)
                        + RulePage.of(rule).map(RulePage::summary).orElse("has no page")
                        + '\n')
                .collect(Collectors.joining());
    }

    private static int widest(Stream<String> texts) {
        return texts.mapToInt(String::length).max().orElse(0);
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(width - text.length() + 2);
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
