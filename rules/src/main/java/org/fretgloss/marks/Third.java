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

    /** The root whose third moves. */
    private record Owner(PitchClass root, Optional<ChordSymbol> chord, boolean isHome) {

        boolean owns(SemitoneMove move) {
            return Math.floorMod(move.fromMidi() - root.chroma(), 12) == MINOR_THIRD.chroma();
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
                .flatMap(move -> owners(analysis, move)
                        .filter(owner -> owner.owns(move))
                        .limit(1)
                        .map(owner -> found(analysis, move, owner, sounding)));
    }

    /** Whose third can move here: the home's unless another chord sounds than a major one on its tonic, the chord's. */
    private static Stream<Owner> owners(Analysis analysis, SemitoneMove move) {
        Optional<ChordSymbol> chord = analysis.chordAt(move.first());
        PitchClass tonic = analysis.home().scale().tonic();
        Stream<Owner> home = chord.map(ChordSymbol::root).orElse(tonic).chroma() == tonic.chroma()
                ? Stream.of(new Owner(tonic, chord, true))
                : Stream.of();
        Stream<Owner> own = chord.stream().map(sounds -> new Owner(sounds.root(), chord, false));
        return Stream.concat(home, own)
                .filter(owner -> chord.map(ChordSymbol::hasMajorThird).orElse(true));
    }

    private static Finding found(Analysis analysis, SemitoneMove move, Owner owner, SoundingTogether sounding) {
        Finding.Builder finding = Finding.at(move.first())
                .to(move.last())
                .text(text(move, owner, sounding))
                .explain(explanation(analysis, move, owner))
                .confidence(move.by().confidence() * (owner.chord().isPresent() ? 1 : SHARE_WITHOUT_CHORD))
                .value("by", move.by().toString())
                .value("of", owner.isHome() ? "home" : "chord");
        if (move.by() == By.BEND) {
            finding.absorbing("bend", move.first());
        }
        return finding.build();
    }

    /** A bend's move keeps the bend's own words, so that its release and its manner are not lost. */
    private static String text(SemitoneMove move, Owner owner, SoundingTogether sounding) {
        Optional<String> chord =
                owner.isHome() ? Optional.empty() : owner.chord().map(ChordSymbol::name);
        Optional<Bend> bend = move.by() == By.BEND ? move.first().bend() : Optional.empty();
        return bend.map(made -> bendText(move.first(), made, owner, sounding))
                .map(made -> chord.map(made::headed).orElseGet(made::whole))
                .orElseGet(() ->
                        chord.map(name -> name + " ").orElse(move.by().prefix()) + MINOR_THIRD + "→" + MAJOR_THIRD);
    }

    private static BendWords bendText(Note note, Bend bend, Owner owner, SoundingTogether sounding) {
        return new BendWords(
                BendKind.of(note, bend, sounding.with(note)),
                bend,
                up -> Degree.named(note.midi() + up - owner.root().chroma()));
    }

    private static String explanation(Analysis analysis, SemitoneMove move, Owner owner) {
        Pitch from = Pitch.spelled(move.fromMidi(), owner.root().plus(MINOR_THIRD));
        Pitch to = Pitch.spelled(move.fromMidi() + 1, owner.root().plus(MAJOR_THIRD));
        String whose = owner.isHome()
                ? "the home tonic " + owner.root()
                : owner.chord().orElseThrow().name();
        String over =
                owner.isHome() ? owner.chord().map(chord -> " over " + chord).orElse("") : "";
        return Places.onNeck(analysis, move.first()) + from + " moves up to " + to + " "
                + move.by().inWords() + ", the ♭3 of " + whose + " becoming its 3" + over + ": minor turns to major.";
    }
}
