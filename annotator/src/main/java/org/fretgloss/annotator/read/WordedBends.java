package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.FormattedTextId;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Technique;
import org.fretgloss.time.Fraction;

/**
 * Bends of which only the width is written, as a text at a note or over the staff ("full", "½"). The text may stand at
 * either of two slurred notes; it is the first that is bent, where the second is its peak. Beside a bend element a text
 * only repeats it.
 */
final class WordedBends {

    private final List<Sounding> written;
    private final List<Sounding> read;
    private final Slurs slurs;

    private WordedBends(List<Sounding> written) {
        this.written = written;
        this.read = new ArrayList<>(written);
        this.slurs = Slurs.of(written);
    }

    /**
     * Gives the notes the bends that are written as texts.
     *
     * @param sounding in order of time
     * @param part where the words over the staff stand
     */
    static List<Sounding> read(List<Sounding> sounding, Timeline part, List<Bar> bars) {
        WordedBends bends = new WordedBends(sounding);
        Map<Fraction, Fraction> over = over(part, bars);
        if (!over.isEmpty()) {
            bends.readOver(over);
        }
        for (int i = 0; i < sounding.size(); i++) {
            Optional<Fraction> width = sounding.get(i).stroke().marks().bendText();
            if (width.isPresent()) {
                bends.bend(i, width.get());
            }
        }
        return bends.read;
    }

    /** Widths of bends in words over the staff, by their moment. */
    private static Map<Fraction, Fraction> over(Timeline part, List<Bar> bars) {
        Map<Fraction, Fraction> over = new TreeMap<>();
        for (Placed<Direction> placed : part.directions()) {
            Fraction moment = bars.get(placed.bar()).start().plus(placed.at());
            placed.item().getDirectionType().stream()
                    .flatMap(type -> type.getWordsOrSymbol().stream())
                    .flatMap(item -> item instanceof FormattedTextId words ? Stream.of(words) : Stream.of())
                    .flatMap(words -> BendText.semitones(words.getValue()).stream())
                    .forEach(width -> over.putIfAbsent(moment, width));
        }
        return over;
    }

    /** Words may stand over the arrow's head, later than the note begins. */
    private void readOver(Map<Fraction, Fraction> over) {
        NavigableMap<Fraction, List<Integer>> places = new TreeMap<>();
        for (int i = 0; i < written.size(); i++) {
            for (NoteElement element : written.get(i).stroke().elements()) {
                places.computeIfAbsent(element.onset(), unseen -> new ArrayList<>())
                        .add(i);
            }
        }
        over.forEach((moment, width) -> {
            Map.Entry<Fraction, List<Integer>> begun = places.floorEntry(moment);
            if (begun != null) {
                List<Integer> sounding = begun.getValue().stream()
                        .filter(place -> begun.getKey().equals(moment)
                                || moment.isLessThan(written.get(place).stroke().end()))
                        .toList();
                meant(sounding).ifPresent(place -> bend(place, width));
            }
        });
    }

    /** Of the notes of a moment the one that a slur or tie leads on from, else the highest; none where one is bent anyway. */
    private Optional<Integer> meant(List<Integer> places) {
        if (places.stream().anyMatch(place -> !written.get(place).bends().isEmpty())) {
            return Optional.empty();
        }
        return places.stream()
                .max(Comparator.<Integer, Boolean>comparing(place -> leadsOn(written.get(place)))
                        .thenComparing(place -> !written.get(place).stroke().grace())
                        .thenComparing(place -> written.get(place).midi()));
    }

    private static boolean leadsOn(Sounding note) {
        return note.stroke().marks().begins().contains(Link.SLUR)
                || note.stroke().elements().size() > 1;
    }

    private void bend(int place, Fraction width) {
        Sounding note = written.get(place);
        Optional<Integer> before = slurs.origin(note);
        boolean repeats = !read.get(place).bends().isEmpty()
                || before.filter(from -> !read.get(from).bends().isEmpty()).isPresent();
        if (repeats || note.stroke().marks().has(Technique.DEAD)) {
            return;
        }
        int bent = before.filter(from -> isPeak(note, written.get(from), width)).orElse(place);
        read.set(bent, written.get(bent).withBends(List.of(new BendStep(width, BendStep.Kind.BEND))));
    }

    private static boolean isPeak(Sounding note, Sounding from, Fraction width) {
        return (note.at().isEmpty() || note.at().equals(from.at()))
                && Fraction.of(note.writtenMidi() - from.midi()).equals(width);
    }
}
