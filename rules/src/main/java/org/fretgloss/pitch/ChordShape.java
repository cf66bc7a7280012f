package org.fretgloss.pitch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A chord as lead sheets print it after the root: a suffix that everybody knows, and the tones that it stands for.
 *
 * @param suffix "" for a major triad, "m7", "6/9"
 * @param tones degrees above the root, rising
 */
record ChordShape(String suffix, List<Degree> tones) {

    /**
     * The shapes of MusicXML's kinds, plainest first, then the usual ones for which it has no kind (common practice, no
     * source).
     */
    private static final List<ChordShape> KNOWN = Stream.concat(
                    Stream.of(ChordKind.values())
                            .filter(kind -> !kind.degrees().isEmpty() && kind != ChordKind.NEAPOLITAN)
                            .map(kind -> new ChordShape(kind.suffix(), kind.degrees())),
                    Stream.of(
                            shape("7sus2", "1 2 5 ♭7"),
                            shape("7sus4", "1 4 5 ♭7"),
                            shape("9sus4", "1 4 5 ♭7 9"),
                            shape("13sus4", "1 4 5 ♭7 9 13"),
                            shape("6/9", "1 3 5 6 9"),
                            shape("m6/9", "1 ♭3 5 6 9"),
                            shape("m(maj9)", "1 ♭3 5 7 9"),
                            shape("7alt", "1 3 ♭5 ♯5 ♭7 ♭9 ♯9")))
            .toList();

    /** Most chords of most scores are shapes as they stand: these need no search for the nearest. */
    private static final Map<List<Degree>, String> SUFFIXES =
            KNOWN.stream().collect(Collectors.toUnmodifiableMap(ChordShape::tones, ChordShape::suffix, (a, b) -> a));

    private static ChordShape shape(String suffix, String tones) {
        return new ChordShape(suffix, Degree.parseAll(tones));
    }

    static Optional<ChordShape> ofSuffix(String suffix) {
        return KNOWN.stream().filter(shape -> shape.suffix.equals(suffix)).findFirst();
    }

    /**
     * Names any chord: the shape that is nearest, followed by what differs from it. Whichever way a score puts a chord
     * together, the same tones give the same name.
     */
    static String suffixOf(List<Degree> tones) {
        String known = SUFFIXES.get(tones);
        return known == null ? nearest(tones) : known;
    }

    private static String nearest(List<Degree> tones) {
        return KNOWN.stream()
                .filter(shape -> !shape.losesTwin(tones))
                .map(shape -> new Named(shape, shape.differencesTo(tones)))
                .min(Comparator.comparingInt(named -> named.differences.size()))
                .map(Named::text)
                .orElseThrow();
    }

    private record Named(ChordShape shape, List<String> differences) {

        /** After a bare root the first sign would read as the root's own: C(♭5) is not C♭5. */
        String text() {
            String all = String.join("", differences);
            boolean readsAsRoot = shape.suffix.isEmpty() && (all.startsWith("♭") || all.startsWith("♯"));
            return readsAsRoot ? "(" + all + ")" : shape.suffix + all;
        }
    }

    /** "no9" leaves out ♭9 and ♯9 alike, so a shape with both cannot lose one of them. */
    private boolean losesTwin(List<Degree> wanted) {
        return tones.stream()
                .filter(tone -> !wanted.contains(tone))
                .anyMatch(lost ->
                        tones.stream().anyMatch(twin -> twin.number() == lost.number() && wanted.contains(twin)));
    }

    private List<String> differencesTo(List<Degree> wanted) {
        List<String> differences = new ArrayList<>();
        tones.stream()
                .filter(tone -> !wanted.contains(tone) && !isAltered(tone, wanted))
                .forEach(tone -> differences.add("no" + tone.number()));
        wanted.stream().filter(tone -> !tones.contains(tone)).forEach(tone -> differences.add(added(tone, wanted)));
        return differences;
    }

    /** Whether another form of this natural tone stands in its place: a ♭5 for the 5. */
    private static boolean isAltered(Degree tone, List<Degree> wanted) {
        return tone.alteration() == 0
                && wanted.stream().anyMatch(other -> other.number() == tone.number() && other.alteration() != 0);
    }

    private String added(Degree tone, List<Degree> wanted) {
        Degree natural = new Degree(tone.number(), 0);
        boolean replaces = tones.contains(natural) && !wanted.contains(natural);
        boolean plainSign = tone.alteration() != 0 && hasSixthOrSeventh() && !wanted.contains(natural);
        return replaces || plainSign ? tone.toString() : "add" + tone;
    }

    private boolean hasSixthOrSeventh() {
        return tones.stream().anyMatch(tone -> tone.number() == 6 || tone.number() == 7);
    }
}
