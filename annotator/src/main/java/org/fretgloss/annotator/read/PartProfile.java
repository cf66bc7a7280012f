package org.fretgloss.annotator.read;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.fretgloss.time.Fraction;

/**
 * What speaks for a part being the solo.
 *
 * @param source the part
 * @param notes how many notes sound
 * @param fretted share of them with string and fret
 * @param marks bends, slides, hammer-ons and the like for each note
 * @param single share of its moments at which one note begins alone
 */
record PartProfile(PartSource source, int notes, double fretted, double marks, double single) {

    private static final int FIRST_GUITAR = 25;
    private static final int LAST_GUITAR = 32;
    private static final int LAST_BASS = 40;

    static PartProfile of(PartSource source, List<Stroke> strokes) {
        Map<Fraction, Integer> moments = new HashMap<>();
        int fretted = 0;
        long marks = 0;
        for (Stroke stroke : strokes) {
            moments.merge(stroke.onset(), 1, Integer::sum);
            fretted += stroke.place().isPresent() ? 1 : 0;
            marks += stroke.marks().count();
        }
        long single = moments.values().stream().filter(count -> count == 1).count();
        return new PartProfile(
                source,
                strokes.size(),
                share(fretted, strokes.size()),
                share(marks, strokes.size()),
                share(single, moments.size()));
    }

    boolean sounds() {
        return notes > 0;
    }

    /** Higher is likelier. Frets weigh most, then the name, then marks, single notes and the instrument. */
    double weight() {
        return 4 * fretted + 2 * Math.min(1, 2 * marks) + 2 * single + instrument() + name();
    }

    /** General MIDI has guitars at programs 25 to 32 and basses at 33 to 40, counted from 1. */
    private double instrument() {
        if (source.programs().stream().anyMatch(program -> program >= FIRST_GUITAR && program <= LAST_GUITAR)) {
            return 1;
        }
        return source.programs().stream().anyMatch(program -> program > LAST_GUITAR && program <= LAST_BASS) ? -2 : 0;
    }

    private double name() {
        String name = source.part().name().toLowerCase(Locale.ROOT);
        double weight = name.matches(".*\\b(solo|lead)\\b.*") ? 3 : 0;
        weight += name.matches(".*\\b(guitar|gtr)\\b.*") ? 1 : 0;
        return name.matches(".*\\bbass\\b.*") ? weight - 2 : weight;
    }

    private static double share(long part, int whole) {
        return whole == 0 ? 0 : (double) part / whole;
    }
}
