package org.fretgloss.annotator.generated;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Damages the text of a score in the ways that faulty exporters, disks and strangers do; seeded. */
public final class Mutator {

    /** An element without elements of its own, or the start of one with. */
    private static final Pattern LEAF =
            Pattern.compile("<([a-z:-]+)(?: [^<>]*)?>[^<>]*</\\1\\s*>|<[a-z:-]+(?: [^<>]*)?/>");

    private static final Pattern NOTE = Pattern.compile("<(m:)?note\\b.*?</(m:)?note>", Pattern.DOTALL);
    private static final Pattern BAR = Pattern.compile("<(m:)?measure\\b.*?</(m:)?measure>", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("(?<=[>\"])-?\\d+(?:\\.\\d+)?(?=[<\"])");
    private static final List<Pattern> PIECES = List.of(LEAF, LEAF, NOTE, BAR);
    private static final List<String> EXTREMES = List.of(
            "0",
            "-1",
            "-3",
            "999",
            "2147483648",
            "99999999999999999999",
            "1e9",
            "-1e9",
            "1e400",
            "NaN",
            "Infinity",
            "0.0000001",
            "-0",
            "",
            "1/2",
            "x");

    /** A signature of the zip format begins each of its records (APPNOTE.TXT, 4.3). */
    private static final Pattern RECORD = Pattern.compile("PK[\u0001\u0003\u0005\u0007][\u0002\u0004\u0006\u0008]");

    /** The longest of the records without names, that of the directory. */
    private static final int RECORD_BYTES = 46;

    /** What is done to a score. */
    public enum Harm {
        BYTES_FLIPPED,
        ARCHIVE_BYTES_FLIPPED,
        ARCHIVE_RECORDS_FLIPPED,
        PIECE_DROPPED,
        PIECE_DOUBLED,
        PIECE_MOVED,
        NUMBERS_EXTREME;

        /** Whether it is done to a compressed score's own bytes. */
        public boolean needsArchive() {
            return this == ARCHIVE_BYTES_FLIPPED || this == ARCHIVE_RECORDS_FLIPPED;
        }
    }

    private final Random random;

    Mutator(long seed) {
        this.random = new Random(seed);
    }

    /** The text after a harm that is done to text; otherwise as it was. */
    String mutate(Harm harm, String text) {
        return switch (harm) {
            case BYTES_FLIPPED, ARCHIVE_BYTES_FLIPPED, ARCHIVE_RECORDS_FLIPPED -> text;
            case PIECE_DROPPED -> dropped(text);
            case PIECE_DOUBLED -> doubled(text);
            case PIECE_MOVED -> moved(text);
            case NUMBERS_EXTREME -> extreme(text);
        };
    }

    /** The file after a harm that is done to bytes; otherwise as it was. */
    byte[] mutate(Harm harm, byte[] file) {
        return switch (harm) {
            case BYTES_FLIPPED, ARCHIVE_BYTES_FLIPPED -> flipped(file, 0, file.length);
            case ARCHIVE_RECORDS_FLIPPED -> {
                int record = any(new String(file, StandardCharsets.ISO_8859_1), RECORD)
                        .start();
                yield flipped(file, record, Math.min(RECORD_BYTES, file.length - record));
            }
            case PIECE_DROPPED, PIECE_DOUBLED, PIECE_MOVED, NUMBERS_EXTREME -> file;
        };
    }

    private byte[] flipped(byte[] bytes, int from, int length) {
        byte[] mutant = bytes.clone();
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            mutant[from + random.nextInt(length)] ^= (byte) (1 << random.nextInt(8));
        }
        return mutant;
    }

    private String dropped(String text) {
        MatchResult place = any(text, piece());
        return text.substring(0, place.start()) + text.substring(place.end());
    }

    private String doubled(String text) {
        MatchResult place = any(text, piece());
        return text.substring(0, place.end()) + place.group() + text.substring(place.end());
    }

    private String moved(String text) {
        MatchResult from = any(text, piece());
        String without = text.substring(0, from.start()) + text.substring(from.end());
        int to = any(without, LEAF).start();
        return without.substring(0, to) + from.group() + without.substring(to);
    }

    private Pattern piece() {
        return PIECES.get(random.nextInt(PIECES.size()));
    }

    private String extreme(String text) {
        String mutant = text;
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            MatchResult place = any(mutant, NUMBER);
            mutant = mutant.substring(0, place.start())
                    + EXTREMES.get(random.nextInt(EXTREMES.size()))
                    + mutant.substring(place.end());
        }
        return mutant;
    }

    /** Any match; where there is none, the empty place at the start. */
    private MatchResult any(String text, Pattern what) {
        List<MatchResult> places = what.matcher(text).results().toList();
        return places.isEmpty()
                ? Pattern.compile("^").matcher(text).results().findFirst().orElseThrow()
                : places.get(random.nextInt(places.size()));
    }
}
