package org.fretgloss.page;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fretgloss.rule.Gloss;
import org.fretgloss.solo.Note;
import org.fretgloss.time.Fraction;
import org.fretgloss.time.Glyphs;

/**
 * What an example says must be found: a place, and the text that stands there.
 *
 * @param bar the bar's number
 * @param beat counted from 1 in the meter's own beats
 * @param text none where the finding is not written
 */
public record Expectation(String bar, Fraction beat, Optional<String> text) {

    private static final Pattern FORM = Pattern.compile("=> *bar (\\S+) beat (\\S+): *(.+)");

    private static final String UNWRITTEN = "(unwritten)";

    /**
     * Reads "=> bar 1 beat 2½: full 4→5" or "=> bar 1 beat 3: (unwritten)".
     *
     * @throws NotationException if the line is no expectation
     */
    static Expectation parse(String line) {
        Matcher matcher = FORM.matcher(line);
        if (!matcher.matches()) {
            throw new NotationException("'" + line + "' should read '=> bar 1 beat 2½: text'");
        }
        String text = matcher.group(3).strip();
        return new Expectation(
                matcher.group(1), beat(matcher.group(2)), Optional.of(text).filter(given -> !given.equals(UNWRITTEN)));
    }

    private static Fraction beat(String text) {
        try {
            return Glyphs.parse(text);
        } catch (NumberFormatException e) {
            throw new NotationException("'" + text + "' is no beat: write 1, 2½ or 7/3", e);
        }
    }

    /** What was found, in the same words. */
    static Expectation of(Gloss gloss) {
        Note note = gloss.finding().note();
        return new Expectation(note.bar().number(), note.beat(), gloss.text());
    }

    @Override
    public String toString() {
        return "=> bar " + bar + " beat " + Glyphs.of(beat) + ": " + text.orElse(UNWRITTEN);
    }
}
