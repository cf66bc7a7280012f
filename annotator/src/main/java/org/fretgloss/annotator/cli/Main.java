package org.fretgloss.annotator.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.fretgloss.annotator.Fretgloss;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;
import picocli.CommandLine.ParameterException;

/** The process: arguments in, exit code out. */
public final class Main {

    private Main() {}

    public static void main(String[] arguments) {
        System.exit(run(Console.system(), arguments));
    }

    /** Runs one command and gives its exit code. */
    static int run(Console console, String... arguments) {
        CommandLine command = new CommandLine(new TopCommand(), factory(console))
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setAbbreviatedSubcommandsAllowed(false)
                .setExpandAtFiles(false) // a score's name may begin with @
                .setOut(new PrintWriter(console.out(), true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(console.err(), true, console.errCharset()))
                .setParameterExceptionHandler((e, unused) -> usageError(console, e))
                .setExecutionExceptionHandler((e, failed, unused) -> Failures.tell(console, e, failed));
        command.getCommandSpec().usageMessage().footer(ExitCode.table());
        try {
            return command.execute(arguments);
        } catch (OutOfMemoryError e) {
            console.tell("fretgloss: the memory does not suffice; give more, as with JAVA_OPTS=-Xmx4g");
            return ExitCode.BAD_INPUT.number();
        }
    }

    private static int usageError(Console console, ParameterException e) {
        console.tell("fretgloss: " + UsageErrors.sentence(e) + " (see '"
                + e.getCommandLine().getCommandSpec().qualifiedName() + " --help')");
        return ExitCode.BAD_INPUT.number();
    }

    /** Commands take the console and the tool itself; everything else picocli makes. */
    private static IFactory factory(Console console) {
        IFactory usual = CommandLine.defaultFactory();
        return new IFactory() {
            @Override
            public <K> K create(Class<K> type) throws Exception {
                if (type == AnnotateCommand.class) {
                    return type.cast(new AnnotateCommand(console, Fretgloss::withFoundRules));
                }
                if (type == CheckCommand.class) {
                    return type.cast(new CheckCommand(console, Fretgloss::withFoundRules));
                }
                if (type == StripCommand.class) {
                    return type.cast(new StripCommand(console));
                }
                if (type == RulesCommand.class) {
                    return type.cast(new RulesCommand(console));
                }
                return usual.create(type);
            }
        };
    }
}
