package org.fretgloss.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Stretch;
import org.fretgloss.page.SoloText;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Settings;
import org.fretgloss.solo.Note;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class OutlineMarksTest {

    private static List<Finding> outlines(Analysis analysis) {
        return new Outline().examine(analysis, Settings.defaults()).toList();
    }

    private static Finding outline(String text) {
        List<Finding> found = outlines(SoloText.parse(text).analysis());
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    @Test
    void itsDegreesAreAllThereWhereTheTextIsCut() {
        Finding outline = outline("home: A minor pentatonic\nchords: A7\n| 5/4:1/2 5/7 4/5 4/7 3/6 r:3/2 |");
        assertThat(outline.text()).contains("A7: 3 5 ♭7 1 …");
        assertThat(outline.values()).isEqualTo(Map.of("chord", "A7", "degrees", List.of("3", "5", "♭7", "1", "3")));
    }

    @Test
    void aPitchStruckAgainBelongsToItButCountsOnce() {
        Finding outline = outline("home: A minor pentatonic\nchords: A7\n| 3/6:1/2 3/6 2/5 1/5 1/5 r:3/2 |");
        assertThat(outline.note().index()).isZero();
        assertThat(outline.lastNote().index()).isEqualTo(4);
        assertThat(outline.values()).containsEntry("degrees", List.of("3", "5", "1"));
    }

    @Test
    void thePassingNoteIsExplainedAndNotListed() {
        Finding outline = outline("home: A minor pentatonic\nchords: A7\n| 3/6:1 3/7 2/5 1/5 |");
        assertThat(outline.values()).containsEntry("degrees", List.of("3", "5", "1"));
        assertThat(outline.explanation())
                .contains("C♯ E A spell out A7, its 3 5 1.")
                .endsWith("D only passes between them.");
    }

    @Test
    void moreTonesMakeItSurerAndAPassingNoteLess() {
        String over = "home: A minor pentatonic\nchords: A7\n| ";
        double three = outline(over + "3/6:1 2/5 1/5 r |").confidence();
        double four = outline(over + "3/6:1 2/5 1/5 2/8 |").confidence();
        double passing = outline(over + "3/6:1 3/7 2/5 1/5 |").confidence();
        assertThat(passing).isLessThan(three).isGreaterThanOrEqualTo(0.5);
        assertThat(four).isGreaterThan(three);
    }

    /** Which pentatonic the chord is weighed against: C6 holds four notes of either, so three steps are no outline. */
    @ParameterizedTest
    @CsvSource({"A minor pentatonic, 0", "C major, 0", "C mixolydian, 0", "G major pentatonic, 1"})
    void aChordOfFourNotesOfTheHomePentatonicNeedsTwoLeaps(String home, int found) {
        SoloText text = SoloText.parse("home: " + home + "\nchords: C6\n| 2/5:1 2/8 1/5 r |");
        assertThat(outlines(text.analysis())).hasSize(found);
    }

    private static LongStream seeds() {
        return RandomLines.seeds();
    }

    @Test
    void theLinesMadeUpHoldManyWithAndWithoutPassingNotes() {
        List<Finding> all = seeds().boxed()
                .flatMap(seed -> outlines(RandomLines.of(seed)).stream())
                .toList();
        assertThat(all).hasSizeGreaterThan(100);
        assertThat(all)
                .extracting(outline -> outline.explanation().contains("passes"))
                .contains(true, false);
    }

    /** What every outline must be, worked out again from the definition. */
    @ParameterizedTest
    @MethodSource("seeds")
    void holdsThreeTonesAndAtMostOnePassingNote(long seed) {
        Analysis analysis = RandomLines.of(seed);
        for (Finding outline : outlines(analysis)) {
            List<Note> run = notes(analysis, outline);
            ChordSymbol chord = analysis.chordAt(outline.note()).orElseThrow();
            List<Note> tones = run.stream().filter(note -> isTone(chord, note)).toList();
            assertThat(run)
                    .allSatisfy(note -> assertThat(analysis.chordAt(note)).contains(chord));
            assertThat(tones).startsWith(outline.note()).endsWith(outline.lastNote());
            assertThat(pitchClasses(tones)).hasSizeGreaterThanOrEqualTo(3);
            assertThat(pitchClasses(tones))
                    .contains((chord.root().chroma() + chord.definingTone().chroma()) % 12);
            assertThat(run.stream()
                            .filter(note -> !isTone(chord, note))
                            .map(Note::heardMidi)
                            .distinct())
                    .hasSizeLessThanOrEqualTo(1);
            assertThat(run).extracting(Note::onset).doesNotHaveDuplicates();
        }
    }

    /** No three tones in a row with the defining one are missed where the pentatonic does not hold the chord anyway. */
    @ParameterizedTest
    @MethodSource("seeds")
    void missesNoPlainTriadInARow(long seed) {
        Analysis analysis = RandomLines.of(seed);
        Set<Note> found = new HashSet<>();
        outlines(analysis).forEach(outline -> found.addAll(notes(analysis, outline)));
        Stretch.of(analysis).stream()
                .filter(stretch -> !isMostlyPentatonic(analysis, stretch.chord()))
                .flatMap(OutlineMarksTest::triads)
                .forEach(triad -> assertThat(found).containsAll(triad));
    }

    private static Stream<List<Note>> triads(Stretch stretch) {
        ChordSymbol chord = stretch.chord();
        int defining = (chord.root().chroma() + chord.definingTone().chroma()) % 12;
        return IntStream.rangeClosed(0, stretch.notes().size() - 3)
                .mapToObj(i -> stretch.notes().subList(i, i + 3))
                .filter(three -> three.stream().allMatch(note -> isTone(chord, note)))
                .filter(three -> pitchClasses(three).size() == 3)
                .filter(three -> pitchClasses(three).contains(defining));
    }

    private static boolean isMostlyPentatonic(Analysis analysis, ChordSymbol chord) {
        return analysis
                        .home()
                        .scale()
                        .scale()
                        .pentatonic()
                        .notes(analysis.home().scale().tonic())
                        .stream()
                        .filter(note -> chord.contains(note.chroma()))
                        .count()
                >= 4;
    }

    private static List<Note> notes(Analysis analysis, Finding outline) {
        return analysis
                .solo()
                .notes()
                .subList(outline.note().index(), outline.lastNote().index() + 1)
                .stream()
                .filter(Note::isPitched)
                .toList();
    }

    private static boolean isTone(ChordSymbol chord, Note note) {
        return chord.contains(Math.floorMod(note.heardMidi(), 12));
    }

    private static Set<Integer> pitchClasses(List<Note> notes) {
        Set<Integer> classes = new HashSet<>();
        notes.forEach(note -> classes.add(Math.floorMod(note.heardMidi(), 12)));
        return classes;
    }
}
