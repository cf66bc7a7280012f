package org.fretgloss.annotator.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fretgloss.annotator.Request;
import org.fretgloss.annotator.config.Corrections;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Rule;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What a user can say about the music, and which marks are wanted. */
final class MusicOptions {

    private static final RuleOption SPACE = new RuleOption("--space", "space", "from", "beats, such as 3 or 7/2");

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
            description = "mark silences from so many beats on; 3 where it is not said")
    @Nullable String space;

    @Option(names = "--curls", description = "write quarter-tone curls too")
    boolean curls;

    @Option(names = "--roman", description = "Roman numerals on the chords line")
    boolean roman;

    @Option(names = "--ascii", description = "write b # -> 1/2 for ♭ ♯ → ½")
    boolean ascii;

    /** What does not fit together, or does not suit a rule; none where all does. */
    Optional<String> complaint(List<Rule> rules) {
        return music.complaint(rules)
                .or(() -> Optional.ofNullable(space).flatMap(beats -> SPACE.complaint(beats, rules)));
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
        Map<String, Map<String, String>> settings = new HashMap<>(music.settings());
        if (space != null) {
            settings.putAll(SPACE.set(space));
        }
        if (curls) {
            settings.put("bend", Map.of("curls", "true"));
        }
        return settings;
    }
}
