package org.fretgloss.annotator.read;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fretgloss.time.Fraction;
import org.jspecify.annotations.Nullable;

/**
 * The width of a bend as it is printed at its arrow, in whole tones: "full", "½", "1 1/2", "half bend". A bare number may as
 * well be a finger or a string, and 3/4 a meter, so these need the word "bend" beside them (common practice, no source).
 */
final class BendText {

    private static final Pattern WIDTH = Pattern.compile(
            "(?:(?<word>full|whole|half|quarter)|" + "(?<tones>[1-3])? ?(?<part>½|1/2|¼|1/4|¾|3/4)?)(?<noun> bend)?");

    /** In semitones. */
    private static final Map<String, Fraction> WIDTHS = Map.ofEntries(
            Map.entry("full", Fraction.of(2)),
            Map.entry("whole", Fraction.of(2)),
            Map.entry("half", Fraction.of(1)),
            Map.entry("quarter", Fraction.of(1, 2)),
            Map.entry("1", Fraction.of(2)),
            Map.entry("2", Fraction.of(4)),
            Map.entry("3", Fraction.of(6)),
            Map.entry("½", Fraction.of(1)),
            Map.entry("1/2", Fraction.of(1)),
            Map.entry("¼", Fraction.of(1, 2)),
            Map.entry("1/4", Fraction.of(1, 2)),
            Map.entry("¾", Fraction.of(3, 2)),
            Map.entry("3/4", Fraction.of(3, 2)));

    private BendText() {}

    /** Semitones of the bend that a text stands for; none if it is no width. */
    static Optional<Fraction> semitones(@Nullable String text) {
        Matcher width = WIDTH.matcher(plain(text));
        if (!width.matches() || !isUnmistakable(width)) {
            return Optional.empty();
        }
        Fraction semitones =
                part(width.group("word")).plus(part(width.group("tones"))).plus(part(width.group("part")));
        return Optional.of(semitones).filter(Fraction::isPositive);
    }

    private static boolean isUnmistakable(Matcher width) {
        String part = width.group("part");
        boolean fraction = part != null && (width.group("tones") != null || !part.equals("3/4"));
        return fraction || width.group("noun") != null || "full".equals(width.group("word"));
    }

    private static Fraction part(@Nullable String text) {
        return text == null ? Fraction.ZERO : WIDTHS.getOrDefault(text, Fraction.ZERO);
    }

    private static String plain(@Nullable String text) {
        return text == null
                ? ""
                : text.toLowerCase(Locale.ROOT).replaceAll("[-–.\\s]+", " ").strip();
    }
}
