package org.fretgloss.annotator.read;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.audiveris.proxymusic.Attributes;
import org.audiveris.proxymusic.Backup;
import org.audiveris.proxymusic.Barline;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.Forward;
import org.audiveris.proxymusic.Harmony;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.Offset;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.Sound;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.time.Fraction;
import org.fretgloss.time.Meter;
import org.jspecify.annotations.Nullable;

/** Lays a part out in time: goes through its bars with divisions, backup, forward and chords. */
final class TimelineReader {

    private final PartSource source;
    private final Notices notices;
    private final Signatures signatures;
    private final OwedTime owed = new OwedTime();
    private final List<Measured> measures = new ArrayList<>();
    private final List<PlacedNote> notes = new ArrayList<>();
    private final List<Placed<Harmony>> harmonies = new ArrayList<>();
    private final List<Placed<Direction>> directions = new ArrayList<>();
    private final List<Placed<Sound>> sounds = new ArrayList<>();
    private final List<Placed<Attributes>> attributes = new ArrayList<>();

    private TimelineReader(PartSource source, Notices notices) {
        this.source = source;
        this.notices = notices;
        Fraction divisions = UndeclaredDivisions.of(source);
        if (!divisions.equals(Fraction.ONE)) {
            notices.say("the score does not say how its durations count, so the printed note values tell");
        }
        this.signatures = new Signatures(divisions, notices);
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
            OpenBar bar = new OpenBar(measure, measures.size(), signatures);
            owed.forgive();
            try {
                for (Object item : measure.getNoteOrBackupOrForward()) {
                    read(item, bar);
                }
            } catch (ScoreException e) {
                throw new ScoreException(place(bar) + e.getMessage(), e);
            } catch (ArithmeticException e) {
                throw new ScoreException(
                        place(bar) + "the note lengths are too fine to be counted; export the score again", e);
            }
            if (signatures.repeatsBars() && bar.isSilent()) {
                notices.say("a sign that repeats what stands before it is not played out", bar.label());
            }
            measures.add(bar.measured());
        }
        return new Timeline(source, measures, notes, harmonies, directions, sounds, attributes);
    }

    private String place(OpenBar bar) {
        Fraction beat = signatures.meter().orElse(Meter.COMMON).beatLength();
        return source.label() + ", bar " + bar.label() + " beat "
                + bar.clock().now().dividedBy(beat).plus(Fraction.ONE) + ": ";
    }

    private void read(Object item, OpenBar bar) throws ScoreException {
        MeasureClock clock = bar.clock();
        if (item instanceof Note note) {
            place(note, bar);
        } else if (item instanceof Backup backup) {
            owed.forgive();
            if (isUnread(backup)) {
                clock.back(clock.now());
            } else if (!clock.back(length(backup.getDuration()))) {
                notices.say("a voice that would begin before its bar begins with it", bar.label());
            }
        } else if (item instanceof Forward forward) {
            refuse(forward, "duration", "the duration %s of a gap is no " + KnownNumbers.LENGTH.name());
            clock.forward(length(forward.getDuration()));
        } else if (item instanceof Attributes declared) {
            refuse(
                    declared,
                    "divisions",
                    "the divisions of a quarter note are %s, which is no " + KnownNumbers.DIVISIONS.name());
            signatures.declare(declared, bar.label());
            bar.declared(signatures);
            attributes.add(new Placed<>(declared, bar.index(), clock.now()));
        } else if (item instanceof Barline barline) {
            bar.barline(barline);
        } else if (item instanceof Harmony harmony) {
            harmonies.add(new Placed<>(harmony, bar.index(), moment(clock, harmony, harmony.getOffset())));
        } else if (item instanceof Direction direction) {
            directions.add(new Placed<>(direction, bar.index(), moment(clock, direction, direction.getOffset())));
        } else if (item instanceof Sound sound) {
            sounds.add(new Placed<>(sound, bar.index(), moment(clock, sound, sound.getOffset())));
        }
    }

    private void place(Note note, OpenBar bar) throws ScoreException {
        if (note.getGrace() != null && note.getChord() == null) {
            giveBack(length(note.getDuration()), bar);
        }
        Fraction duration = note.getGrace() == null ? owed.returned(note, duration(note, bar)) : Fraction.ZERO;
        Fraction at = bar.strike(note, duration);
        int staff = Staves.number(note.getStaff());
        notes.add(new PlacedNote(note, bar.index(), at, duration, signatures.transposition(staff)));
    }

    /**
     * Some exporters give a grace note a duration, which it cannot have, and shorten the note before it by as much, or the
     * note after it: the one before, unless that is as long as its printed value says.
     */
    private void giveBack(Fraction stolen, OpenBar bar) {
        if (stolen.isZero()) {
            return;
        }
        Fraction now = bar.clock().now();
        List<Integer> before = endingAt(now, bar);
        if (before.stream().map(notes::get).allMatch(PlacedNote::isAsPrinted)) {
            owed.owe(stolen);
            return;
        }
        // Grace notes before this one stand at the same moment and move along.
        int first = before.get(before.size() - 1);
        notes.subList(first, notes.size()).replaceAll(note -> note.movingEnd(now, now.plus(stolen)));
        bar.clock().forward(stolen);
    }

    /** Where the notes stand, latest first, that were struck last in a bar and end at a moment. */
    private List<Integer> endingAt(Fraction moment, OpenBar bar) {
        List<Integer> ending = new ArrayList<>();
        for (int i = notes.size() - 1; i >= 0 && notes.get(i).bar() == bar.index(); i--) {
            if (notes.get(i).endsAt(moment)) {
                ending.add(i);
            } else if (notes.get(i).duration().isPositive()) {
                break;
            }
        }
        return ending;
    }

    private Fraction duration(Note note, OpenBar bar) throws ScoreException {
        if (isUnread(note)) {
            return withoutDuration(note);
        }
        Fraction written = length(note.getDuration());
        if (OpenBar.isWholeBarRest(note)) {
            // Many programs give every whole-bar rest the length of four quarters, whatever the meter.
            return signatures.meter().map(Meter::barLength).map(written::min).orElse(written);
        }
        if (written.isPositive()) {
            return written;
        }
        Optional<Fraction> printed = Lengths.printed(note);
        if (printed.isEmpty() && note.getRest() == null) {
            notices.say("a note without any length is left out", bar.label());
        }
        return printed.orElse(Fraction.ZERO);
    }

    /** How long a note or rest lasts whose duration cannot be read. */
    private Fraction withoutDuration(Note note) throws ScoreException {
        Optional<Fraction> told =
                OpenBar.isWholeBarRest(note) ? signatures.meter().map(Meter::barLength) : Lengths.printed(note);
        if (told.isEmpty()) {
            refuse(
                    note,
                    "duration",
                    "the duration %s of a note is no " + KnownNumbers.LENGTH.name() + ", and no note value is printed");
        }
        return told.orElse(Fraction.ZERO);
    }

    private Fraction moment(MeasureClock clock, Object bearer, @Nullable Offset offset) {
        return Optional.ofNullable(offset)
                .filter(written -> source.unread().of(bearer, "offset").isEmpty())
                .flatMap(written -> Numbers.fraction(written.getValue()))
                .map(value -> clock.now().plus(value.dividedBy(signatures.divisions())))
                .orElse(clock.now());
    }

    private Fraction length(@Nullable BigDecimal duration) {
        return Lengths.of(duration, signatures.divisions());
    }

    private boolean isUnread(Object element) {
        return source.unread().of(element, "duration").isPresent();
    }

    /** Without some numbers all that follows would stand at a wrong time. */
    private void refuse(Object element, String number, String complaint) throws ScoreException {
        Optional<String> written = source.unread().of(element, number);
        if (written.isPresent()) {
            throw new ScoreException(complaint.formatted(Notices.quoted(written.get())) + "; export the score again");
        }
    }
}
