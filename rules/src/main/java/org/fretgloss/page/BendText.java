package org.fretgloss.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fretgloss.solo.Bend;
import org.fretgloss.time.Fraction;

/**
 * The shorthand for bends, widths in semitones: {@code b2} a full bend, {@code b2r} with release, {@code pb2} pre-bend,
 * {@code pb2r} with release, {@code b2rb2} repeated, {@code b1/2} a curl; any other course by its turning points,
 * {@code b(0,2,4)}.
 */
final class BendText {

    private static final String WIDTH = "(\\d+(?:/\\d+)?)";
    private static final Pattern SHORTHAND = Pattern.compile("(p?)b" + WIDTH + "(?:(r)(?:b" + WIDTH + ")?)?");
    private static final Pattern COURSE = Pattern.compile("b\\(([^)]+)\\)");

    private BendText() {}

    /**
     * Reads a bend.
     *
     * @throws NotationException if the text is none
     */
    static Bend parse(String text) {
        try {
            return new Bend(heights(text));
        } catch (IllegalArgumentException e) {
            throw new NotationException("'" + text + "' is no bend: write b2, b2r, pb2, pb2r, b2rb2 or b(0,2,4)", e);
        }
    }

    private static List<Fraction> heights(String text) {
        Matcher course = COURSE.matcher(text);
        if (course.matches()) {
            return Arrays.stream(course.group(1).split(","))
                    .map(String::strip)
                    .map(Fraction::parse)
                    .toList();
        }
        Matcher shorthand = SHORTHAND.matcher(text);
        if (!shorthand.matches()) {
            throw new IllegalArgumentException(text);
        }
        List<Fraction> heights = new ArrayList<>();
        if (shorthand.group(1).isEmpty()) {
            heights.add(Fraction.ZERO);
        }
        heights.add(Fraction.parse(shorthand.group(2)));
        if (shorthand.group(3) != null) {
            heights.add(Fraction.ZERO);
        }
        if (shorthand.group(4) != null) {
            heights.add(Fraction.parse(shorthand.group(4)));
        }
        return heights;
    }
}
