package org.fretgloss.annotator.slips;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.fretgloss.analysis.Given;
import org.fretgloss.annotator.Fretgloss;
import org.fretgloss.annotator.Request;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.rule.Gloss;
import org.fretgloss.rule.Severity;

/** Scores of a few bars, written out by hand in 4/4 at one division a quarter, and the doubts about them. */
final class TrapScore {

    private static final Fretgloss FRETGLOSS = Fretgloss.withFoundRules();

    /** Standard tuning, as a score says it: line 1 is string 6. */
    static final String TUNING = "<staff-details><staff-lines>6</staff-lines>"
            + staffTuning(1, "E", 2)
            + staffTuning(2, "A", 2)
            + staffTuning(3, "D", 3)
            + staffTuning(4, "G", 3)
            + staffTuning(5, "B", 3)
            + staffTuning(6, "E", 4)
            + "</staff-details>";

    private TrapScore() {}

    private static String staffTuning(int line, String step, int octave) {
        return "<staff-tuning line=\"%d\"><tuning-step>%s</tuning-step><tuning-octave>%d</tuning-octave></staff-tuning>"
                .formatted(line, step, octave);
    }

    /** On string 3, where frets 0, 2, 4, 5, 7, 9 and 10 are naturals. */
    static String note(String step, int octave, int fret, int quarters, String technical, String more) {
        return struck("", step, octave, 3, fret, quarters, technical, more);
    }

    static String struck(
            String chord, String step, int octave, int string, int fret, int quarters, String technical, String more) {
        return """
                <note>%s<pitch><step>%s</step><octave>%d</octave></pitch><duration>%d</duration>%s<notations>\
                <technical><string>%d</string><fret>%d</fret>%s</technical></notations></note>""".formatted(chord, step, octave, quarters, more, string, fret, technical);
    }

    static String plain(String step, int octave, int fret, int quarters) {
        return note(step, octave, fret, quarters, "", "");
    }

    static String bend(String alter, String course) {
        return "<bend><bend-alter>" + alter + "</bend-alter>" + course + "</bend>";
    }

    static String bar(int number, String content) {
        return "<measure number=\"" + number + "\">" + content + "</measure>";
    }

    /**
     * A whole score.
     *
     * @param staves what the first bar says about staves and strings
     * @param first the notes of the first bar
     * @param bars the other bars
     */
    static String score(String staves, String first, String bars) {
        return """
                <score-partwise version="4.0"><part-list><score-part id="P1"><part-name>Guitar</part-name></score-part>\
                </part-list><part id="P1"><measure number="1"><attributes><divisions>1</divisions>\
                <time><beats>4</beats><beat-type>4</beat-type></time>%s</attributes>%s</measure>%s</part>\
                </score-partwise>""".formatted(staves, first, bars);
    }

    static List<Gloss> doubts(String text, Severity least) throws ScoreException {
        return FRETGLOSS
                .check(
                        ScoreFile.of("trap.musicxml", text.getBytes(StandardCharsets.UTF_8)),
                        new Request(Optional.empty(), Given.NOTHING),
                        rule -> true)
                .from(least)
                .glosses();
    }
}
