package org.fretgloss.annotator.file;

import java.util.Comparator;
import java.util.List;

/**
 * How large a score is, by what takes memory: counted in its text before any of it is understood. What stands in a comment
 * counts too.
 *
 * @param text its characters
 * @param notes its note elements
 * @param bars its bars and parts
 * @param lyrics its lyrics
 * @param others all other elements
 */
record ScoreSize(Amount text, Amount notes, Amount bars, Amount lyrics, Amount others) {

    /**
     * Something that there is much of.
     *
     * @param name what musicians call it
     * @param count how many there are
     * @param scanned bytes of heap that each takes where only places are looked up
     * @param read bytes of heap that each takes where the music is read and explained
     */
    record Amount(String name, long count, int scanned, int read) {

        long bytesToScan() {
            return count * scanned;
        }

        long bytesToRead() {
            return count * read;
        }
    }

    // Measured as the largest live heap while scores of three megabytes of one sort were annotated, and a third or more
    // added: a terse note with its three elements and a position that is inferred took 2,400, an element of a chord or
    // a lyric 190, a bar or part 320, a character of a text with letters beyond Latin-1 eight.
    private static final int LATIN = 6;
    private static final int WIDE = 12;
    private static final int NOTE = 2_400;
    private static final int BAR = 500;
    private static final int ELEMENT = 250;
    private static final int SITE = 250;

    private static final char LAST_LATIN = 0xff;

    /** Counts what a score's text holds. */
    static ScoreSize of(String text) {
        long notes = 0;
        long bars = 0;
        long lyrics = 0;
        long others = 0;
        for (int open = text.indexOf('<'); open >= 0; open = text.indexOf('<', open + 1)) {
            switch (nameAt(text, open + 1)) {
                case "" -> {
                    // An end tag, a comment or the like.
                }
                case "note" -> notes++;
                case "measure", "part", "score-part" -> bars++;
                case "lyric" -> lyrics++;
                default -> others++;
            }
        }
        int character = isLatin(text) ? LATIN : WIDE;
        return new ScoreSize(
                new Amount("characters", text.length(), character, character),
                new Amount("notes", notes, SITE, NOTE),
                new Amount("bars", bars, 0, BAR),
                new Amount("lyrics", lyrics, SITE, ELEMENT),
                new Amount("elements", others, 0, ELEMENT));
    }

    /** The local name of the element that starts here; empty where none does. */
    private static String nameAt(String text, int start) {
        int from = start;
        int end = start;
        while (end < text.length() && isOfName(text.charAt(end))) {
            if (text.charAt(end) == ':') {
                from = end + 1;
            }
            end++;
        }
        return text.substring(from, end);
    }

    private static boolean isOfName(char c) {
        return c > ' ' && c != '/' && c != '>' && c != '!' && c != '?' && c != '<';
    }

    private static boolean isLatin(String text) {
        return text.chars().allMatch(c -> c <= LAST_LATIN);
    }

    /** Heap that is needed to look up where everything stands, in bytes. */
    long bytesToScan() {
        return amounts().stream().mapToLong(Amount::bytesToScan).sum();
    }

    /** Heap that is needed to read and explain the music, in bytes. */
    long bytesToRead() {
        return amounts().stream().mapToLong(Amount::bytesToRead).sum();
    }

    /** What most of the memory goes to. */
    Amount most() {
        return amounts().stream()
                .max(Comparator.comparingLong(Amount::bytesToRead))
                .orElseThrow();
    }

    private List<Amount> amounts() {
        return List.of(notes, others, bars, lyrics, text);
    }
}
