package org.fretgloss.page;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.fretgloss.time.Fraction;

/** What stands between two blanks of the notation: notes struck together, a rest, or a tie. */
sealed interface Event {

    /** Quarter notes until the next event; 0 for grace notes. */
    Fraction duration();

    /**
     * Notes struck together: {@code 2/8+1/8:1}. A note with a duration of its own, {@code 3/7b2:2+1/8:1}, sounds on
     * while the music goes on after the duration of the last.
     */
    record Struck(List<Stroke> strokes, Fraction duration) implements Event {

        public Struck {
            strokes = List.copyOf(strokes);
        }

        boolean grace() {
            return strokes.get(0).grace();
        }
    }

    /** {@code r:2}. */
    record Rest(Fraction duration) implements Event {}

    /** {@code -:2}: the notes before sound on. */
    record Tie(Fraction duration) implements Event {}

    /**
     * Reads one event.
     *
     * @param token the event's text
     * @param previous the duration of the event before, which holds where none is written
     * @throws NotationException if the text is no event
     */
    static Event parse(String token, Optional<Fraction> previous) {
        if (token.matches("[r-](:.*)?")) {
            Optional<Fraction> own =
                    token.length() > 1 ? Optional.of(readDuration(token.substring(2))) : Optional.empty();
            Fraction duration = durationOf(token, own.or(() -> previous));
            return token.charAt(0) == 'r' ? new Rest(duration) : new Tie(duration);
        }
        List<Stroke> strokes =
                Arrays.stream(token.split("\\+", -1)).map(Stroke::parse).toList();
        Stroke last = strokes.get(strokes.size() - 1);
        if (strokes.stream().anyMatch(stroke -> stroke.grace() != last.grace())) {
            throw new NotationException("'" + token + "' mixes grace notes with others");
        }
        if (last.grace()) {
            return new Struck(strokes, Fraction.ZERO);
        }
        return new Struck(strokes, durationOf(token, last.duration().or(() -> previous)));
    }

    private static Fraction durationOf(String token, Optional<Fraction> duration) {
        return duration.orElseThrow(
                () -> new NotationException("'" + token + "' has no duration, and none stands before it"));
    }

    /**
     * Reads a duration in quarter notes.
     *
     * @throws NotationException if the text is no fraction above 0
     */
    static Fraction readDuration(String text) {
        try {
            Fraction duration = Fraction.parse(text);
            if (duration.isPositive()) {
                return duration;
            }
        } catch (NumberFormatException e) {
            throw new NotationException("'" + text + "' is no duration: write 1, 1/2 or 3/2", e);
        }
        throw new NotationException("'" + text + "' is no duration: it should be more than 0");
    }
}
