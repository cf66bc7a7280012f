package org.fretgloss.annotator.file;

/** Small scores for tests. */
public final class ScoreTexts {

    private ScoreTexts() {}

    /** A score of one part and one bar that holds the given content. */
    public static String partwise(String bar) {
        return "<score-partwise version=\"4.0\"><part-list><score-part id=\"P1\"><part-name>Lead</part-name></score-part>"
                + "</part-list><part id=\"P1\"><measure number=\"1\">" + bar + "</measure></part></score-partwise>";
    }
}
