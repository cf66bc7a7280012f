package org.fretgloss.annotator.read;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.solo.Bar;

/**
 * A part as far as it must be read to tell whether it is the solo; or the two parts of one guitar, read as one.
 *
 * @param sources the part; or the part with the notation, and the one with the tablature
 * @param timeline the part laid out in time
 * @param bars its bars
 * @param elements its note elements that sound, in the order of the document
 * @param staves its staves
 * @param strokes its notes in order of time, none of them shown twice
 */
record PartReading(
        List<PartSource> sources,
        Timeline timeline,
        List<Bar> bars,
        List<NoteElement> elements,
        Staves staves,
        List<Stroke> strokes) {

    private static final Comparator<Stroke> IN_TIME =
            Comparator.comparing(Stroke::onset).thenComparing(stroke -> !stroke.grace());

    PartReading {
        sources = List.copyOf(sources);
    }

    /**
     * Reads a part.
     *
     * @param shared what all parts, which sound together with this one, say of each bar
     * @param notices what the user is told if this part is the solo
     * @throws ScoreException if its lengths cannot be counted
     */
    static PartReading of(Timeline timeline, SharedBars shared, ParsedScore score, Notices notices)
            throws ScoreException {
        List<Bar> bars = BarRuler.bars(timeline, shared);
        List<NoteElement> elements = HarmonicChords.joined(ElementReader.read(timeline, bars, score, notices));
        Staves staves = Staves.of(timeline);
        List<Stroke> written = TieMerger.merge(elements, staves::isTablature);
        List<Stroke> strokes = StaffPairing.pair(BendDialect.understood(written), staves);
        return new PartReading(List.of(timeline.source()), timeline, bars, elements, staves, strokes);
    }

    /** The part that stands for it: the notation's, where there are two. */
    PartSource source() {
        return sources.get(0);
    }

    /** Whether all of it stands on tablature, with frets. */
    boolean isTablature() {
        return elements.stream().allMatch(element -> staves.isTablature(element.staff()))
                && strokes.stream().anyMatch(stroke -> stroke.place().isPresent());
    }

    /** Whether none of it stands on tablature. */
    boolean isNotation() {
        return !elements.isEmpty() && elements.stream().noneMatch(element -> staves.isTablature(element.staff()));
    }

    boolean countsBarsLike(PartReading other) {
        return bars.stream()
                .map(Bar::start)
                .toList()
                .equals(other.bars.stream().map(Bar::start).toList());
    }

    /** This part and another that shows the same music as tablature, as though that were a further staff of this one. */
    PartReading withTablature(PartReading tablature) {
        int above = elements.stream().mapToInt(NoteElement::staff).max().orElse(1);
        Staves both = staves.withBelow(tablature.staves, above);
        List<Stroke> shown = Stream.concat(
                        strokes.stream(),
                        tablature.strokes.stream()
                                .map(stroke -> stroke.mapped(element -> element.movedTo(bars, above))))
                .sorted(IN_TIME)
                .toList();
        return new PartReading(
                Stream.concat(sources.stream(), tablature.sources.stream()).toList(),
                timeline.withTablature(tablature.timeline),
                bars,
                Stream.concat(
                                elements.stream(),
                                tablature.elements.stream().map(element -> element.movedTo(bars, above)))
                        .toList(),
                both,
                StaffPairing.pair(shown, both));
    }
}
