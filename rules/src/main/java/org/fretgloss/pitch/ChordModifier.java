package org.fretgloss.pitch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** What may follow the basic chord in a chord's name, and what it does to the tones: "sus4", "♭9", "no3". */
enum ChordModifier {
    MAJOR_SEVENTH("(?:(?i:maj|ma)|M|[Δ△])(7|9|11|13)", (tones, found) -> {
        List<Degree> changed = with(without(tones, 7), "7");
        for (int extension = 9; extension <= Integer.parseInt(found.group(1)); extension += 2) {
            changed = with(changed, Integer.toString(extension));
        }
        return changed;
    }),
    /** The suspended 4 is the 11 that a thirteenth chord holds. */
    SUSPENDED(
            "sus([24])?",
            (tones, found) -> with(without(without(tones, 3), 11), found.group(1) == null ? "4" : found.group(1))),
    ADDED("add((?:♭+|♯+|b+|#+)?(?:1[13]|[2-79]))", (tones, found) -> with(tones, found.group(1))),
    LEFT_OUT("(?:no|omit)(1[13]|[1-79])", (tones, found) -> without(tones, Integer.parseInt(found.group(1)))),
    ALTERED_TONE("(♭+|♯+|b+|#+|[+−–-])(1[13]|[2-79])", (tones, found) -> alter(tones, found.group(1), found.group(2))),
    ALTERED("alt", (tones, found) -> {
        List<Degree> changed = without(tones, 5);
        for (String tone : List.of("♭5", "♯5", "♭7", "♭9", "♯9")) {
            changed = with(changed, tone);
        }
        return changed;
    }),
    AUGMENTED("aug|\\+", (tones, found) -> alter(tones, "♯", "5")),
    LISTED("(?<=[(,]\\s?)(9|11|13)", (tones, found) -> with(tones, found.group(1)));

    private static final Pattern SEPARATORS = Pattern.compile("[\\s(),]*");

    private final Pattern pattern;
    private final BiFunction<List<Degree>, MatchResult, List<Degree>> effect;

    ChordModifier(String pattern, BiFunction<List<Degree>, MatchResult, List<Degree>> effect) {
        this.pattern = Pattern.compile(pattern);
        this.effect = effect;
    }

    /** The tones after every modifier from here on; stops at the first text that is none. */
    static List<Degree> applyAll(TextCursor cursor, List<Degree> tones) {
        cursor.take(SEPARATORS);
        Optional<List<Degree>> changed = applyNext(cursor, tones);
        return changed.isPresent() ? applyAll(cursor, changed.get()) : tones;
    }

    private static Optional<List<Degree>> applyNext(TextCursor cursor, List<Degree> tones) {
        for (ChordModifier modifier : values()) {
            Optional<MatchResult> found = cursor.take(modifier.pattern);
            if (found.isPresent()) {
                return found.map(match -> modifier.effect.apply(tones, match));
            }
        }
        return Optional.empty();
    }

    /** A natural tone of the chord gives way to its altered form; where there is none the altered tone is added. */
    static List<Degree> alter(List<Degree> tones, String sign, String number) {
        List<Degree> changed = new ArrayList<>(tones);
        changed.remove(Degree.parse(number));
        return with(changed, sign.replace('+', '♯').replaceAll("[−–-]", "♭") + number);
    }

    private static List<Degree> with(List<Degree> tones, String degree) {
        List<Degree> changed = new ArrayList<>(tones);
        changed.add(Degree.parse(degree));
        return changed;
    }

    private static List<Degree> without(List<Degree> tones, int number) {
        return tones.stream().filter(tone -> tone.number() != number).toList();
    }
}
