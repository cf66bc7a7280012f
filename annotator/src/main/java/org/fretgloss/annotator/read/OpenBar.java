package org.fretgloss.annotator.read;

import java.util.Optional;
import org.audiveris.proxymusic.BackwardForward;
import org.audiveris.proxymusic.Barline;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.YesNo;
import org.fretgloss.solo.KeySignature;
import org.fretgloss.time.Fraction;
import org.fretgloss.time.Meter;

/** The bar that is being read: how far, and what is known about it so far. */
final class OpenBar {

    private final String number;
    private final boolean implicit;
    private final int index;
    private final MeasureClock clock = new MeasureClock();
    private Optional<Meter> meter;
    private KeySignature key;
    private boolean holdsRests;
    private boolean holdsMore;
    private boolean isSilent = true;
    private boolean repeatsForward;
    private boolean repeatsBackward;

    OpenBar(ScorePartwise.Part.Measure measure, int index, Signatures signatures) {
        this.number =
                Optional.ofNullable(measure.getNumber()).map(String::strip).orElse("");
        this.implicit = measure.getImplicit() == YesNo.YES;
        this.index = index;
        this.meter = signatures.meter();
        this.key = signatures.key();
    }

    /** Its place among the part's bars, from 0. */
    int index() {
        return index;
    }

    /** How messages name it: by its number, or by its place counted from 1. */
    String label() {
        return number.isEmpty() ? String.valueOf(index + 1) : number;
    }

    MeasureClock clock() {
        return clock;
    }

    /** Places a note or rest; says when it begins. */
    Fraction strike(Note note, Fraction duration) {
        boolean wholeBarRest = isWholeBarRest(note);
        holdsRests |= wholeBarRest;
        holdsMore |= !wholeBarRest;
        isSilent &= note.getRest() != null;
        return note.getChord() == null ? clock.strike(duration) : clock.strikeAlong(duration);
    }

    /** A meter or key that is declared before anything sounds holds for the bar, a later one from the next. */
    void declared(Signatures signatures) {
        if (clock.filled().isZero()) {
            meter = signatures.meter();
            key = signatures.key();
        }
    }

    void barline(Barline barline) {
        if (barline.getRepeat() != null) {
            boolean forward = barline.getRepeat().getDirection() == BackwardForward.FORWARD;
            repeatsForward |= forward;
            repeatsBackward |= !forward;
        }
    }

    /** Whether nothing but rests stands in the bar so far. */
    boolean isSilent() {
        return isSilent;
    }

    Measured measured() {
        return new Measured(number, implicit, meter, key, filled(), repeatsForward, repeatsBackward);
    }

    private Fraction filled() {
        boolean rests = holdsRests && !holdsMore && !implicit;
        return rests ? meter.map(Meter::barLength).orElse(clock.filled()) : clock.filled();
    }

    static boolean isWholeBarRest(Note note) {
        return note.getRest() != null && note.getRest().getMeasure() == YesNo.YES;
    }
}
