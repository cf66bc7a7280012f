package org.fretgloss.marks;

import java.util.List;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Home;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Option;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.solo.Bend;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.SoundingTogether;
import org.fretgloss.solo.Technique;

/** A string bent by a finger: how wide, in what manner, from which degree to which. */
final class BendRule implements Rule {

    private static final Option<Boolean> CURLS =
            Option.ofFlag("curls", false, "whether curls (bends of less than a semitone) are written into the score");

    /** The score says that the note is bent. */
    private static final double WRITTEN = 0.95;

    /** That it is held or in unison follows from how long the notes are written, which transcribers take lightly. */
    private static final double BY_OVERLAP = 0.85;

    @Override
    public Line line() {
        return Line.MOVES;
    }

    @Override
    public List<Option<?>> options() {
        return List.of(CURLS);
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        SoundingTogether sounding = SoundingTogether.of(analysis.solo());
        boolean curls = settings.get(CURLS);
        return analysis.solo().notes().stream()
                .filter(note -> !note.isDead() && !note.has(Technique.WITH_BAR))
                .flatMap(note ->
                        note.bend().stream().map(bend -> found(analysis, note, bend, sounding.with(note), curls)));
    }

    private static Finding found(Analysis analysis, Note note, Bend bend, List<Note> others, boolean curls) {
        BendKind kind = BendKind.of(note, bend, others);
        Home home = analysis.homeAt(note);
        Finding.Builder finding = Finding.at(note)
                .explain(BendExplanation.of(analysis, note, bend, kind, others))
                .confidence(kind == BendKind.UNISON || kind == BendKind.HELD ? BY_OVERLAP : WRITTEN)
                .value("semitones", bend.width().toDouble())
                .value("kind", kind.toString())
                .value("from", home.spell(note.midi()))
                .value("to", analysis.spell(note))
                .value("fromDegree", home.scale().degreeOf(note.midi()))
                .value("toDegree", analysis.degreeOf(note));
        if (analysis.chordAt(note).isPresent()) {
            finding.value("chordTone", analysis.chordToneOf(note).isPresent());
        }
        if (kind != BendKind.CURL || curls) {
            finding.text(new BendWords(kind, bend, up -> home.scale().degreeOf(note.midi() + up)).whole());
        }
        return finding.build();
    }
}
