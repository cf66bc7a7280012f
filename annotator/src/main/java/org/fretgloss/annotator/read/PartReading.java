package org.fretgloss.annotator.read;

import java.util.List;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.solo.Bar;

/**
 * A part as far as it must be read to tell whether it is the solo.
 *
 * @param timeline the part laid out in time
 * @param bars its bars
 * @param elements its note elements that sound, in the order of the document
 * @param staves its staves
 * @param strokes its notes, none of them shown twice
 */
record PartReading(Timeline timeline, List<Bar> bars, List<NoteElement> elements, Staves staves, List<Stroke> strokes) {

    /**
     * Reads a part.
     *
     * @param parts all parts, which sound together with this one
     * @param notices what the user is told if this part is the solo
     * @throws ScoreException if its lengths cannot be counted
     */
    static PartReading of(Timeline timeline, List<Timeline> parts, ParsedScore score, Notices notices)
            throws ScoreException {
        List<Bar> bars = BarRuler.bars(timeline, parts);
        List<NoteElement> elements = HarmonicChords.joined(ElementReader.read(timeline, bars, score, notices));
        Staves staves = Staves.of(timeline);
        List<Stroke> written = TieMerger.merge(elements, staves::isTablature);
        BendDialect dialect = BendDialect.of(written);
        List<Stroke> strokes =
                StaffPairing.pair(written.stream().map(dialect::translated).toList(), staves);
        return new PartReading(timeline, bars, elements, staves, strokes);
    }

    PartSource source() {
        return timeline.source();
    }
}
