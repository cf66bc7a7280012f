package org.fretgloss.analysis;

import java.util.List;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.solo.KeySignature;
import org.fretgloss.solo.Note;
import org.fretgloss.time.Fraction;

/**
 * What speaks for a tonality: the notes by how long they sound, where phrases end, the chords, and, weakest, the key
 * signature. Each gives a logarithm of likelihood, so that they add up and their sum tells how sure the best is.
 */
final class Witnesses {

    /**
     * How much the profile of melodies counts. Solos lean on ♭3, ♭7 and the blue notes far more than the melodies that it
     * was fitted on, so the weights of lead playing stand beside it.
     */
    private static final double MELODIES = 0.1;

    private static final double LEAD_PLAYING = 9;
    private static final double CADENCE = 3.2;
    private static final double CHORDS = 4.5;
    private static final double COLOUR = 2.7;

    /** How much it says for a mode that one third is heard and the other is not. */
    private static final double THIRD = 2.5;

    /** Thirds that share less of the time than this say little. */
    private static final double FAINT = 0.02;

    /** How much it says for a tonic that a third above it is heard: a home is seldom without its third. */
    private static final double ANY_THIRD = 2;

    private static final double SIGNATURE = 0.7;

    /** A form's key is what the user said. */
    private static final double STATED_KEY = 5.4;

    /** What the melodies' profile adds for minor: the fewer of them. */
    private static final double MINOR_PRIOR = -1.0;

    private final Passage passage;
    private final PitchShares shares;

    Witnesses(Passage passage) {
        this.passage = passage;
        this.shares = new PitchShares(passage.notes());
    }

    /** What the pitches say as they do in melodies, by their durations and nothing else. */
    double ofMelodies(Tonality tonality) {
        double sum = tonality.mode() == Mode.MINOR ? MINOR_PRIOR : 0;
        for (int degree = 0; degree < 12; degree++) {
            double weight = DegreeWeights.OF_MELODIES.of(tonality.mode(), degree);
            sum += weight * Math.sqrt(shares.of(degree, tonality.tonic()));
        }
        return sum;
    }

    /**
     * Everything together. A tonic is judged by the mode that suits it best; the colour then decides between its two modes
     * and never between tonics.
     */
    double together(Tonality tonality) {
        Tonality parallel = new Tonality(tonality.tonic(), tonality.mode().other());
        double mine = withoutColour(tonality);
        double theirs = withoutColour(parallel);
        double behind = theirs + colour(parallel) - mine - colour(tonality);
        return Math.max(mine, theirs) - Math.max(0, behind);
    }

    private double withoutColour(Tonality tonality) {
        double stated = passage.statedKey()
                        .filter(key -> key.chroma() == tonality.tonic())
                        .isPresent()
                ? STATED_KEY
                : 0;
        return MELODIES * ofMelodies(tonality)
                + LEAD_PLAYING * ofLeadPlaying(tonality)
                + CADENCE * cadence(tonality)
                + CHORDS * chords(tonality)
                + ANY_THIRD * anyThird(tonality.tonic())
                + SIGNATURE * signature(tonality)
                + stated;
    }

    private double ofLeadPlaying(Tonality tonality) {
        double sum = 0;
        for (int degree = 0; degree < 12; degree++) {
            sum += shares.of(degree, tonality.tonic()) * DegreeWeights.OF_LEAD_PLAYING.of(tonality.mode(), degree);
        }
        return sum;
    }

    /**
     * What speaks for one colour against the other on a tonic that is decided: the ♭3 and ♭7 for minor; the 2, the 6 and
     * a 3 that is not bent for major; above all, which of the two thirds is heard. Above 0 for the mode, below 0 against
     * it.
     */
    private double colour(Tonality tonality) {
        int tonic = tonality.tonic();
        double minor = shares.of(3, tonic) + shares.of(10, tonic);
        double major = shares.of(2, tonic) + shares.of(9, tonic) + shares.unbent(4, tonic);
        double thirds = shares.of(3, tonic) - shares.unbent(4, tonic);
        double balance = thirds / (shares.of(3, tonic) + shares.unbent(4, tonic) + FAINT);
        double forMinor = COLOUR * (minor - major) + THIRD * balance;
        return tonality.mode() == Mode.MINOR ? forMinor : -forMinor;
    }

    /**
     * How surely a third above a tonic is heard, whichever: 1 where a chord on the tonic sounds it; else by the notes, 0
     * where none has it, half for a faint one, close to 1.
     */
    private double anyThird(int tonic) {
        boolean inChord = passage.harmony().spans().stream()
                .flatMap(span -> span.chord().stream())
                .anyMatch(chord -> chord.root().chroma() == tonic && (chord.hasMinorThird() || chord.hasMajorThird()));
        double thirds = shares.of(3, tonic) + shares.of(4, tonic);
        return inChord ? 1 : thirds / (thirds + FAINT);
    }

    /** How often phrases end on the tonic, half for its fifth; the last phrase counts double. */
    private double cadence(Tonality tonality) {
        List<Note> landings = passage.landings();
        double sum = 0;
        for (int i = 0; i < landings.size(); i++) {
            double weight = i == landings.size() - 1 ? 2 : 1;
            int degree = tonality.degreeOf(landings.get(i).heardMidi());
            sum += weight * (degree == 0 ? 1 : degree == 7 ? 0.5 : 0);
        }
        return sum / (landings.size() + 1.0);
    }

    /** How much the chords stand on the tonic, the first and the last above all, and agree with the mode. */
    private double chords(Tonality tonality) {
        List<ChordSpan> sounding = passage.harmony().spans().stream()
                .filter(span -> span.chord().isPresent())
                .toList();
        if (sounding.isEmpty()) {
            return 0;
        }
        double first = onTonic(sounding.get(0), tonality);
        double last = onTonic(sounding.get(sounding.size() - 1), tonality);
        double held = 0;
        double all = 0;
        for (ChordSpan span : sounding) {
            double length = length(span);
            held += length * onTonic(span, tonality);
            all += length;
        }
        return 0.35 * first + 0.25 * last + 0.4 * held / all;
    }

    private static double length(ChordSpan span) {
        Fraction length = span.end().minus(span.start());
        return length.toDouble();
    }

    /** 1 for a chord on the tonic, unless it contradicts the mode: a minor chord major, a plain major chord minor. */
    private static double onTonic(ChordSpan span, Tonality tonality) {
        ChordSymbol chord = span.chord().orElseThrow();
        if (chord.root().chroma() != tonality.tonic()) {
            return 0;
        }
        boolean contradicts =
                tonality.mode() == Mode.MAJOR ? chord.hasMinorThird() : chord.hasMajorThird() && !chord.isDominant();
        return contradicts ? 0 : 1;
    }

    /** Many exporters print no sharps for every key, so an empty signature without a mode says little. */
    private double signature(Tonality tonality) {
        KeySignature signature = passage.signature();
        if (!tonality.isPrintedBy(signature.fifths())) {
            return 0;
        }
        boolean modeAgrees = signature
                .mode()
                .map(name -> name.equals(tonality.mode() == Mode.MAJOR ? "major" : "minor"))
                .orElse(true);
        return (modeAgrees ? 1 : 0.5) * (signature.fifths() == 0 ? 0.25 : 1);
    }
}
