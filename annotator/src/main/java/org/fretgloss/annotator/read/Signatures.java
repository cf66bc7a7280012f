package org.fretgloss.annotator.read;

import java.math.BigInteger;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.audiveris.proxymusic.Attributes;
import org.audiveris.proxymusic.Key;
import org.audiveris.proxymusic.MeasureStyle;
import org.audiveris.proxymusic.StartStop;
import org.audiveris.proxymusic.Time;
import org.audiveris.proxymusic.Transpose;
import org.fretgloss.solo.KeySignature;
import org.fretgloss.time.Fraction;
import org.fretgloss.time.Meter;
import org.jspecify.annotations.Nullable;

/** What is in force at a moment of a part: divisions, meter, key and transposition. */
final class Signatures {

    static final int MOST_FIFTHS = 14;

    /** Semitones of a transposition, its octaves apart. */
    static final int MOST_CHROMATIC = 60;

    static final int MOST_OCTAVES = 5;
    private static final int ALL_STAVES = 0;

    private final Notices notices;
    private final Map<Integer, Integer> transpositions = new HashMap<>();
    private Fraction divisions;
    private Optional<Meter> meter = Optional.empty();
    private KeySignature key = KeySignature.NONE;

    /** Whether a time signature, or the sign for none, has been read. */
    private boolean isSigned;

    private boolean repeatsBars;

    /**
     * Begins with nothing declared.
     *
     * @param divisions what is in force until divisions are declared
     */
    Signatures(Fraction divisions, Notices notices) {
        this.divisions = divisions;
        this.notices = notices;
    }

    /** How many of the file's duration units make a quarter note. */
    Fraction divisions() {
        return divisions;
    }

    /** None where the music is free of bars, and as long as no meter is declared. */
    Optional<Meter> meter() {
        return meter;
    }

    KeySignature key() {
        return key;
    }

    /** Whether a sign stands for what stands before it: "as the bar before". */
    boolean repeatsBars() {
        return repeatsBars;
    }

    /** Semitones from written to sounding pitch on a staff. */
    int transposition(int staff) {
        return transpositions.getOrDefault(staff, transpositions.getOrDefault(ALL_STAVES, 0));
    }

    /**
     * Takes over what a file declares anew.
     *
     * @param bar the bar's number, for notices
     */
    void declare(Attributes attributes, String bar) {
        divisions = Numbers.fraction(attributes.getDivisions())
                .filter(Fraction::isPositive)
                .orElse(divisions);
        for (Time time : attributes.getTime()) {
            if (isOfFirstStaff(time.getNumber())) {
                declare(time, bar);
            }
        }
        for (Key written : attributes.getKey()) {
            if (isOfFirstStaff(written.getNumber())) {
                declare(written);
            }
        }
        attributes.getMeasureStyle().forEach(this::declare);
        for (Transpose transpose : attributes.getTranspose()) {
            int staff = Numbers.whole(transpose.getNumber()).orElse(ALL_STAVES);
            if (staff == ALL_STAVES) {
                transpositions.clear();
            }
            transpositions.put(staff, semitones(transpose));
        }
    }

    private void declare(Time time, String bar) {
        if (Meters.isFree(time)) {
            meter = Optional.empty();
            isSigned = true;
            return;
        }
        Optional<Meter> read = Meters.read(time);
        if (read.isPresent()) {
            meter = read;
            isSigned = true;
        } else {
            String instead = isSigned ? "the one before it stays in force" : "it is passed over";
            notices.say(
                    "time signature: " + instead,
                    "the time signature " + Notices.quoted(Meters.written(time)) + " cannot be read, so " + instead,
                    bar);
        }
    }

    private void declare(Key written) {
        int fifths = Numbers.whole(written.getFifths()).orElse(0);
        key = new KeySignature(
                Math.abs(fifths) <= MOST_FIFTHS ? fifths : 0,
                Optional.ofNullable(written.getMode()).map(String::strip).filter(mode -> !mode.isEmpty()));
    }

    private void declare(MeasureStyle style) {
        if (style.getMeasureRepeat() != null) {
            repeatsBars = style.getMeasureRepeat().getType() != StartStop.STOP;
        }
        if (style.getBeatRepeat() != null) {
            repeatsBars = style.getBeatRepeat().getType() != StartStop.STOP;
        }
    }

    /** Staves of one part may be signed differently only in music that no guitar plays; the first staff speaks for all. */
    private static boolean isOfFirstStaff(@Nullable BigInteger staff) {
        return Numbers.whole(staff).orElse(1) == 1;
    }

    private static int semitones(Transpose transpose) {
        long chromatic = Numbers.fraction(transpose.getChromatic())
                .filter(semitones -> !semitones.abs().isMoreThan(Fraction.of(MOST_CHROMATIC)))
                .orElse(Fraction.ZERO)
                .floor();
        return (int) chromatic + 12 * octaves(transpose.getOctaveChange());
    }

    /** By how many octaves a sign moves the notes; 0 if it is absent or absurd. */
    static int octaves(@Nullable BigInteger written) {
        return Numbers.whole(written).stream()
                .filter(octaves -> Math.abs(octaves) <= MOST_OCTAVES)
                .findFirst()
                .orElse(0);
    }
}
