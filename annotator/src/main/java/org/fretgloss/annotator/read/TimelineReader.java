package org.fretgloss.annotator.read;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.audiveris.proxymusic.Attributes;
import org.audiveris.proxymusic.Backup;
import org.audiveris.proxymusic.BackwardForward;
import org.audiveris.proxymusic.Barline;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.Forward;
import org.audiveris.proxymusic.Harmony;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.Offset;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.Sound;
import org.audiveris.proxymusic.YesNo;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.solo.KeySignature;
import org.fretgloss.time.Fraction;
import org.fretgloss.time.Meter;
import org.jspecify.annotations.Nullable;

/** Lays a part out in time: goes through its bars with divisions, backup, forward and chords. */
final class TimelineReader {

    private final PartSource source;
    private final Notices notices;
    private final Signatures signatures;
    private final List<Measured> measures = new ArrayList<>();
    private final List<PlacedNote> notes = new ArrayList<>();
    private final List<Placed<Harmony>> harmonies = new ArrayList<>();
    private final List<Placed<Direction>> directions = new ArrayList<>();
    private final List<Placed<Sound>> sounds = new ArrayList<>();
    private final List<Placed<Attributes>> attributes = new ArrayList<>();

    private MeasureClock clock = new MeasureClock();

    private TimelineReader(PartSource source, Notices notices) {
        this.source = source;
        this.notices = notices;
        this.signatures = new Signatures(notices);
    }

    /**
     * Lays a part out.
     *
     * @throws ScoreException if a duration cannot be understood; the message names part and bar
     */
    static Timeline read(PartSource source, Notices notices) throws ScoreException {
        return new TimelineReader(source, notices).read();
    }

    private Timeline read() throws ScoreException {
        for (ScorePartwise.Part.Measure measure : source.measures()) {
            try {
                read(measure);
            } catch (ScoreException e) {
                throw new ScoreException(place(measure) + e.getMessage(), e);
            } catch (ArithmeticException e) {
                throw new ScoreException(
                        place(measure) + "the note lengths are too fine to be counted; export the score again", e);
            }
        }
        return new Timeline(source, measures, notes, harmonies, directions, sounds, attributes);
    }

    private String place(ScorePartwise.Part.Measure measure) {
        Fraction beat = signatures.meter().orElse(Meter.COMMON).beatLength();
        return source.label() + ", bar " + label(measure) + " beat "
                + clock.now().dividedBy(beat).plus(Fraction.ONE) + ": ";
    }

    private void read(ScorePartwise.Part.Measure measure) throws ScoreException {
        clock = new MeasureClock();
        boolean repeatsForward = false;
        boolean repeatsBackward = false;
        int firstNote = notes.size();
        Optional<Meter> meter = signatures.meter();
        KeySignature key = signatures.key();
        for (Object item : measure.getNoteOrBackupOrForward()) {
            if (item instanceof Note note) {
                place(note, label(measure));
            } else if (item instanceof Backup backup) {
                if (!clock.back(length(backup.getDuration()))) {
                    notices.say("a voice that would begin before its bar begins with it", label(measure));
                }
            } else if (item instanceof Forward forward) {
                clock.forward(length(forward.getDuration()));
            } else if (item instanceof Attributes declared) {
                signatures.declare(declared, label(measure));
                attributes.add(new Placed<>(declared, measures.size(), clock.now()));
                if (clock.filled().isZero()) {
                    meter = signatures.meter();
                    key = signatures.key();
                }
            } else if (item instanceof Barline barline && barline.getRepeat() != null) {
                boolean forward = barline.getRepeat().getDirection() == BackwardForward.FORWARD;
                repeatsForward |= forward;
                repeatsBackward |= !forward;
            } else {
                placeMark(item);
            }
        }
        measures.add(new Measured(
                Optional.ofNullable(measure.getNumber()).map(String::strip).orElse(""),
                measure.getImplicit() == YesNo.YES,
                meter,
                key,
                isWholeBarRest(firstNote) && measure.getImplicit() != YesNo.YES
                        ? meter.map(Meter::barLength).orElse(clock.filled())
                        : clock.filled(),
                repeatsForward,
                repeatsBackward));
    }

    private void place(Note note, String bar) throws ScoreException {
        Fraction duration = note.getGrace() == null ? duration(note, bar) : Fraction.ZERO;
        Fraction at = note.getChord() == null ? clock.strike(duration) : clock.strikeAlong(duration);
        int staff = Numbers.whole(note.getStaff()).orElse(1);
        notes.add(new PlacedNote(note, measures.size(), at, duration, signatures.transposition(staff)));
    }

    private Fraction duration(Note note, String bar) throws ScoreException {
        Fraction written = length(note.getDuration());
        if (isMeasureRest(note)) {
            // Many programs give every whole-bar rest the length of four quarters, whatever the meter.
            return signatures.meter().map(Meter::barLength).map(written::min).orElse(written);
        }
        if (written.isPositive()) {
            return written;
        }
        Optional<Fraction> printed = Lengths.printed(note);
        if (printed.isEmpty() && note.getRest() == null) {
            notices.say("a note without any length is left out", bar);
        }
        return printed.orElse(Fraction.ZERO);
    }

    private void placeMark(Object item) {
        int bar = measures.size();
        if (item instanceof Harmony harmony) {
            harmonies.add(new Placed<>(harmony, bar, shifted(harmony.getOffset())));
        } else if (item instanceof Direction direction) {
            directions.add(new Placed<>(direction, bar, shifted(direction.getOffset())));
        } else if (item instanceof Sound sound) {
            sounds.add(new Placed<>(sound, bar, shifted(sound.getOffset())));
        }
    }

    private Fraction shifted(@Nullable Offset offset) {
        return offset == null
                ? clock.now()
                : Numbers.fraction(offset.getValue())
                        .map(value -> clock.now().plus(value.dividedBy(signatures.divisions())))
                        .orElse(clock.now());
    }

    private Fraction length(@Nullable BigDecimal duration) throws ScoreException {
        return duration == null ? Fraction.ZERO : Lengths.of(duration, signatures.divisions());
    }

    private boolean isWholeBarRest(int firstNote) {
        return firstNote < notes.size()
                && notes.subList(firstNote, notes.size()).stream().allMatch(placed -> isMeasureRest(placed.note()));
    }

    private static boolean isMeasureRest(Note note) {
        return note.getRest() != null && note.getRest().getMeasure() == YesNo.YES;
    }

    /** How messages name a bar. */
    private String label(ScorePartwise.Part.Measure measure) {
        String number = measure.getNumber();
        return number == null || number.isBlank() ? String.valueOf(measures.size() + 1) : number.strip();
    }
}
