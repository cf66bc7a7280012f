package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.fretgloss.annotator.file.NoteScanner;
import org.fretgloss.annotator.file.ScoreException;

/** In which dialect each staff of a score writes its bends, as the reader takes it. */
public final class BendDialects {

    private BendDialects() {}

    /**
     * "P1 staff 1 heights, P2 staff 1 movements", or "-" where nothing is bent.
     *
     * @throws ScoreException if the score cannot be read
     */
    public static String of(String text) throws ScoreException {
        ParsedScore score = ScoreParser.parse(NoteScanner.over(text));
        List<Timeline> parts = new ArrayList<>();
        for (PartSource source : score.parts()) {
            parts.add(TimelineReader.read(source, new Notices()));
        }
        SharedBars shared = SharedBars.of(parts);
        List<String> dialects = new ArrayList<>();
        for (Timeline part : parts) {
            List<Stroke> written = written(part, shared, score);
            Set<Integer> bent = written.stream()
                    .filter(stroke -> !stroke.marks().bends().isEmpty())
                    .map(Stroke::staff)
                    .collect(Collectors.toSet());
            for (Map.Entry<Integer, BendDialect> staff :
                    BendDialect.ofStaves(written).entrySet()) {
                if (bent.contains(staff.getKey())) {
                    dialects.add(part.source().part().id() + " staff " + staff.getKey()
                            + (staff.getValue().heights() ? " heights" : " movements"));
                }
            }
        }
        return dialects.isEmpty() ? "-" : String.join(", ", dialects);
    }

    private static List<Stroke> written(Timeline part, SharedBars shared, ParsedScore score) throws ScoreException {
        List<NoteElement> elements = ElementReader.read(part, BarRuler.bars(part, shared), score, new Notices());
        return TieMerger.merge(HarmonicChords.joined(elements), Staves.of(part)::isTablature);
    }
}
