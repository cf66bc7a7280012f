package org.fretgloss.annotator.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fretgloss.analysis.Given;
import org.fretgloss.analysis.HomeScale;
import org.fretgloss.analysis.Progression;
import org.fretgloss.annotator.Request;
import org.fretgloss.rule.Line;
import org.fretgloss.time.Fraction;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** What a user can say about the music and the marks. */
final class MusicOptions {

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
            names = "--lines",
            split = ",",
            paramLabel = "LINE",
            converter = Converters.OfLine.class,
            description = "only these lines: box, moves, outline, notes, shape, degrees, chords")
    @Nullable List<Line> lines;

    @Option(
            names = "--add-lines",
            split = ",",
            paramLabel = "LINE",
            converter = Converters.OfLine.class,
            description = "these lines besides the usual ones: degrees, chords")
    List<Line> addedLines = new ArrayList<>();

    @Option(
            names = "--space",
            paramLabel = "BEATS",
            converter = Converters.OfBeats.class,
            description = "mark silences from so many beats on; 3 where it is not said")
    @Nullable Fraction space;

    @Option(names = "--curls", description = "write quarter-tone curls too")
    boolean curls;

    @Option(names = "--roman", description = "Roman numerals on the chords line")
    boolean roman;

    @Option(names = "--ascii", description = "write b # -> 1/2 for ♭ ♯ → ½")
    boolean ascii;

    boolean startsFormWithoutChords() {
        return formStart != null && progression().isEmpty();
    }

    private Optional<Progression> progression() {
        return Optional.ofNullable(chords).flatMap(Chords::progression);
    }

    Request request() {
        return new Request(
                Optional.ofNullable(part),
                new Given(Optional.ofNullable(home), progression(), Optional.ofNullable(formStart)),
                Optional.ofNullable(lines),
                addedLines,
                settings(),
                roman,
                ascii);
    }

    private Map<String, Map<String, String>> settings() {
        Map<String, Map<String, String>> settings = new HashMap<>();
        if (space != null) {
            settings.put("space", Map.of("from", space.toString()));
        }
        if (curls) {
            settings.put("bend", Map.of("curls", "true"));
        }
        return settings;
    }
}
