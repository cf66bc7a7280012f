package org.fretgloss.annotator;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Damages the text of a score in the ways that faulty exporters, disks and strangers do; seeded. */
final class Mutator {

    /** An element without elements of its own, or the start of one with. */
    private static final Pattern LEAF = Pattern.compile("<([a-z-]+)(?: [^<>]*)?>[^<>]*</\\1>|<[a-z-]+(?: [^<>]*)?/>");

    private static final Pattern NOTE = Pattern.compile("<note\\b.*?</note>", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("(?<=>)-?\\d+(?:\\.\\d+)?(?=<)");
    private static final List<String> EXTREMES = List.of(
            "0",
            "-1",
            "-3",
            "999",
            "2147483648",
            "99999999999999999999",
            "1e9",
            "NaN",
            "0.0000001",
            "-0",
            "",
            "1/2",
            "x");

    private final Random random;

    Mutator(long seed) {
        this.random = new Random(seed);
    }

    byte[] mutate(String text) {
        return switch (random.nextInt(6)) {
            case 0 -> flipped(text.getBytes(StandardCharsets.UTF_8));
            case 1 -> bytes(dropped(text, LEAF));
            case 2 -> bytes(dropped(text, NOTE));
            case 3 -> bytes(doubled(text));
            case 4 -> bytes(moved(text));
            default -> bytes(extreme(text));
        };
    }

    private byte[] flipped(byte[] bytes) {
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return bytes;
    }

    private String dropped(String text, Pattern what) {
        MatchResult place = any(text, what);
        return text.substring(0, place.start()) + text.substring(place.end());
    }

    private String doubled(String text) {
        MatchResult place = any(text, random.nextBoolean() ? LEAF : NOTE);
        return text.substring(0, place.end()) + place.group() + text.substring(place.end());
    }

    private String moved(String text) {
        MatchResult from = any(text, random.nextBoolean() ? LEAF : NOTE);
        String without = text.substring(0, from.start()) + text.substring(from.end());
        int to = any(without, LEAF).start();
        return without.substring(0, to) + from.group() + without.substring(to);
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

    private MatchResult any(String text, Pattern what) {
        List<MatchResult> places = new ArrayList<>();
        what.matcher(text).results().forEach(places::add);
        return places.get(random.nextInt(places.size()));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
