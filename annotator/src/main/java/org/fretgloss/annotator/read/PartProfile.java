package org.fretgloss.annotator.read;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.fretgloss.time.Fraction;

/**
 * What speaks for a part being the solo.
 *
 * @param part the part
 * @param notes how many notes sound
 * @param fretted share of them with string and fret
 * @param marks bends, slides, hammer-ons and the like for each note
 * @param single share of its moments at which one note begins alone
 */
record PartProfile(PartReading part, int notes, double fretted, double marks, double single) {

    private static final double MOST_SINGLE = 0.75;

    static PartProfile of(PartReading part) {
        List<Stroke> strokes = part.strokes();
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
                part,
                strokes.size(),
                share(fretted, strokes.size()),
                share(marks, strokes.size()),
                share(single, moments.size()));
    }

    boolean sounds() {
        return notes > 0;
    }

    /** Whether notes are struck together at a quarter of its moments or more, as by whoever comps or strums. */
    boolean playsChords() {
        return sounds() && single <= MOST_SINGLE;
    }

    boolean isBass() {
        return sounds() && (part.sources().stream().anyMatch(PartSource::playsBass) || isCalled("bass"));
    }

    boolean isPercussion() {
        return part.sources().stream().anyMatch(PartSource::percussion) || isCalled("drums?|percussion");
    }

    /** Higher is likelier. Frets weigh most, then the name, then marks, single notes and the instrument. */
    double weight() {
        return 4 * fretted + 2 * Math.min(1, 2 * marks) + 2 * single + instrument() + name();
    }

    private double instrument() {
        boolean guitar = part.sources().stream().anyMatch(PartSource::playsGuitar);
        boolean bass = part.sources().stream().anyMatch(PartSource::playsBass);
        return guitar ? 1 : bass ? -2 : 0;
    }

    private double name() {
        double weight = isCalled("solo|lead") ? 3 : 0;
        weight += isCalled("guitar|gtr") ? 1 : 0;
        return isCalled("bass") ? weight - 2 : weight;
    }

    private boolean isCalled(String words) {
        return part.source().part().name().toLowerCase(Locale.ROOT).matches(".*\\b(" + words + ")\\b.*");
    }

    private static double share(long part, int whole) {
        return whole == 0 ? 0 : (double) part / whole;
    }
}
