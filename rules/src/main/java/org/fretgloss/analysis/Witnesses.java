package org.fretgloss.analysis;

import java.util.List;
import java.util.Optional;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.solo.KeySignature;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;

/**
 * What speaks for a tonic and a colour: the notes by how long they sound, where phrases end, the chords, and, weakest,
 * the key signature. Each witness gives 0 to 1.
 */
final class Witnesses {

    /** How much each witness counts beside the notes' own 1. */
    private static final double CADENCE = 0.35;

    private static final double CHORDS = 0.5;
    private static final double COLOUR = 0.3;
    private static final double SIGNATURE = 0.08;

    /** A form's key is what the user said. */
    private static final double STATED_KEY = 0.6;

    /** By chroma, the share of the heard time; what a half bend reaches is kept apart, by the fretted chroma. */
    private final double[] share = new double[12];

    private final double[] halfBent = new double[12];
    private final double[] unbent = new double[12];
    private final List<Integer> landings;
    private final Harmony harmony;
    private final Optional<Integer> statedKey;
    private final KeySignature signature;

    Witnesses(Solo solo, Phrasing phrasing, Harmony harmony, Optional<Form> form) {
        this.harmony = harmony;
        this.statedKey = form.flatMap(laid -> laid.progression().key()).map(key -> key.chroma());
        this.signature = solo.bars().get(0).key();
        this.landings = phrasing.ends(solo).stream()
                .map(end -> soundingBefore(solo, end))
                .flatMap(Optional::stream)
                .map(note -> Math.floorMod(note.heardMidi(), 12))
                .toList();
        weigh(solo);
    }

    private void weigh(Solo solo) {
        double total = 0;
        for (Note note : solo.notes()) {
            for (Heard heard : Heard.of(note)) {
                double length = heard.duration().toDouble();
                boolean half = heard.bent() && heard.midi() == note.midi() + 1;
                (half ? halfBent : share)[Math.floorMod(half ? note.midi() : heard.midi(), 12)] += length;
                unbent[heard.chroma()] += heard.bent() ? 0 : length;
                total += length;
            }
        }
        for (int chroma = 0; chroma < 12 && total > 0; chroma++) {
            share[chroma] /= total;
            halfBent[chroma] /= total;
            unbent[chroma] /= total;
        }
    }

    /** A phrase lands on its last note that has a pitch. */
    private static Optional<Note> soundingBefore(Solo solo, Note end) {
        for (int i = end.index(); i >= 0; i--) {
            Note note = solo.notes().get(i);
            if (!note.grace() && !note.isDead()) {
                return Optional.of(note);
            }
        }
        return Optional.empty();
    }

    /**
     * Everything together; only the order of such sums and their distance mean something. A tonic is judged by the mode
     * that suits it best; the colour then decides between its two modes and never between tonics.
     */
    double score(int tonic, Mode mode) {
        Mode other = mode == Mode.MINOR ? Mode.MAJOR : Mode.MINOR;
        double mine = withoutColour(tonic, mode);
        double theirs = withoutColour(tonic, other);
        double behind = theirs + colour(tonic, other) - mine - colour(tonic, mode);
        return Math.max(mine, theirs) - Math.max(0, behind);
    }

    private double withoutColour(int tonic, Mode mode) {
        double stated = statedKey.filter(key -> key == tonic).isPresent() ? STATED_KEY : 0;
        return notes(tonic, mode)
                + CADENCE * cadence(tonic)
                + CHORDS * chords(tonic, mode)
                + SIGNATURE * signature(tonic, mode)
                + stated;
    }

    /** A ♭3 bent to the 3 is the blues' own third and speaks as the ♭3 does; other bends speak by their peak. */
    private double notes(int tonic, Mode mode) {
        double sum = 0;
        for (int degree = 0; degree < 12; degree++) {
            int chroma = (tonic + degree) % 12;
            sum += share[chroma] * mode.weight(degree);
            sum += halfBent[chroma] * mode.weight(degree == 3 ? 3 : degree + 1);
        }
        return sum;
    }

    /**
     * What speaks for one colour against the other on a tonic that is decided: the ♭3 and ♭7 for minor; the 2, the 6 and
     * a 3 that is not bent for major. Above 0 for the mode, below 0 against it.
     */
    private double colour(int tonic, Mode mode) {
        double minor = share[(tonic + 3) % 12] + halfBent[(tonic + 3) % 12] + share[(tonic + 10) % 12];
        double major = share[(tonic + 2) % 12] + share[(tonic + 9) % 12] + unbent[(tonic + 4) % 12];
        return COLOUR * (mode == Mode.MINOR ? minor - major : major - minor);
    }

    /** How often phrases end on the tonic, half for its fifth; the last phrase counts double. */
    private double cadence(int tonic) {
        double sum = 0;
        double most = landings.size() + 1.0;
        for (int i = 0; i < landings.size(); i++) {
            double weight = i == landings.size() - 1 ? 2 : 1;
            int degree = Math.floorMod(landings.get(i) - tonic, 12);
            sum += weight * (degree == 0 ? 1 : degree == 7 ? 0.5 : 0);
        }
        return sum / most;
    }

    /** How much the chords stand on the tonic, the first and the last above all, and agree with the colour. */
    private double chords(int tonic, Mode mode) {
        List<ChordSpan> sounding = harmony.spans().stream()
                .filter(span -> span.chord().isPresent())
                .toList();
        if (sounding.isEmpty()) {
            return 0;
        }
        double first = onTonic(sounding.get(0), tonic, mode);
        double last = onTonic(sounding.get(sounding.size() - 1), tonic, mode);
        double held = 0;
        double all = 0;
        for (ChordSpan span : sounding) {
            double length = length(span);
            held += length * onTonic(span, tonic, mode);
            all += length;
        }
        return 0.35 * first + 0.25 * last + 0.4 * held / all;
    }

    private static double length(ChordSpan span) {
        Fraction length = span.end().minus(span.start());
        return length.toDouble();
    }

    /** 1 for a chord on the tonic, unless it contradicts the mode: a minor chord major, a plain major chord minor. */
    private static double onTonic(ChordSpan span, int tonic, Mode mode) {
        ChordSymbol chord = span.chord().orElseThrow();
        if (chord.root().chroma() != tonic) {
            return 0;
        }
        boolean contradicts = mode == Mode.MAJOR ? chord.hasMinorThird() : chord.hasMajorThird() && !chord.isDominant();
        return contradicts ? 0 : 1;
    }

    /** Many exporters print no sharps for every key, so an empty signature without a mode says little. */
    private double signature(int tonic, Mode mode) {
        int majorTonic = Math.floorMod(7 * signature.fifths(), 12);
        int expected = mode == Mode.MAJOR ? majorTonic : (majorTonic + 9) % 12;
        if (expected != tonic) {
            return 0;
        }
        boolean modeAgrees = signature
                .mode()
                .map(name -> name.equals(mode == Mode.MAJOR ? "major" : "minor"))
                .orElse(true);
        return (modeAgrees ? 1 : 0.5) * (signature.fifths() == 0 ? 0.25 : 1);
    }
}
