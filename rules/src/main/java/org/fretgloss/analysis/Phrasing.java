package org.fretgloss.analysis;

import java.util.ArrayList;
import java.util.List;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;

/**
 * The phrases of a solo. A silence of a beat or more always parts two phrases; a long stretch without such a breath is
 * divided by {@link PhraseDivision}.
 *
 * @param phrases in order; together they hold every note once
 */
public record Phrasing(List<Phrase> phrases) {

    /** The shortest silence, in beats, that always begins a new phrase. */
    private static final Fraction BREATH = Fraction.ONE;

    public Phrasing {
        phrases = List.copyOf(phrases);
    }

    /**
     * Finds the phrases.
     *
     * @param silences the solo's silences, in order
     */
    static Phrasing of(Solo solo, List<Silence> silences) {
        List<Phrase> phrases = new ArrayList<>();
        BarCount bars = new BarCount(solo.bars());
        int from = 0;
        for (Silence silence : silences) {
            if (!silence.beats().isLessThan(BREATH)) {
                int to = silence.after().index();
                addDivided(solo.notes().subList(from, to), bars, phrases);
                from = to;
            }
        }
        addDivided(solo.notes().subList(from, solo.notes().size()), bars, phrases);
        return new Phrasing(phrases);
    }

    /** Adds the phrases of some notes between two breaths. */
    private static void addDivided(List<Note> notes, BarCount bars, List<Phrase> phrases) {
        if (notes.isEmpty()) {
            return;
        }
        List<Integer> starts = PhraseDivision.starts(MelodicLine.of(notes, bars));
        for (int i = 0; i < starts.size(); i++) {
            int end = i + 1 < starts.size() ? starts.get(i + 1) : notes.size();
            phrases.add(new Phrase(notes.subList(starts.get(i), end), i == 0));
        }
    }

    /** Whether the note opens a phrase. */
    public boolean startsAt(Note note) {
        return phrases.get(phraseOf(note)).first().index() == note.index();
    }

    /** Which phrase a note belongs to, counted from 0. */
    public int phraseOf(Note note) {
        int low = 0;
        int high = phrases.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (phrases.get(middle).first().index() > note.index()) {
                high = middle - 1;
            } else {
                low = middle;
            }
        }
        return low;
    }
}
