package org.fretgloss.marks;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import org.fretgloss.pitch.Degree;
import org.fretgloss.solo.Bend;
import org.fretgloss.time.Fraction;
import org.fretgloss.time.Glyphs;

/**
 * The short text of a bend: how it is made, then the degrees it is heard at: "full 4→5", "pre full 5→4", "uni 4→5".
 *
 * @param kind what the bend is called
 * @param bend its course
 * @param degrees names the degree that lies some semitones above the fretted pitch
 */
record BendWords(BendKind kind, Bend bend, IntFunction<Degree> degrees) {

    private static final Fraction WHOLE_TONE = Fraction.of(2);

    /** In guitarists' words, which count whole tones: "¼", "½", "full", "1½", "2". */
    static String width(Fraction semitones) {
        return semitones.equals(WHOLE_TONE) ? "full" : Glyphs.of(semitones.dividedBy(WHOLE_TONE));
    }

    /** With its width, for a sentence: "a full bend", "a bend of 1½ tones". */
    static String sized(String noun, Bend bend) {
        Fraction tones = bend.width().dividedBy(WHOLE_TONE);
        if (tones.equals(Fraction.ONE)) {
            return "a full " + noun;
        }
        return "a " + noun + " of " + Glyphs.of(tones) + (tones.isLessThan(Fraction.ONE) ? " tone" : " tones");
    }

    /** "full 4→5→4". */
    String whole() {
        return headed(manner());
    }

    /** The degrees after a word of another's choice: "D7 ♭3→3". */
    String headed(String head) {
        String repeated = kind == BendKind.REPEATED ? " rep" : "";
        return head + " " + path() + repeated;
    }

    private String manner() {
        return switch (kind) {
            case UNISON -> "uni";
            case HELD -> "hold";
            case PRE_BEND, PRE_BEND_RELEASE -> "pre " + width(bend.width());
            case BEND, BEND_RELEASE, REPEATED, CURL -> width(bend.width());
        };
    }

    private String path() {
        return heights().stream()
                .map(semitones -> degrees.apply(semitones).toString())
                .collect(Collectors.joining("→"));
    }

    /** Semitones above the fret: where it starts, its peak, where it is let down to; each once. */
    private List<Integer> heights() {
        List<Integer> heights = new ArrayList<>();
        if (kind == BendKind.REPEATED) {
            return List.of(0, bend.heardSemitones());
        }
        heights.add(bend.heardAtStart());
        if (bend.heardSemitones() != bend.heardAtStart()) {
            heights.add(bend.heardSemitones());
        }
        if (bend.heardAtEnd() != bend.heardSemitones()) {
            heights.add(bend.heardAtEnd());
        }
        return heights;
    }
}
