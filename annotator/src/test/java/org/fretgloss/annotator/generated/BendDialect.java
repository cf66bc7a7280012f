package org.fretgloss.annotator.generated;

import java.math.BigDecimal;
import java.util.List;

/** The way in which one exporter writes the courses of bends. */
final class BendDialect {

    private static final List<String> USUAL = List.of("1", "2", "2", "3", "4");
    private static final List<String> NARROW = List.of("0.25", "0.5", "0.75", "1.5");
    private static final List<String> WIDE = List.of("5", "6");

    private final Dice dice;

    BendDialect(Dice dice) {
        this.dice = dice;
    }

    /** One bend, with what may come before and after its peak. */
    List<Bend> course() {
        String width = width();
        if (dice.has(Feature.BAR_DIP, 4)) {
            return List.of(new Bend("-" + width, "with-bar"));
        }
        if (dice.has(Feature.PRE_BEND, 3)) {
            Bend pre = new Bend(width, "pre-bend");
            return dice.oneIn(2) ? List.of(pre) : List.of(pre, release(width));
        }
        if (dice.has(Feature.SEVERAL_BENDS, 3)) {
            return List.of(Bend.up(width), release(width), Bend.up(width));
        }
        return dice.oneIn(2) ? List.of(Bend.up(width)) : List.of(Bend.up(width), release(width));
    }

    /** Back to the fret: as a movement downward, as the height that is reached, or as a distance without a sign. */
    private Bend release(String width) {
        if (dice.has(Feature.RELEASES_AS_HEIGHTS)) {
            return new Bend("0", "release");
        }
        return new Bend(
                dice.has(Feature.POSITIVE_RELEASES)
                        ? width
                        : new BigDecimal(width).negate().toPlainString(),
                "release");
    }

    private String width() {
        if (dice.has(Feature.NARROW_BEND, 3)) {
            return dice.oneOf(NARROW);
        }
        return dice.oneOf(dice.has(Feature.WIDE_BEND, 3) ? WIDE : USUAL);
    }
}
