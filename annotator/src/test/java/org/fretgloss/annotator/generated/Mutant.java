package org.fretgloss.annotator.generated;

import java.util.Locale;

/**
 * A damaged score.
 *
 * @param origin what it was before
 * @param packing how it became a file, before its bytes were harmed or after its text was
 * @param harm what is done to it
 * @param text its text, harmed where the harm is done to text
 */
public record Mutant(long seed, Origin origin, Packing packing, Mutator.Harm harm, String text) {

    /** Where the score comes from that was damaged. */
    public enum Origin {
        MADE_UP,
        FIXTURE,
        READING_FIXTURE
    }

    /** The file, harmed where the harm is done to bytes. */
    public byte[] file() {
        return new Mutator(seed).mutate(harm, packing.pack(text, seed));
    }

    /** Whether it is a text, not an archive. */
    public boolean isPlain() {
        return packing.archive() == Packing.Archive.PLAIN;
    }

    @Override
    public String toString() {
        return "mutant " + seed + " (" + words(origin) + ", " + words(harm) + ", " + packing + ")";
    }

    private static String words(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
