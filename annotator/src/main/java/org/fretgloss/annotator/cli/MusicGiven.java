package org.fretgloss.annotator.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fretgloss.analysis.Given;
import org.fretgloss.analysis.HomeScale;
import org.fretgloss.analysis.Progression;
import org.fretgloss.annotator.Request;
import org.fretgloss.rule.Rule;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** What a user can say about the music. */
final class MusicGiven {

    private static final RuleOption NECK = new RuleOption("--neck", "off-neck", "frets", "frets, such as 22");

    @Option(
            names = "--part",
            paramLabel = "NAME|ID|N",
            description = "the part that holds the solo, where it is not the obvious one")
    @Nullable String part;

    @Option(
            names = "--home",
            paramLabel = "\"TONIC SCALE\"",
            converter = Converters.OfHome.class,
            description = "the home scale, such as \"A minor pentatonic\"")
    @Nullable HomeScale home;

    @ArgGroup
    @Nullable Chords chords;

    /** Chords come from one of the two. */
    static final class Chords {
        @Option(
                names = "--chords",
                paramLabel = "BARS",
                converter = Converters.OfChords.class,
                description =
                        "the chords, such as \"A7 | D7 | A7 | %%\"; they repeat to the end and win over the score's")
        @Nullable Progression bars;

        @Option(
                names = "--form",
                paramLabel = "\"NAME KEY\"",
                converter = Converters.OfForm.class,
                description = "a blues form in a key, such as \"twelve-bar A\"; also quick-change, eight-bar,"
                        + " minor-twelve-bar and jazz-twelve-bar")
        @Nullable Progression form;

        Optional<Progression> progression() {
            return Optional.ofNullable(bars).or(() -> Optional.ofNullable(form));
        }
    }

    @Option(
            names = "--form-start",
            paramLabel = "BAR",
            description = "the bar in which the chords or the form first begin; found where it is not said")
    @Nullable String formStart;

    @Option(
            names = "--neck",
            paramLabel = "FRETS",
            description = "how many frets the neck has, for what is doubted about them; 24 where it is not said")
    @Nullable String neck;

    /** What does not fit together, or does not suit a rule; none where all does. */
    Optional<String> complaint(List<Rule> rules) {
        return complaint().or(() -> Optional.ofNullable(neck).flatMap(frets -> NECK.complaint(frets, rules)));
    }

    private Optional<String> complaint() {
        return formStart != null && progression().isEmpty()
                ? Optional.of("--form-start says where --chords or --form begin: give one of these too")
                : Optional.empty();
    }

    Optional<String> part() {
        return Optional.ofNullable(part);
    }

    Given given() {
        return new Given(Optional.ofNullable(home), progression(), Optional.ofNullable(formStart));
    }

    /** What is set by it, rule id to option name to text. */
    Map<String, Map<String, String>> settings() {
        return Optional.ofNullable(neck).map(NECK::set).orElse(Map.of());
    }

    /** This and nothing else said. */
    Request request() {
        return new Request(part(), given()).with(settings());
    }

    private Optional<Progression> progression() {
        return Optional.ofNullable(chords).flatMap(Chords::progression);
    }
}
