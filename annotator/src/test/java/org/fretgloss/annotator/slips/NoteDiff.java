package org.fretgloss.annotator.slips;

import java.util.OptionalInt;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** What a slip made of a note. */
final class NoteDiff {

    private static final Pattern NOTE = Pattern.compile("<note\\b.*?</note>", Pattern.DOTALL);

    private NoteDiff() {}

    /** The written pitch of the first note that differs, as a MIDI number; an octave more or less tells no scale. */
    static OptionalInt soundingAfter(Slip slip) {
        int place = 0;
        for (MatchResult note : NOTE.matcher(slip.text()).results().toList()) {
            if (!note.group().equals(slip.score().notes().get(place).group())) {
                return new NoteText(note.group()).midi();
            }
            place++;
        }
        return OptionalInt.empty();
    }
}
