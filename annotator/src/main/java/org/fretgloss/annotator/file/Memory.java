package org.fretgloss.annotator.file;

/** Keeps scores within the memory that there is: refused beforehand where that can be told, else in words afterwards. */
public final class Memory {

    /** Measured: text, tree, positions, result and its check together stay below twenty bytes for each of the score's. */
    private static final int HEAP_BYTES_EACH = 20;

    /** The longest file and the longest score text that are read in any memory; a symphony needs a fifth of it. */
    private static final int MOST_BYTES = 1 << 27;

    private static final String REMEDY =
            "; export the solo's part alone, or give more memory, as with JAVA_OPTS=-Xmx4g";

    /**
     * Work that may need more memory than there is.
     *
     * @param <T> what it gives
     */
    @FunctionalInterface
    public interface Work<T> {

        /**
         * Does the work.
         *
         * @throws ScoreException if the score cannot be used
         */
        T run() throws ScoreException;
    }

    private Memory() {}

    /** The longest score that is read, in bytes. */
    static int mostBytes() {
        return (int) Math.min(MOST_BYTES, heap() / HEAP_BYTES_EACH);
    }

    static ScoreException tooLong() {
        return new ScoreException("the score is longer than " + megabytes(mostBytes()) + ", the most that is read in "
                + megabytes(heap()) + " of memory" + REMEDY);
    }

    /**
     * Does work on a score.
     *
     * @throws ScoreException as the work does, and if the memory does not suffice
     */
    public static <T> T guard(Work<T> work) throws ScoreException {
        try {
            return work.run();
        } catch (OutOfMemoryError e) {
            throw new ScoreException("the score does not fit " + megabytes(heap()) + " of memory" + REMEDY, e);
        }
    }

    private static long heap() {
        return Runtime.getRuntime().maxMemory();
    }

    private static String megabytes(long bytes) {
        return (bytes >> 20) + " MB";
    }
}
