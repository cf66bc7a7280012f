package org.fretgloss.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import org.fretgloss.neck.StringFret;
import org.fretgloss.neck.Tuning;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Attack;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.KeySignature;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Part;
import org.fretgloss.solo.Solo;
import org.fretgloss.solo.Written;
import org.fretgloss.solo.WrittenSigns;
import org.fretgloss.time.Fraction;

/** Lays the bars of the notation out in time and counts their elements as a document would. */
final class SoloBuilder {

    private static final String VOICE = "1";

    private final Tuning tuning;
    private final IntFunction<Pitch> spelling;
    private final List<Bar> bars;
    private final List<Note> notes = new ArrayList<>();

    /** How many notes at the end of {@link #notes} the next tie makes longer. */
    private int tieable;

    private int ordinal;

    /** Index of the bar that the notes have come to. */
    private int reached;

    private SoloBuilder(Tuning tuning, IntFunction<Pitch> spelling, List<Bar> bars) {
        this.tuning = tuning;
        this.spelling = spelling;
        this.bars = bars;
    }

    /**
     * Builds a solo.
     *
     * @param spelling the pitch of a MIDI number
     * @param barsMayDiffer whether bars may be shorter or longer than their meter, as slips in a score are
     * @throws NotationException if a bar does not fill its meter, a tie has nothing to tie, or a string is not there
     */
    static Solo build(List<MeteredBar> written, Tuning tuning, IntFunction<Pitch> spelling, boolean barsMayDiffer) {
        SoloBuilder builder = new SoloBuilder(tuning, spelling, barsOf(written, barsMayDiffer));
        Fraction now = Fraction.ZERO;
        for (MeteredBar bar : written) {
            for (Event event : bar.events()) {
                builder.add(event, now);
                now = now.plus(event.duration());
            }
        }
        return builder.solo();
    }

    private static List<Bar> barsOf(List<MeteredBar> written, boolean barsMayDiffer) {
        List<Bar> bars = new ArrayList<>();
        Fraction start = Fraction.ZERO;
        int number = 1;
        for (MeteredBar bar : written) {
            Fraction filled = bar.filled();
            Fraction missing = bar.meter().barLength().minus(filled);
            Fraction lead = bars.isEmpty() && missing.isPositive() ? missing : Fraction.ZERO;
            if (lead.isPositive()) {
                number = 0;
            } else if (!missing.isZero() && !barsMayDiffer) {
                throw new NotationException("bar " + number + " holds " + filled + " quarter notes, and " + bar.meter()
                        + " asks for " + bar.meter().barLength());
            }
            bars.add(new Bar(
                    bars.size(),
                    Integer.toString(number++),
                    start,
                    filled,
                    filled,
                    lead,
                    bar.meter(),
                    KeySignature.NONE,
                    false,
                    false,
                    lead.isPositive()));
            start = start.plus(filled);
        }
        return bars;
    }

    private void add(Event event, Fraction onset) {
        if (event instanceof Event.Struck struck) {
            for (Stroke stroke : struck.strokes()) {
                notes.add(note(stroke, onset, struck));
            }
            tieable = struck.grace() ? 0 : struck.strokes().size();
        } else if (event instanceof Event.Tie tie) {
            tieOn(tie, onset);
        } else {
            ordinal++;
            tieable = 0;
        }
    }

    private Note note(Stroke stroke, Fraction onset, Event.Struck struck) {
        ordinal++;
        Pitch fretted = stroke.pitch().or(() -> stroke.at().map(this::pitchAt)).orElseThrow();
        Pitch pitch = stroke.written()
                .filter(written -> written.midi() == fretted.midi())
                .orElse(fretted);
        return new Note(
                0,
                ordinal,
                barAt(onset),
                onset,
                stroke.grace() ? Fraction.ZERO : stroke.duration().orElse(struck.duration()),
                pitch,
                stroke.at(),
                stroke.bend(),
                stroke.attack(),
                stroke.techniques(),
                stroke.grace(),
                VOICE,
                written(stroke, pitch));
    }

    private Written written(Stroke stroke, Pitch sounding) {
        Pitch pitch = stroke.written().orElse(sounding);
        boolean legato = stroke.attack() == Attack.HAMMERED_ON || stroke.attack() == Attack.PULLED_OFF;
        if (legato) {
            beginLegato();
        }
        WrittenSigns signs = new WrittenSigns(
                Optional.empty(), stroke.tiedTo(), false, false, legato, false, Optional.empty(), Optional.empty());
        return new Written(pitch, pitch.midi() - sounding.midi(), List.of(ordinal), stroke.tied(), signs);
    }

    /** The hammer-on or pull-off that ends on the next note begins on the one before it. */
    private void beginLegato() {
        if (!notes.isEmpty()) {
            Note from = notes.remove(notes.size() - 1);
            Written written = from.written();
            notes.add(from.with(new Written(
                    written.pitch(),
                    written.offset(),
                    written.elements(),
                    written.tieOpen(),
                    written.signs().beginningLegato())));
        }
    }

    private Pitch pitchAt(StringFret at) {
        if (!tuning.hasString(at.string())) {
            throw new NotationException("'" + at + "': the tuning has strings 1 to " + tuning.size());
        }
        return spelling.apply(tuning.midi(at));
    }

    /** The bar of a moment that lies not before the last one asked for. */
    private Bar barAt(Fraction onset) {
        while (reached < bars.size() - 1 && !onset.isLessThan(bars.get(reached).end())) {
            reached++;
        }
        return bars.get(reached);
    }

    private void tieOn(Event.Tie tie, Fraction onset) {
        if (tieable == 0) {
            throw new NotationException("a tie in bar " + barAt(onset).number() + " has no note before it");
        }
        for (int i = notes.size() - tieable; i < notes.size(); i++) {
            ordinal++;
            notes.set(i, longer(notes.get(i), tie.duration()));
        }
    }

    private Note longer(Note note, Fraction more) {
        List<Integer> elements = new ArrayList<>(note.written().elements());
        elements.add(ordinal);
        return new Note(
                note.index(),
                note.ordinal(),
                note.bar(),
                note.onset(),
                note.duration().plus(more),
                note.pitch(),
                note.at(),
                note.bend(),
                note.attack(),
                note.techniques(),
                note.grace(),
                note.voice(),
                new Written(
                        note.written().pitch(),
                        note.written().offset(),
                        elements,
                        note.written().tieOpen(),
                        note.written().signs()));
    }

    private Solo solo() {
        List<Note> sorted = notes.stream().sorted(Note.SOUNDING_ORDER).toList();
        List<Note> indexed = new ArrayList<>();
        sorted.forEach(note -> indexed.add(note.withIndex(indexed.size())));
        return new Solo("", new Part("P1", "Guitar"), tuning, true, bars, indexed, List.of(), List.of());
    }
}
