package org.fretgloss.time;

/**
 * A meter such as 4/4 or 12/8.
 *
 * @param count how many units fill a bar, at least 1 (3+2 counts 5)
 * @param unit the note value counted: 4 is a quarter, 8 an eighth; at least 1
 */
public record Meter(int count, int unit) {

    public static final Meter COMMON = new Meter(4, 4);

    /**
     * Checks the components.
     *
     * @throws IllegalArgumentException if either number is below 1
     */
    public Meter {
        if (count < 1 || unit < 1) {
            throw new IllegalArgumentException("no meter: " + count + "/" + unit);
        }
    }

    /** Length of a full bar, in quarter notes. */
    public Fraction barLength() {
        return Fraction.of(4L * count, unit);
    }

    /** Compound meters (6/8, 9/8, 12/8, 6/16 ...) count dotted beats of three units. */
    public boolean isCompound() {
        return count > 3 && count % 3 == 0 && unit >= 8;
    }

    /** Length of one beat, in quarter notes: 1 in 4/4, 3/2 in 12/8, 1/2 in 5/8. */
    public Fraction beatLength() {
        return Fraction.of(isCompound() ? 12 : 4, unit);
    }

    /** How many beats a full bar has: 4 in 4/4 and in 12/8. */
    public int beats() {
        return isCompound() ? count / 3 : count;
    }

    @Override
    public String toString() {
        return count + "/" + unit;
    }
}
