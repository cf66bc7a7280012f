package org.fretgloss.annotator.file;

import java.util.Locale;
import java.util.function.ToLongFunction;

/** Keeps scores within the memory that there is: refused beforehand where that can be told, else in words afterwards. */
public final class Memory {

    /** Heap that the program itself takes before it reads a score: measured 13 MB. */
    private static final long BASE = 20L << 20;

    /** Share of the heap that live objects may take: the nearer it comes to all, the longer every collection takes. */
    private static final double SHARE = 0.85;

    /** Text, result and their check take at least this for each byte of the score. */
    private static final int HEAP_BYTES_EACH = 6;

    /** The longest file and the longest score text that are read in any memory; a symphony needs a fifth of it. */
    private static final int MOST_BYTES = 1 << 27;

    private static final String SMALLER = "; split the score, or export the solo's part alone";

    private static final String REMEDY = "; export the solo's part alone, or give more memory, as with JAVA_OPTS=-Xmx";

    /** How much larger than the heap one must be to count as larger, for it never gives all that was asked for. */
    private static final double MORE = 1.1;

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
        return (int) Math.min(MOST_BYTES, room() / HEAP_BYTES_EACH);
    }

    /**
     * Refuses a score that is longer than {@link #mostBytes}, of which only so much is known.
     *
     * @param atLeast how many bytes it has, if not more
     */
    static ScoreException tooLong(int atLeast) {
        String refusal = "the score is longer than " + megabytes(mostBytes()) + ", the most that is read";
        return new ScoreException(
                atLeast > MOST_BYTES
                        ? refusal + SMALLER
                        : refusal + inMemory() + remedy((long) atLeast * HEAP_BYTES_EACH));
    }

    /**
     * Makes sure that a score is no longer than {@link #mostBytes}.
     *
     * @param bytes how long it is
     * @throws ScoreException if it is longer; the message tells how long it is, how long it may be and what to do
     */
    static void requireRoomFor(long bytes) throws ScoreException {
        String refusal = "the score is " + megabytes(bytes + (1 << 20) - 1) + " long, and ";
        if (bytes > MOST_BYTES) {
            throw new ScoreException(refusal + megabytes(MOST_BYTES) + " are the most that is read" + SMALLER);
        }
        if (bytes > mostBytes()) {
            throw new ScoreException(refusal + "at most " + megabytes(mostBytes()) + " are read" + inMemory()
                    + remedy(bytes * HEAP_BYTES_EACH));
        }
    }

    /**
     * Makes sure that there is room to look up where everything stands in a score.
     *
     * @throws ScoreException if it is too large; the message tells how large it is, how large it may be and what to do
     */
    static void requireRoomToScan(String text) throws ScoreException {
        require(ScoreSize.of(text), ScoreSize::bytesToScan);
    }

    /**
     * Makes sure that there is room to read and explain a score: told from how much of everything it holds, before any
     * memory is taken.
     *
     * @throws ScoreException if it is too large; the message tells how large it is, how large it may be and what to do
     */
    public static void requireRoomToRead(String text) throws ScoreException {
        require(ScoreSize.of(text), ScoreSize::bytesToRead);
    }

    private static void require(ScoreSize size, ToLongFunction<ScoreSize> bytes) throws ScoreException {
        if (bytes.applyAsLong(size) > room()) {
            // Whoever makes the score smaller should have to do so once.
            long needed = size.bytesToRead();
            ScoreSize.Amount most = size.most();
            throw new ScoreException(String.format(
                    Locale.ROOT,
                    "the score has %,d %s in %s, and in %s of memory a score of this kind may have about %,d%s",
                    most.count(),
                    most.name(),
                    megabytes(size.text().count()),
                    megabytes(heap()),
                    (long) ((double) room() / needed * most.count()),
                    remedy(needed)));
        }
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
            throw new ScoreException(
                    "the score does not fit " + megabytes(heap()) + " of memory" + remedy(2 * heap()), e);
        }
    }

    /** What a score and all that is made of it may take, in bytes. */
    private static long room() {
        return Math.max(0, (long) (SHARE * heap()) - BASE);
    }

    private static long heap() {
        return Runtime.getRuntime().maxMemory();
    }

    private static String inMemory() {
        return " in " + megabytes(heap()) + " of memory";
    }

    /** Names a heap that is larger than this one and in which so many bytes have room, in whole gigabytes. */
    private static String remedy(long needed) {
        double bytes = Math.max((needed + BASE) / SHARE, MORE * heap());
        return REMEDY + ((long) (bytes / (1L << 30)) + 1) + "g";
    }

    private static String megabytes(long bytes) {
        return (bytes >> 20) + " MB";
    }
}
