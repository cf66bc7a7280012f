package org.fretgloss.pitch;

import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads chord names as musicians type them: "Am7", "D7#9", "F♯m7b5", "Bbmaj7/D", "E7sus4", "G6/9", "C°7".
 *
 * <p>A name means the same tones as the score's chord symbol of that name: "A13" holds the 11, as MusicXML's
 * {@code dominant-13th} does. A sign before a number alters the tone where the chord has it (C7♭5, C13♭9) and adds it
 * where not (C7♯9). An x behind the root raises it twice, as in F♯♯°7, the leading tone's chord in G♯ minor, written "Fx°7".
 * The spellings understood are common practice, no source.
 */
public final class ChordName {

    private static final String NOTE = "[A-G](?:♭+|♯+|b+|#+|x)?";
    private static final Pattern WHOLE =
            Pattern.compile("(?<root>" + NOTE + ")(?<rest>.*?)(?:/(?<bass>" + NOTE + "))?");
    private static final Pattern NUMBER = Pattern.compile("6/9|69|13|11|[5679]|It6|Fr6|Ger6|Tristan");

    /** How the triad is marked, tried in this order: "madd9" is minor, "ma9" is major, and "min" is not M. */
    private enum Quality {
        MAJOR("(?i:maj(?:or)?|ma(?!d))|M(?!i)|[Δ△]"),
        MINOR("(?i:min(?:or)?|mi)|[m−–-]"),
        HALF_DIMINISHED("[øØ]"),
        DIMINISHED("dim|[°º]|o(?!m)"),
        AUGMENTED("aug|\\+"),
        UNMARKED("");

        private final Pattern sign;

        Quality(String sign) {
            this.sign = Pattern.compile(sign);
        }

        static Quality read(TextCursor cursor) {
            for (Quality quality : values()) {
                if (cursor.take(quality.sign).isPresent()) {
                    return quality;
                }
            }
            return UNMARKED;
        }

        Optional<List<Degree>> tones(String number) {
            return switch (this) {
                case MAJOR -> shape(number.isEmpty() || number.startsWith("6") ? number : "maj" + number);
                case MINOR -> shape("m" + number);
                case HALF_DIMINISHED ->
                    shape("m" + (number.isEmpty() ? "7" : number)).map(tones -> ChordModifier.alter(tones, "♭", "5"));
                case DIMINISHED -> shape("dim" + number);
                case AUGMENTED -> shape(number).map(tones -> ChordModifier.alter(tones, "♯", "5"));
                case UNMARKED -> shape(number);
            };
        }

        private static Optional<List<Degree>> shape(String suffix) {
            return ChordShape.ofSuffix(suffix).map(ChordShape::tones);
        }
    }

    private ChordName() {}

    /**
     * Reads a chord name.
     *
     * @throws IllegalArgumentException if the text is none; the message says what is not understood
     */
    public static ChordSymbol parse(String text) {
        Matcher name = WHOLE.matcher(text.trim());
        if (!name.matches()) {
            throw new IllegalArgumentException(
                    "'" + text + "' is no chord: a chord begins with the capital letter of its root, A to G");
        }
        Optional<PitchClass> bass = Optional.ofNullable(name.group("bass")).map(PitchClass::parse);
        return ChordSymbol.ofTones(PitchClass.parse(name.group("root")), tones(name.group("rest"), text), bass)
                .orElseThrow(() -> new IllegalArgumentException("'" + text + "' is no chord: hardly a tone is left"));
    }

    private static List<Degree> tones(String suffix, String text) {
        TextCursor cursor = new TextCursor(suffix);
        Quality quality = Quality.read(cursor);
        String number = cursor.take(NUMBER).map(MatchResult::group).orElse("").replace("69", "6/9");
        List<Degree> basic = quality.tones(number).orElseThrow(() -> notUnderstood(suffix, text));
        List<Degree> tones = ChordModifier.applyAll(cursor, basic);
        if (!cursor.isAtEnd()) {
            throw notUnderstood(cursor.rest(), text);
        }
        return tones;
    }

    private static IllegalArgumentException notUnderstood(String what, String text) {
        return new IllegalArgumentException("'" + text + "' is no chord: '" + what + "' is not understood");
    }
}
