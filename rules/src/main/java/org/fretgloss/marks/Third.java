package org.fretgloss.marks;

import java.util.Optional;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.marks.SemitoneMove.By;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.pitch.Degree;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.solo.Bend;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.SoundingTogether;

/** The minor third moving up to the major third: of the home, or of the chord of the moment. */
final class Third implements Rule {

    private static final Degree MINOR_THIRD = Degree.parse("♭3");
    private static final Degree MAJOR_THIRD = Degree.parse("3");

    /** Without a chord the same two notes may belong to another harmony. */
    private static final double SHARE_WITHOUT_CHORD = 0.75;

    /**
     * Whose third can move at a moment: the chord's that sounds, or, where no chord is known, the home tonic's.
     *
     * @param name the root below the third
     * @param chord the chord on it, where one is known
     * @param isHome whether it is the home tonic
     */
    private record Root(PitchClass name, Optional<ChordSymbol> chord, boolean isHome) {

        static Root under(SemitoneMove move, Analysis analysis) {
            PitchClass tonic = analysis.homeAt(move.first()).scale().tonic();
            Optional<ChordSymbol> chord = analysis.chordAt(move.first());
            PitchClass name = chord.map(ChordSymbol::root).orElse(tonic);
            return new Root(name, chord, name.chroma() == tonic.chroma());
        }

        /** Whether a move leads from its ♭3 to its 3; a chord without a 3 has no such move. */
        boolean hasThirdIn(SemitoneMove move) {
            return chord.map(ChordSymbol::hasMajorThird).orElse(true)
                    && Math.floorMod(move.fromMidi() - name.chroma(), 12) == MINOR_THIRD.chroma();
        }

        /** The chord's name where its third is not the home's. */
        Optional<String> label() {
            return chord.filter(sounds -> !isHome).map(ChordSymbol::name);
        }
    }

    @Override
    public Line line() {
        return Line.MOVES;
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        SoundingTogether sounding = SoundingTogether.of(analysis.solo());
        return SemitoneMoves.of(analysis.solo())
                .filter(move -> analysis.harmony()
                        .isSameChord(move.first().onset(), move.last().onset()))
                .filter(move -> !isUnderNoChord(move, analysis))
                .filter(move -> Root.under(move, analysis).hasThirdIn(move))
                .map(move -> found(analysis, move, Root.under(move, analysis), sounding));
    }

    /** Where the chords are known, a stretch without one is no home chord. */
    private static boolean isUnderNoChord(SemitoneMove move, Analysis analysis) {
        return analysis.harmony().isKnown() && analysis.chordAt(move.first()).isEmpty();
    }

    private static Finding found(Analysis analysis, SemitoneMove move, Root root, SoundingTogether sounding) {
        Finding.Builder finding = Finding.at(move.first())
                .to(move.last())
                .text(text(move, root, sounding))
                .explain(explanation(analysis, move, root))
                .confidence(move.by().confidence() * (root.chord().isPresent() ? 1 : SHARE_WITHOUT_CHORD))
                .value("by", move.by().toString())
                .value("of", root.isHome() ? "home" : "chord");
        if (move.by() == By.BEND) {
            finding.absorbing("bend", move.first());
        }
        return finding.build();
    }

    /** A bend's move keeps the bend's own words, so that its release and its manner are not lost. */
    private static String text(SemitoneMove move, Root root, SoundingTogether sounding) {
        if (move.by() == By.BEND) {
            BendWords words = bendWords(move.first(), root, sounding);
            return root.label().map(words::headed).orElseGet(words::whole);
        }
        return root.label().map(chord -> chord + " ").orElse(move.by().prefix()) + MINOR_THIRD + "→" + MAJOR_THIRD;
    }

    private static BendWords bendWords(Note note, Root root, SoundingTogether sounding) {
        Bend bend = note.bend().orElseThrow();
        return new BendWords(
                BendKind.of(note, bend, sounding.with(note)),
                bend,
                up -> Degree.named(note.midi() + up - root.name().chroma()));
    }

    private static String explanation(Analysis analysis, SemitoneMove move, Root root) {
        Pitch from = Pitch.spelled(move.fromMidi(), root.name().plus(MINOR_THIRD));
        Pitch to = Pitch.spelled(move.fromMidi() + 1, root.name().plus(MAJOR_THIRD));
        String whose = root.label().orElse("the home tonic " + root.name());
        String over = root.chord()
                .filter(chord -> root.isHome())
                .map(chord -> " over " + chord)
                .orElse("");
        return Places.onNeck(analysis, move.first()) + from + " moves up to " + to + " "
                + move.by().inWords() + ", the ♭3 of " + whose + " becoming its 3" + over + ": minor turns to major.";
    }
}
