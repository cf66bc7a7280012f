package org.fretgloss.annotator.read;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.audiveris.proxymusic.Bass;
import org.audiveris.proxymusic.Degree;
import org.audiveris.proxymusic.Harmony;
import org.audiveris.proxymusic.HarmonyAlter;
import org.audiveris.proxymusic.Kind;
import org.audiveris.proxymusic.KindValue;
import org.audiveris.proxymusic.Numeral;
import org.audiveris.proxymusic.Root;
import org.audiveris.proxymusic.StyleText;
import org.fretgloss.neck.Tuning;
import org.fretgloss.pitch.ChordKind;
import org.fretgloss.pitch.ChordName;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.pitch.DegreeChange;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.solo.KeySignature;
import org.jspecify.annotations.Nullable;

/** One chord symbol. */
final class ChordReader {

    static final int HIGHEST_DEGREE = 13;

    /** A tone with a sign before it, as in "m7♭5", or words for such tones. */
    private static final Pattern ALTERED = Pattern.compile("[♭♯b#+-]\\d|alt|sus");

    private static final Pattern NO_CHORD = Pattern.compile("(?i)n\\.?\\s*c\\.?|no chord");

    /** What a harmony element turns out to be. */
    sealed interface Reading {}

    /** A chord with tones. */
    record Named(ChordSymbol chord) implements Reading {}

    /**
     * No chord from here on: the one before ends, be it only because another begins here that cannot be told.
     *
     * @param why what is wrong with the symbol; empty where it says that there is no chord
     */
    record NoChord(Optional<String> why) implements Reading {

        private static final NoChord SAID = new NoChord(Optional.empty());

        private static NoChord unread(String symbol) {
            return new NoChord(Optional.of(symbol + " is no chord that can be told: from there on there is none"));
        }
    }

    private ChordReader() {}

    /**
     * Reads a chord symbol.
     *
     * @param tuning of the instrument whose fretting a chord diagram shows
     * @param key the signature in force, upon which a numeral stands
     */
    static Reading read(Harmony harmony, Tuning tuning, KeySignature key) {
        List<Object> items = firstChord(harmony.getHarmonyChord());
        Optional<Kind> kind = first(items, Kind.class);
        if (kind.filter(ChordReader::saysNoChord).isPresent()) {
            return NoChord.SAID;
        }
        Optional<PitchClass> root = first(items, Root.class)
                .flatMap(ChordReader::root)
                .or(() -> first(items, Numeral.class).flatMap(numeral -> Numerals.root(numeral, key)));
        if (root.isEmpty()) {
            return NoChord.unread("a chord symbol without a root");
        }
        if (kind.isEmpty() || kind.get().getValue() == null) {
            return asPrinted(root.get(), kind.map(Kind::getText).orElse(""), bass(items));
        }
        ChordKind sort = ChordKind.ofValue(kind.get().getValue().value()).orElse(ChordKind.OTHER);
        List<DegreeChange> degrees = degrees(items);
        return ChordSymbol.of(root.get(), sort, degrees, bass(items))
                .map(chord -> degrees.isEmpty() ? asItsTextSays(chord, text(kind.get()), bass(items)) : chord)
                .or(() -> ofNoKind(sort, root.get(), text(kind.get()), bass(items)))
                .or(() -> ChordDiagram.read(harmony.getFrame(), root.get(), tuning))
                .<Reading>map(Named::new)
                .orElseGet(() -> sort == ChordKind.OTHER
                        ? NoChord.unread("a chord symbol that does not say its tones")
                        : NoChord.SAID);
    }

    /**
     * What is printed may hold more than the kind-value: "m7♭5" over minor-seventh, "7♯9" over dominant, "7sus4" over
     * dominant. A text that contradicts the kind's third, or says less, is only a way of writing.
     */
    private static ChordSymbol asItsTextSays(ChordSymbol chord, String text, Optional<PitchClass> bass) {
        if (text.isEmpty()) {
            return chord;
        }
        return named(chord.root(), text, bass)
                .filter(printed -> hasThirdOf(chord, printed) || hasNoThird(printed))
                .filter(printed -> printed.tones().size() > chord.tones().size()
                        || (printed.tones().size() == chord.tones().size()
                                && ALTERED.matcher(text).find()))
                .orElse(chord);
    }

    private static boolean hasThirdOf(ChordSymbol chord, ChordSymbol printed) {
        return printed.hasMajorThird() == chord.hasMajorThird() && printed.hasMinorThird() == chord.hasMinorThird();
    }

    private static boolean hasNoThird(ChordSymbol chord) {
        return !chord.hasMajorThird() && !chord.hasMinorThird();
    }

    /** A kind "other" is what is printed, if anything is. */
    private static Optional<ChordSymbol> ofNoKind(
            ChordKind kind, PitchClass root, String text, Optional<PitchClass> bass) {
        return kind == ChordKind.OTHER && !text.isEmpty() ? named(root, text, bass) : Optional.empty();
    }

    /** Some programs leave the kind empty and only say how it is printed; a bare root is a major chord. */
    private static Reading asPrinted(PitchClass root, String suffix, Optional<PitchClass> bass) {
        return named(root, suffix, bass)
                .<Reading>map(Named::new)
                .orElseGet(() -> NoChord.unread("a chord symbol of an unknown kind"));
    }

    private static Optional<ChordSymbol> named(PitchClass root, String suffix, Optional<PitchClass> bass) {
        try {
            return Optional.of(ChordName.parse(
                    root + suffix.strip() + bass.map(note -> "/" + note).orElse("")));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static String text(Kind kind) {
        return kind.getText() == null ? "" : kind.getText().strip();
    }

    /** Further roots and functions in one harmony are chords stacked over the first. */
    private static List<Object> firstChord(List<Object> items) {
        for (int i = 1; i < items.size(); i++) {
            if (isHead(items.get(i)) && isHead(items.get(0))) {
                return items.subList(0, i);
            }
        }
        return items;
    }

    private static boolean isHead(Object item) {
        return item instanceof Root || item instanceof Numeral || item instanceof StyleText;
    }

    private static boolean saysNoChord(Kind kind) {
        return kind.getValue() == KindValue.NONE || NO_CHORD.matcher(text(kind)).matches();
    }

    private static <T> Optional<T> first(List<Object> items, Class<T> type) {
        return items.stream().filter(type::isInstance).map(type::cast).findFirst();
    }

    private static Optional<PitchClass> root(Root root) {
        return root.getRootStep() == null
                ? Optional.empty()
                : WrittenPitch.name(root.getRootStep().getValue(), alteration(root.getRootAlter()));
    }

    private static Optional<PitchClass> bass(List<Object> items) {
        return first(items, Bass.class)
                .filter(bass -> bass.getBassStep() != null)
                .flatMap(bass -> WrittenPitch.name(bass.getBassStep().getValue(), alteration(bass.getBassAlter())));
    }

    static int alteration(@Nullable HarmonyAlter alter) {
        return alter == null ? 0 : Numbers.alteration(alter.getValue());
    }

    private static List<DegreeChange> degrees(List<Object> items) {
        return items.stream()
                .filter(Degree.class::isInstance)
                .map(Degree.class::cast)
                .flatMap(degree -> change(degree).stream())
                .toList();
    }

    /** One degree element; none if it is incomplete or names no degree of a chord. */
    private static Optional<DegreeChange> change(Degree degree) {
        if (degree.getDegreeValue() == null
                || degree.getDegreeType() == null
                || degree.getDegreeType().getValue() == null) {
            return Optional.empty();
        }
        int number = Numbers.whole(degree.getDegreeValue().getValue()).orElse(0);
        int alteration = degree.getDegreeAlter() == null
                ? 0
                : Numbers.alteration(degree.getDegreeAlter().getValue());
        DegreeChange.Type type = switch (degree.getDegreeType().getValue()) {
            case ADD -> DegreeChange.Type.ADD;
            case ALTER -> DegreeChange.Type.ALTER;
            case SUBTRACT -> DegreeChange.Type.SUBTRACT;
        };
        return number >= 1 && number <= HIGHEST_DEGREE
                ? Optional.of(new DegreeChange(type, number, alteration))
                : Optional.empty();
    }
}
