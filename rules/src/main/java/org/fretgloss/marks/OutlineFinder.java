package org.fretgloss.marks;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.fretgloss.analysis.Stretch;
import org.fretgloss.marks.OutlineRun.Tone;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.solo.Note;

/**
 * Finds the runs of chord tones in a stretch. A run goes on over one passing note; where two compete, the earlier run
 * is taken to its end and the next begins after the second. A run that does not hold as an outline leaves its notes
 * from the passing note on to a later one.
 */
final class OutlineFinder {

    private static final int WHOLE_TONE = 2;

    private final ChordSymbol chord;
    private final List<Tone> tones;

    OutlineFinder(Stretch stretch) {
        this.chord = stretch.chord();
        this.tones = tones(stretch);
    }

    /** The same pitch sounding again at once counts once. */
    private static List<Tone> tones(Stretch stretch) {
        List<Tone> tones = new ArrayList<>();
        for (Note note : stretch.notes()) {
            int last = tones.size() - 1;
            if (last >= 0 && tones.get(last).midi() == note.heardMidi()) {
                tones.set(last, tones.get(last).until(note));
            } else {
                tones.add(Tone.of(note, stretch.chord()));
            }
        }
        return tones;
    }

    /** The runs that hold, in order; they do not overlap. */
    List<OutlineRun> find(Predicate<OutlineRun> holds) {
        List<OutlineRun> found = new ArrayList<>();
        int start = 0;
        while (start < tones.size()) {
            if (!isChordTone(start)) {
                start++;
                continue;
            }
            int end = endOf(start);
            OutlineRun run = new OutlineRun(chord, tones.subList(start, end + 1));
            if (holds.test(run)) {
                found.add(run);
                start = end + 2;
            } else {
                start = afterPassingNote(start, end);
            }
        }
        return found;
    }

    /** The last chord tone that can be reached over at most one passing note. */
    private int endOf(int start) {
        boolean passed = false;
        int end = start;
        for (int i = start + 1; i < tones.size(); i++) {
            if (isChordTone(i)) {
                end = i;
            } else if (passed || !resolves(i)) {
                break;
            } else {
                passed = true;
            }
        }
        return end;
    }

    private int afterPassingNote(int start, int end) {
        int i = start;
        while (i <= end && isChordTone(i)) {
            i++;
        }
        return i + 1;
    }

    private boolean isChordTone(int i) {
        return tones.get(i).degree().isPresent();
    }

    /** Whether a note outside the chord goes on at once to a chord tone, by a semitone or a whole tone. */
    private boolean resolves(int i) {
        return i + 1 < tones.size() && isChordTone(i + 1) && tones.get(i).leapTo(tones.get(i + 1)) <= WHOLE_TONE;
    }
}
