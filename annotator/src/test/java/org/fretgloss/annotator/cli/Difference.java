package org.fretgloss.annotator.cli;

import java.util.List;
import java.util.Locale;

/**
 * One mark on which labels and what is found disagree.
 *
 * @param sort how they disagree
 * @param note the ordinal of the note that the mark begins on
 * @param rule whose mark it is
 * @param keys what differs, where both have the mark; otherwise none
 * @param explanation the same as a musician would say it
 */
record Difference(Sort sort, int note, String rule, List<String> keys, String explanation) {

    enum Sort {
        MISSING,
        UNEXPECTED,
        DIFFERENT;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    Difference {
        keys = List.copyOf(keys);
    }

    /** Such as {@code note 41 bend missing}, {@code note 41 bend different: text, chordTone}. */
    String name() {
        String what = "note " + note + " " + rule + " " + sort;
        return keys.isEmpty() ? what : what + ": " + String.join(", ", keys);
    }

    @Override
    public String toString() {
        return sort + ": " + explanation;
    }
}
