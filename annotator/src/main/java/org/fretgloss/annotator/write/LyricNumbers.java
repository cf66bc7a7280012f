package org.fretgloss.annotator.write;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fretgloss.annotator.file.LyricSite;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreScan;
import org.fretgloss.rule.Line;

/**
 * Gives our lines their lyric numbers: single digits after the highest in use in the part, in the order of lines. Other
 * programs read no number of two digits.
 */
final class LyricNumbers {

    private static final int HIGHEST = 9;

    private LyricNumbers() {}

    /**
     * The number of each line.
     *
     * @param part id of the part that bears the lyrics
     * @param lines lines that have a text, in order
     * @throws ScoreException if too few digits are left
     */
    static Map<Line, Integer> assign(ScoreScan scan, String part, List<Line> lines) throws ScoreException {
        int inUse = highestIn(scan, part);
        if (inUse + lines.size() > HIGHEST) {
            throw tooMany(lines.size(), HIGHEST - inUse);
        }
        Map<Line, Integer> numbers = new LinkedHashMap<>();
        lines.forEach(line -> numbers.put(line, inUse + numbers.size() + 1));
        return numbers;
    }

    private static int highestIn(ScoreScan scan, String part) {
        return scan.lyrics().stream()
                .filter(lyric -> scan.note(lyric.note()).part().equals(part))
                .map(LyricSite::digit)
                .mapToInt(digit -> digit.orElse(0))
                .max()
                .orElse(0);
    }

    private static ScoreException tooMany(int wanted, int left) {
        return new ScoreException(
                left == 0
                        ? "the part's own lyrics take all nine lyric numbers, so no line of ours finds room; take a verse"
                                + " out of the part, or number it lower"
                        : "there is room for " + left + (left == 1 ? " line" : " lines")
                                + " under the part's own lyrics," + " not for " + wanted + "; name at most " + left
                                + " with --lines");
    }
}
