package org.fretgloss.annotator;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Damages the text of a score in the ways that faulty exporters, disks and strangers do; seeded. */
final class Mutator {

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

    /** What is done to a score. */
    enum Harm {
        BYTES_FLIPPED,
        ARCHIVE_BYTES_FLIPPED,
        PIECE_DROPPED,
        PIECE_DOUBLED,
        PIECE_MOVED,
        NUMBERS_EXTREME
    }

    private static final List<Harm> HARMS = List.of(Harm.values());

    private final Random random;

    Mutator(long seed) {
        this.random = new Random(seed);
    }

    Harm harm() {
        return HARMS.get(random.nextInt(HARMS.size()));
    }

    byte[] mutate(Harm harm, String text) {
        return switch (harm) {
            case BYTES_FLIPPED, ARCHIVE_BYTES_FLIPPED -> flipped(bytes(text));
            case PIECE_DROPPED -> bytes(dropped(text));
            case PIECE_DOUBLED -> bytes(doubled(text));
            case PIECE_MOVED -> bytes(moved(text));
            case NUMBERS_EXTREME -> bytes(extreme(text));
        };
    }

    byte[] flipped(byte[] bytes) {
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return bytes;
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

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
