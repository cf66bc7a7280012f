package org.fretgloss.marks;

import org.fretgloss.solo.Note;

/**
 * A step up by a semitone that leads directly from one pitch to the next.
 *
 * @param first the note that sounds the lower pitch
 * @param last the note that sounds the upper pitch; the same note where a bend makes the move
 * @param by how the upper pitch is reached
 */
record SemitoneMove(Note first, Note last, By by) {

    /** How a pitch is reached from the one before. */
    enum By {
        BEND("bend", "by a bend", "½ ", 0.95),
        HAMMER_ON("hammer-on", "by a hammer-on", "ham ", 0.95),
        SLIDE("slide", "by a slide", "sl ", 0.95),
        /** A grace note without hammer-on or slide. */
        GRACE("grace", "from a grace note", "gr ", 0.9),
        /** Two notes struck in a row may also be a line that only climbs through. */
        STRUCK("struck", "as two struck notes", "", 0.8);

        private final String word;
        private final String inWords;
        private final String prefix;
        private final double confidence;

        By(String word, String inWords, String prefix, double confidence) {
            this.word = word;
            this.inWords = inWords;
            this.prefix = prefix;
            this.confidence = confidence;
        }

        /** As a sentence says it: "by a hammer-on". */
        String inWords() {
            return inWords;
        }

        /** What stands before the degrees in the score, with a blank after it; empty for struck notes. */
        String prefix() {
            return prefix;
        }

        /** How sure it is that the move is meant as one. */
        double confidence() {
            return confidence;
        }

        /** "hammer-on". */
        @Override
        public String toString() {
            return word;
        }
    }

    /** MIDI number of the lower pitch. */
    int fromMidi() {
        return by == By.BEND ? first.midi() : first.endMidi();
    }
}
