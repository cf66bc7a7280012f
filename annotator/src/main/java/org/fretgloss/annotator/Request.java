package org.fretgloss.annotator;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fretgloss.analysis.Given;
import org.fretgloss.annotator.config.Corrections;
import org.fretgloss.rule.Line;

/**
 * What the user wants of a score.
 *
 * @param part name, id or 1-based number of the part that holds the solo; found where it is not said
 * @param given what the user says about the music
 * @param lines only these lines; where it is not said, those that are on by default, and the chords if the user gave
 *     them
 * @param addedLines lines besides
 * @param settings rule id to option name to text
 * @param corrections what the teacher decided about the score
 * @param roman Roman numerals instead of chord names on the chords line
 * @param ascii b # -> 1/2 instead of ♭ ♯ → ½ in the score
 */
public record Request(
        Optional<String> part,
        Given given,
        Optional<List<Line>> lines,
        List<Line> addedLines,
        Map<String, Map<String, String>> settings,
        Corrections corrections,
        boolean roman,
        boolean ascii) {

    /** Everything found, nothing said. */
    public static final Request PLAIN = new Request(Optional.empty(), Given.NOTHING);

    public Request {
        lines = lines.map(List::copyOf);
        addedLines = List.copyOf(addedLines);
        settings = Map.copyOf(settings);
    }

    /** The usual marks of a part, with what is said about the music. */
    public Request(Optional<String> part, Given given) {
        this(part, given, Optional.empty(), List.of(), Map.of(), Corrections.NONE, false, false);
    }

    /** The same with the teacher's decisions. */
    public Request with(Corrections decisions) {
        return new Request(part, given, lines, addedLines, settings, decisions, roman, ascii);
    }

    /** The same with options of rules set. */
    public Request with(Map<String, Map<String, String>> options) {
        return new Request(part, given, lines, addedLines, options, corrections, roman, ascii);
    }

    /** The same with something said about the music. */
    public Request with(Given music) {
        return new Request(part, music, lines, addedLines, settings, corrections, roman, ascii);
    }
}
