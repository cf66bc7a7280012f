package org.fretgloss.marks;

import java.util.List;
import java.util.Optional;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Home;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.pitch.Degree;
import org.fretgloss.solo.Bend;
import org.fretgloss.solo.Note;
import org.fretgloss.time.Fraction;

/** What a teacher says about a bend: how it is made and where, its pitches, and how the peak stands to the chord. */
final class BendExplanation {

    /** One and a half whole tones, in semitones. */
    private static final Fraction WIDE = Fraction.of(3);

    private static final String CAUTION = " A wide bend strains the hand: warm up first, stop if it hurts, and ask a"
            + " teacher or a physician if it goes on hurting.";

    private BendExplanation() {}

    static String of(Analysis analysis, Note note, Bend bend, BendKind kind, List<Note> others) {
        return Places.onNeck(analysis, note)
                + how(analysis, note, bend, kind)
                + "."
                + struckWith(analysis, note, kind, others)
                + against(analysis, note, kind)
                + (bend.width().isLessThan(WIDE) ? "" : CAUTION);
    }

    private static String how(Analysis analysis, Note note, Bend bend, BendKind kind) {
        String fretted = named(analysis, note, note.midi());
        String peak = named(analysis, note, note.heardMidi());
        String up = " from " + fretted + " up to " + peak;
        String down =
                note.endMidi() == note.heardMidi() ? "" : ", let down to " + named(analysis, note, note.endMidi());
        return switch (kind) {
            case BEND, BEND_RELEASE -> BendWords.sized("bend", bend) + up + down;
            case PRE_BEND, PRE_BEND_RELEASE ->
                BendWords.sized("pre-bend", bend) + ", " + fretted + " bent to " + peak + " before it is struck" + down;
            case REPEATED -> BendWords.sized("bend", bend) + up + ", let down and bent again on one stroke";
            case UNISON ->
                BendWords.sized("unison bend", bend) + up + ", the pitch that sounds on another string" + down;
            case HELD -> BendWords.sized("bend", bend) + up + ", held while other notes are struck over it" + down;
            case CURL -> "a curl, less than a semitone: " + fretted + " pushed a little sharp";
        };
    }

    /** In a double stop one string may be bent while the other is held, or both together. */
    private static String struckWith(Analysis analysis, Note note, BendKind kind, List<Note> others) {
        if (kind == BendKind.UNISON || kind == BendKind.HELD) {
            return "";
        }
        return others.stream()
                .filter(other -> other.onset().equals(note.onset()) && !other.sharesStringWith(note))
                .findFirst()
                .map(other -> " "
                        + named(analysis, other, other.midi())
                        + (other.bend().isPresent()
                                ? " is bent with it."
                                : " is struck with it and stays where it is: an oblique bend."))
                .orElse("");
    }

    private static String named(Analysis analysis, Note note, int midi) {
        Home home = analysis.homeAt(note);
        return home.spell(midi) + " (" + home.scale().degreeOf(midi) + ")";
    }

    private static String against(Analysis analysis, Note note, BendKind kind) {
        Optional<ChordSymbol> chord = analysis.chordAt(note);
        if (chord.isEmpty()) {
            return "";
        }
        String subject = kind == BendKind.CURL ? " Over %s it is " : " Over %s the peak is ";
        Optional<Degree> tone = analysis.chordToneOf(note);
        return subject.formatted(chord.get())
                + tone.map(degree -> "the " + degree + ", a chord tone.").orElse("no chord tone.");
    }
}
