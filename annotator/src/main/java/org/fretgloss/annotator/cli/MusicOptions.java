package org.fretgloss.annotator.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fretgloss.annotator.Request;
import org.fretgloss.annotator.config.Corrections;
import org.fretgloss.rule.Line;
import org.fretgloss.time.Fraction;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What a user can say about the music, and which marks are wanted. */
final class MusicOptions {

    @Mixin
    MusicGiven music = new MusicGiven();

    @Option(
            names = "--lines",
            split = ",",
            paramLabel = "LINE",
            converter = Converters.OfLine.class,
            description = "only these lines: box, moves, outline, notes, shape, phrases, degrees, chords, doubts")
    @Nullable List<Line> lines;

    @Option(
            names = "--add-lines",
            split = ",",
            paramLabel = "LINE",
            converter = Converters.OfLine.class,
            description = "these lines besides the usual ones: phrases, degrees, chords, doubts")
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
        return music.startsFormWithoutChords();
    }

    boolean writesDoubts() {
        return addedLines.contains(Line.DOUBTS) || (lines != null && lines.contains(Line.DOUBTS));
    }

    Request request() {
        return new Request(
                music.part(),
                music.given(),
                Optional.ofNullable(lines),
                addedLines,
                settings(),
                Corrections.NONE,
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
