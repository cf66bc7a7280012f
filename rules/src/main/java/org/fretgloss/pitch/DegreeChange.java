package org.fretgloss.pitch;

import java.util.ArrayList;
import java.util.List;

/**
 * A tone added to a chord's kind, altered in it or taken out of it, as a MusicXML 4.0 {@code degree} element says it.
 *
 * @param type what happens to the degree
 * @param number the degree of the chord: 1 for the root, 3 for the third; at least 1
 * @param alteration semitones. Of an added tone against a dominant chord (major and perfect intervals, but a minor
 *     seventh), of an altered one against the tone that the kind has; not looked at where a tone is taken out (MusicXML
 *     4.0, {@code degree-alter})
 */
public record DegreeChange(Type type, int number, int alteration) {

    /** What happens to the degree. */
    public enum Type {
        ADD,
        ALTER,
        SUBTRACT
    }

    /**
     * Checks the components.
     *
     * @throws IllegalArgumentException if the number is below 1
     */
    public DegreeChange {
        if (number < 1) {
            throw new IllegalArgumentException("a chord has no degree " + number);
        }
    }

    /**
     * The tones with this change made. To alter a tone that is not there is to add it: scores write a 7♯9 chord as a
     * dominant seventh with its ninth altered. To take out a tone that is not there changes nothing.
     */
    List<Degree> applyTo(List<Degree> tones) {
        List<Degree> changed = new ArrayList<>(tones);
        switch (type) {
            case ADD -> add(changed);
            case ALTER -> {
                if (changed.stream().anyMatch(this::isMeant)) {
                    changed.replaceAll(
                            tone -> isMeant(tone) ? new Degree(number, tone.alteration() + alteration) : tone);
                } else {
                    add(changed);
                }
            }
            case SUBTRACT -> changed.removeIf(this::isMeant);
        }
        return changed;
    }

    private boolean isMeant(Degree tone) {
        return tone.number() == number;
    }

    private void add(List<Degree> tones) {
        boolean seventh = number % 7 == 0;
        tones.add(new Degree(number, seventh ? alteration - 1 : alteration));
    }
}
