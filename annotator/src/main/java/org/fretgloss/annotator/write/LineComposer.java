package org.fretgloss.annotator.write;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.ChordSpan;
import org.fretgloss.analysis.HomeScale;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.pitch.Numeral;
import org.fretgloss.rule.Gloss;
import org.fretgloss.rule.Line;
import org.fretgloss.solo.Note;

/**
 * Lays texts under notes: one text for each line and moment, several joined. Texts of findings come in their order; the
 * lines {@code degrees} and {@code chords} have no rule and are read off the analysis.
 *
 * <p>The degrees line names every note by what the ear takes it for, so a bend by its peak; a dead note has no degree.
 * The same text twice at one moment (an octave, a unison bend) stands once.
 */
public final class LineComposer {

    private static final String JOINT = " · ";

    private final Map<Integer, Integer> carriers;
    private final LineChoice choice;

    /** By element, then by line, what is said there; sets drop what is said twice at one moment. */
    private final Map<Integer, Map<Line, Set<String>>> said = new TreeMap<>();

    private LineComposer(Map<Integer, Integer> carriers, LineChoice choice) {
        this.carriers = carriers;
        this.choice = choice;
    }

    /**
     * Lays out all texts.
     *
     * @param analysis the solo and what it means
     * @param glosses what the rules found, in order
     * @param carriers ordinal of a note to the ordinal of the element that may bear its lyric; a note that none may bear
     *     is absent
     * @param choice which lines, and how
     */
    public static Composition compose(
            Analysis analysis, List<Gloss> glosses, Map<Integer, Integer> carriers, LineChoice choice) {
        LineComposer composer = new LineComposer(carriers, choice);
        glosses.forEach(composer::gloss);
        composer.degrees(analysis);
        composer.chords(analysis);
        return new Composition(
                composer.texts(), glosses.stream().filter(composer::isUncarried).toList());
    }

    private void gloss(Gloss gloss) {
        gloss.text().ifPresent(text -> say(gloss.line(), gloss.finding().note(), text));
    }

    private boolean isUncarried(Gloss gloss) {
        return gloss.text().isPresent() && !carries(gloss.finding().note());
    }

    private void degrees(Analysis analysis) {
        analysis.solo().notes().stream()
                .filter(note -> !note.isDead())
                .forEach(note -> say(Line.DEGREES, note, analysis.degreeOf(note).toString()));
    }

    /** Spans and notes both stand in order of time, so one walk through the notes serves all spans. */
    private void chords(Analysis analysis) {
        List<Note> notes =
                analysis.solo().notes().stream().filter(this::carries).toList();
        int next = 0;
        for (ChordSpan span : analysis.harmony().spans()) {
            while (next < notes.size() && notes.get(next).onset().isLessThan(span.start())) {
                next++;
            }
            if (next < notes.size() && notes.get(next).onset().isLessThan(span.end())) {
                Note first = notes.get(next);
                HomeScale home = analysis.homeAt(first).scale();
                span.chord().ifPresent(chord -> say(Line.CHORDS, first, nameOf(chord, home)));
            }
        }
    }

    private String nameOf(ChordSymbol chord, HomeScale home) {
        return choice.roman() ? Numeral.of(chord, home.tonic()) : chord.name();
    }

    private boolean carries(Note note) {
        return carriers.containsKey(note.ordinal());
    }

    private void say(Line line, Note note, String text) {
        if (choice.lines().contains(line) && carries(note)) {
            said.computeIfAbsent(carriers.get(note.ordinal()), element -> new EnumMap<>(Line.class))
                    .computeIfAbsent(line, first -> new LinkedHashSet<>())
                    .add(text);
        }
    }

    private List<LineText> texts() {
        UnaryOperator<String> spelling = choice.ascii() ? Ascii::of : UnaryOperator.identity();
        List<LineText> texts = new ArrayList<>();
        said.forEach((element, lines) -> lines.forEach(
                (line, parts) -> texts.add(new LineText(line, element, spelling.apply(String.join(JOINT, parts))))));
        return texts;
    }
}
