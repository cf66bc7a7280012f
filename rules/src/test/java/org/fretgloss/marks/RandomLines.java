package org.fretgloss.marks;

import java.util.List;
import java.util.Random;
import java.util.StringJoiner;
import java.util.stream.LongStream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.page.SoloText;

/** Makes up single-note lines close to the chords of a blues in A, so that thirds and outlines arise often. */
final class RandomLines {

    private static final List<String> CHORDS = List.of("A7 | D7", "A7 | A7 | E7", "Am7 | D7", "A Dm | E7", "N.C. | A7");

    /** C to E, F to A♭, A to C♯: the thirds of A and D among their neighbours. */
    private static final List<String> NOTES = List.of(
            "4/7", "3/5", "3/6", "3/6", "3/7", "2/5", "2/5", "2/6", "2/7", "2/7", "2/8", "1/4", "1/5", "1/5", "1/8",
            "1/9");

    private static final List<String> TOKENS =
            List.of("r", "2/5+1/5", "x4/7", "3/5b1", "2/6b1r", "3/5b1/2", "3/5pb1", "h3/6", "s1/9", "g3/5 3/6");

    private final Random random;

    private RandomLines(long seed) {
        this.random = new Random(seed);
    }

    static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    /** Eight bars of eighths; the same seed gives the same line. */
    static Analysis of(long seed) {
        return SoloText.parse(new RandomLines(seed).text()).analysis();
    }

    private String text() {
        StringJoiner bars = new StringJoiner(" | ", "| ", " |");
        for (int bar = 0; bar < 8; bar++) {
            StringJoiner eighths = new StringJoiner(" ");
            for (int i = 0; i < 8; i++) {
                eighths.add((random.nextInt(5) == 0 ? pick(TOKENS) : pick(NOTES)) + ":1/2");
            }
            bars.add(eighths.toString());
        }
        String chords = random.nextInt(8) == 0 ? "" : "chords: " + pick(CHORDS) + "\n";
        return "home: A minor pentatonic\n" + chords + bars;
    }

    private String pick(List<String> some) {
        return some.get(random.nextInt(some.size()));
    }
}
