package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.audiveris.proxymusic.Notations;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.NoteheadValue;
import org.audiveris.proxymusic.StartStop;
import org.audiveris.proxymusic.Tied;
import org.audiveris.proxymusic.TiedType;
import org.audiveris.proxymusic.YesNo;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.neck.StringFret;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Technique;
import org.fretgloss.time.Fraction;

/** The note elements of a part that sound; rests, cues and unpitched percussion are passed over. */
final class ElementReader {

    private final List<Bar> bars;
    private final ParsedScore score;
    private final PlayingSpans spans;
    private final Unread unread;
    private final Notices notices;

    private ElementReader(List<Bar> bars, ParsedScore score, PlayingSpans spans, Unread unread, Notices notices) {
        this.bars = bars;
        this.score = score;
        this.spans = spans;
        this.unread = unread;
        this.notices = notices;
    }

    /**
     * The elements in the order of the document.
     *
     * @throws ScoreException if a moment cannot be counted exactly
     */
    static List<NoteElement> read(Timeline part, List<Bar> bars, ParsedScore score, Notices notices)
            throws ScoreException {
        ElementReader reader = new ElementReader(
                bars, score, PlayingSpans.of(part, bars), part.source().unread(), notices);
        List<NoteElement> elements = new ArrayList<>();
        for (PlacedNote placed : part.notes()) {
            try {
                reader.read(placed).ifPresent(elements::add);
            } catch (ArithmeticException e) {
                throw new ScoreException(
                        part.source().label() + ", bar "
                                + bars.get(placed.bar()).number()
                                + ": the note lengths are too fine to be counted; export the score again",
                        e);
            }
        }
        return List.copyOf(elements);
    }

    private Optional<NoteElement> read(PlacedNote placed) {
        Note note = placed.note();
        boolean grace = note.getGrace() != null;
        Bar bar = bars.get(placed.bar());
        if (note.getRest() != null || (!grace && placed.duration().isZero())) {
            return Optional.empty();
        }
        if (note.getCue() != null) {
            notices.say("cue notes, which another instrument plays, are left out", bar.number());
            return Optional.empty();
        }
        Optional<Pitch> pitch = WrittenPitch.of(note.getPitch(), unread);
        Optional<StringFret> place = PlaceReader.read(note);
        if (isSlash(note) || (pitch.isEmpty() && place.isEmpty())) {
            notices.say(whyLeftOut(note), bar.number());
            return Optional.empty();
        }
        if (place.isEmpty() && Numbers.isBroken(note.getPitch().getAlter())) {
            notices.say("a pitch between two semitones is read as the one nearer to its letter", bar.number());
        }
        Fraction onset = Exact.checked(bar.start().plus(placed.at()));
        Exact.checked(onset.plus(placed.duration()));
        return Optional.of(new NoteElement(
                score.ordinal(note),
                onset.equals(bar.end()) ? barAfter(bar) : bar,
                onset,
                placed.duration(),
                Staves.number(note.getStaff()),
                Optional.ofNullable(note.getVoice()).map(String::strip).orElse("1"),
                note.getChord() != null,
                grace,
                note.getPrintObject() == YesNo.NO,
                hasTie(note, StartStop.START),
                hasTie(note, StartStop.STOP),
                pitch,
                place,
                placed.transposition(),
                marks(placed, onset)));
    }

    /** A slash says only that something is played to the chord. */
    private static boolean isSlash(Note note) {
        return note.getNotehead() != null && note.getNotehead().getValue() == NoteheadValue.SLASH;
    }

    private static String whyLeftOut(Note note) {
        if (isSlash(note)) {
            return "rhythm slashes are left out";
        }
        return note.getUnpitched() == null
                ? "a note without a readable pitch is left out"
                : "percussion notes without pitch are left out";
    }

    /** Grace notes at the end of a bar lean on the first note of the next. */
    private Bar barAfter(Bar bar) {
        return bars.get(Math.min(bar.index() + 1, bars.size() - 1));
    }

    private Marks marks(PlacedNote placed, Fraction onset) {
        Marks marks = MarksReader.read(placed.note(), unread);
        if (placed.note().getUnpitched() != null) {
            // An unpitched note that has a string is a muted one.
            marks = marks.and(Technique.DEAD);
        }
        if (score.hasVibrato(placed.note())) {
            marks = marks.and(Technique.VIBRATO);
        }
        for (Technique technique : spans.at(onset)) {
            marks = marks.and(technique);
        }
        return marks;
    }

    private static Stream<Object> notations(Note note) {
        return note.getNotations().stream()
                .map(Notations::getTiedOrSlurOrTuplet)
                .flatMap(List::stream);
    }

    /** The tie that sounds and the tie that is drawn mean the same; programs write either or both. */
    private static boolean hasTie(Note note, StartStop end) {
        TiedType drawn = end == StartStop.START ? TiedType.START : TiedType.STOP;
        return note.getTie().stream().anyMatch(tie -> tie.getType() == end)
                || notations(note)
                        .filter(Tied.class::isInstance)
                        .map(item -> ((Tied) item).getType())
                        .anyMatch(type -> type == drawn || type == TiedType.CONTINUE);
    }
}
