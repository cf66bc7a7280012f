package org.fretgloss.pitch;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A chord with tones, as a chord symbol names it. Kinds without tones are no chord and never become one of these.
 *
 * @param root the spelled root
 * @param tones degrees above the root, rising, with what was added, altered and removed; never empty
 * @param bass the bass note where it is not the root
 * @param name as lead sheets print it: "A7", "Dm7♭5", "G/B"
 */
public record ChordSymbol(PitchClass root, List<Degree> tones, Optional<PitchClass> bass, String name) {

    /** Semitones of a perfect fifth. */
    private static final int FIFTH = 7;

    /**
     * Checks the components.
     *
     * @throws IllegalArgumentException if there are no tones
     */
    public ChordSymbol {
        tones = List.copyOf(tones);
        if (tones.isEmpty()) {
            throw new IllegalArgumentException("a chord has tones: " + name);
        }
    }

    /**
     * A plain chord of a kind.
     *
     * @throws IllegalArgumentException if the kind has no tones
     */
    public static ChordSymbol of(PitchClass root, ChordKind kind) {
        return ofTones(root, kind.degrees(), Optional.empty())
                .orElseThrow(
                        () -> new IllegalArgumentException("a chord has tones, the kind " + kind.value() + " none"));
    }

    /**
     * A chord as a score's chord symbol puts it together. A harmony of kind "other" is its root and what is added (W3C
     * MusicXML 4.0, {@code degree}), and so is a pedal with tones above it.
     *
     * @param changes in the order written
     * @param bass the bass note, where one is written
     * @return empty for "none", and wherever fewer than two different notes are left: a bare pedal is no chord
     */
    public static Optional<ChordSymbol> of(
            PitchClass root, ChordKind kind, List<DegreeChange> changes, Optional<PitchClass> bass) {
        if (kind == ChordKind.NONE) {
            return Optional.empty();
        }
        List<Degree> tones = kind.degrees().isEmpty() ? List.of(new Degree(1, 0)) : kind.degrees();
        for (DegreeChange change : changes) {
            tones = change.applyTo(tones);
        }
        return ofTones(root, tones, bass);
    }

    /** The chord of these tones under its lead-sheet name; empty where they are fewer than two different notes. */
    static Optional<ChordSymbol> ofTones(PitchClass root, List<Degree> tones, Optional<PitchClass> bass) {
        if (tones.stream().map(Degree::chroma).distinct().count() < 2) {
            return Optional.empty();
        }
        List<Degree> rising = tones.stream().distinct().sorted().toList();
        Optional<PitchClass> foreignBass = bass.filter(note -> note.chroma() != root.chroma());
        String over = foreignBass.map(note -> "/" + note).orElse("");
        return Optional.of(new ChordSymbol(root, rising, foreignBass, root + ChordShape.suffixOf(rising) + over));
    }

    /**
     * The chord on a root that sounds as these notes: the kind with just these tones, or with a fifth besides, which
     * players often leave out.
     *
     * @param sounding chromas, 0 to 11; the root need not be among them
     * @return empty where no kind has these tones
     */
    public static Optional<ChordSymbol> sounding(PitchClass root, Set<Integer> sounding) {
        Set<Integer> tones = sounding.stream()
                .map(chroma -> Math.floorMod(chroma - root.chroma(), 12))
                .collect(Collectors.toCollection(HashSet::new));
        tones.add(0);
        return Stream.of(tones, withFifth(tones))
                .flatMap(wanted -> Arrays.stream(ChordKind.values())
                        .filter(kind -> kind.degrees().size() == wanted.size()
                                && kind.degrees().stream().map(Degree::chroma).allMatch(wanted::contains)))
                .findFirst()
                .map(kind -> of(root, kind));
    }

    private static Set<Integer> withFifth(Set<Integer> tones) {
        Set<Integer> more = new HashSet<>(tones);
        more.add(FIFTH);
        return more;
    }

    public Optional<Degree> degreeOf(PitchClass note) {
        return degreeOf(note.chroma());
    }

    /** The chord tone that sounds at a chroma (0 to 11), named by its degree; the bass counts as a tone. */
    public Optional<Degree> degreeOf(int chroma) {
        int distance = Math.floorMod(chroma - root.chroma(), 12);
        Optional<Degree> tone =
                tones.stream().filter(degree -> degree.chroma() == distance).findFirst();
        if (tone.isEmpty() && bass.filter(note -> note.chroma() == chroma).isPresent()) {
            return Optional.of(Degree.named(distance));
        }
        return tone;
    }

    /** What sounds at a chroma (0 to 11), named by its degree against the root whether or not the chord holds it. */
    public Degree degreeAgainstRoot(int chroma) {
        return degreeOf(chroma).orElseGet(() -> Degree.named(chroma - root.chroma()));
    }

    public boolean contains(int chroma) {
        return degreeOf(chroma).isPresent();
    }

    /**
     * The tone that tells this chord from others on its root: the third, or where there is none the suspended tone (4
     * or 2), or else the fifth.
     */
    public Degree definingTone() {
        return Stream.of(4, 3, 5, 2, 7)
                .flatMap(semitones -> tones.stream()
                        .filter(degree -> degree.chroma() == semitones)
                        .limit(1))
                .findFirst()
                .orElse(tones.get(tones.size() - 1));
    }

    /** Whether the chord has a major third. */
    public boolean hasMajorThird() {
        return tones.stream().anyMatch(degree -> degree.chroma() == 4);
    }

    public boolean hasMinorThird() {
        return !hasMajorThird() && tones.stream().anyMatch(degree -> degree.chroma() == 3);
    }

    /** Whether the chord sounds as a dominant seventh: major third and minor seventh. */
    public boolean isDominant() {
        return hasMajorThird() && tones.stream().anyMatch(degree -> degree.chroma() == 10);
    }

    @Override
    public String toString() {
        return name;
    }
}
