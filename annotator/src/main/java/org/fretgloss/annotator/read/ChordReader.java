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
import org.jspecify.annotations.Nullable;

/** One chord symbol. */
final class ChordReader {

    private static final int HIGHEST_DEGREE = 13;

    /** A tone with a sign before it, as in "m7♭5". */
    private static final Pattern ALTERED = Pattern.compile("[♭♯b#+-]\\d");

    /** What a harmony element turns out to be. */
    sealed interface Reading {}

    /** A chord with tones. */
    record Named(ChordSymbol chord) implements Reading {}

    /**
     * No chord from here on: the one before ends.
     *
     * @param isSaid whether the symbol says so; otherwise it only does not say which chord it is
     */
    record NoChord(boolean isSaid) implements Reading {}

    /** Nothing that could be understood; the chord before stays in force. */
    record Unread(String why) implements Reading {}

    private ChordReader() {}

    /**
     * Reads a chord symbol.
     *
     * @param tuning of the instrument whose fretting a chord diagram shows
     */
    static Reading read(Harmony harmony, Tuning tuning) {
        List<Object> items = firstChord(harmony.getHarmonyChord());
        Optional<Kind> kind = first(items, Kind.class);
        if (kind.filter(ChordReader::saysNoChord).isPresent()) {
            return new NoChord(true);
        }
        Optional<PitchClass> root = first(items, Root.class).flatMap(ChordReader::root);
        if (root.isEmpty()) {
            return new Unread("a chord symbol without a root is passed over");
        }
        if (kind.isEmpty() || kind.get().getValue() == null) {
            return asPrinted(root.get(), kind.map(Kind::getText).orElse(""), bass(items));
        }
        ChordKind sort = ChordKind.ofValue(kind.get().getValue().value()).orElse(ChordKind.OTHER);
        List<DegreeChange> degrees = degrees(items);
        return ChordSymbol.of(root.get(), sort, degrees, bass(items))
                .map(chord -> degrees.isEmpty() ? asItsTextSays(chord, text(kind.get()), bass(items)) : chord)
                .or(() -> ChordDiagram.read(harmony.getFrame(), root.get(), tuning))
                .<Reading>map(Named::new)
                .orElseGet(() -> new NoChord(sort != ChordKind.OTHER));
    }

    /**
     * What is printed may hold more than the kind-value: "m7♭5" over minor-seventh, "7♯9" over dominant. A text that
     * contradicts the kind's third, or says less, is only a way of writing.
     */
    private static ChordSymbol asItsTextSays(ChordSymbol chord, String text, Optional<PitchClass> bass) {
        return named(chord.root(), text, bass)
                .filter(printed -> printed.hasMajorThird() == chord.hasMajorThird()
                        && printed.hasMinorThird() == chord.hasMinorThird())
                .filter(printed -> printed.tones().size() > chord.tones().size()
                        || (printed.tones().size() == chord.tones().size()
                                && ALTERED.matcher(text).find()))
                .orElse(chord);
    }

    /** Some programs leave the kind empty and only say how it is printed; a bare root is a major chord. */
    private static Reading asPrinted(PitchClass root, String suffix, Optional<PitchClass> bass) {
        return named(root, suffix, bass)
                .<Reading>map(Named::new)
                .orElseGet(() -> new Unread("a chord symbol of an unknown kind is passed over"));
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
        return kind.getValue() == KindValue.NONE || text(kind).matches("(?i)n\\.?\\s*c\\.?|no chord");
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

    private static int alteration(@Nullable HarmonyAlter alter) {
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
