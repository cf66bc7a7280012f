package org.fretgloss.page;

import java.util.List;
import java.util.Random;
import java.util.StringJoiner;

/** Makes up solos in the notation of examples: the same seed gives the same solo. */
public final class RandomSolos {

    private static final List<String> HOMES =
            List.of("A minor pentatonic", "G major pentatonic", "E dorian", "B♭ blues", "D mixolydian");
    private static final List<String> CHORDS = List.of("A7 | D7 | A7 | E7", "Am7 | Dm7", "G C | D7", "N.C. | Em7");
    private static final List<String> BENDS = List.of("b1/2", "b1", "b2", "b2r", "pb2", "pb2r", "b3", "b2rb2");
    private static final List<String> PREFIXES = List.of("h", "p", "s", "x", "v");

    private final Random random;
    private int position = 5;

    private RandomSolos(long seed) {
        this.random = new Random(seed);
    }

    /** A solo of 1 to 16 bars with everything in it that the notation knows. */
    public static SoloText of(long seed) {
        return SoloText.parse(new RandomSolos(seed).text());
    }

    private String text() {
        StringJoiner lines = new StringJoiner("\n");
        if (random.nextBoolean()) {
            lines.add("home: " + pick(HOMES));
        }
        if (random.nextBoolean()) {
            lines.add("chords: " + pick(CHORDS));
        }
        boolean compound = random.nextInt(4) == 0;
        lines.add("meter: " + (compound ? "12/8" : "4/4"));
        StringJoiner bars = new StringJoiner(" | ", "| ", " |");
        if (random.nextInt(3) == 0) {
            bars.add(note() + ":1");
        }
        int count = 1 + random.nextInt(16);
        for (int i = 0; i < count; i++) {
            bars.add(bar(compound ? 12 : 8));
        }
        return lines.add(bars.toString()).toString();
    }

    /** A bar of so many eighths. */
    private String bar(int eighths) {
        StringJoiner tokens = new StringJoiner(" ");
        int left = eighths;
        while (left > 0) {
            int length = Math.min(left, 1 + random.nextInt(4));
            tokens.add(token() + ":" + length + "/2");
            left -= length;
        }
        return tokens.toString();
    }

    private String token() {
        if (random.nextInt(12) == 0) {
            position = 2 + random.nextInt(14);
        }
        return switch (random.nextInt(20)) {
            case 0, 1, 2 -> "r";
            case 3 -> "g" + note() + " " + note();
            case 4 -> "2/" + fret() + "+1/" + fret();
            case 5, 6 -> note() + pick(BENDS);
            case 7, 8 -> pick(PREFIXES) + note();
            case 9 -> (1 + random.nextInt(6)) + "/0";
            default -> note();
        };
    }

    private String note() {
        return (1 + random.nextInt(6)) + "/" + fret();
    }

    private int fret() {
        return position + random.nextInt(5);
    }

    private String pick(List<String> some) {
        return some.get(random.nextInt(some.size()));
    }
}
