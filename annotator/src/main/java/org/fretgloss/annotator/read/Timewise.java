package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.ScoreTimewise;

/** A score written bar by bar, turned into one written part by part. */
final class Timewise {

    private Timewise() {}

    /** The parts in the order of the first bar; a part that a bar leaves out has an empty bar there. */
    static List<ScorePartwise.Part> byPart(ScoreTimewise score) {
        List<ScorePartwise.Part> parts = new ArrayList<>();
        Map<Object, ScorePartwise.Part> byId = new HashMap<>();
        for (int bar = 0; bar < score.getMeasure().size(); bar++) {
            ScoreTimewise.Measure measure = score.getMeasure().get(bar);
            for (int place = 0; place < measure.getPart().size(); place++) {
                ScoreTimewise.Measure.Part written = measure.getPart().get(place);
                ScorePartwise.Part part = partOf(written, place, parts, byId);
                fill(part, score, bar);
                part.getMeasure().get(bar).getNoteOrBackupOrForward().addAll(written.getNoteOrBackupOrForward());
            }
        }
        parts.forEach(part -> fill(part, score, score.getMeasure().size() - 1));
        return parts;
    }

    private static ScorePartwise.Part partOf(
            ScoreTimewise.Measure.Part written,
            int place,
            List<ScorePartwise.Part> parts,
            Map<Object, ScorePartwise.Part> byId) {
        Object id = written.getId() == null ? Integer.valueOf(place) : written.getId();
        return byId.computeIfAbsent(id, unseen -> {
            ScorePartwise.Part part = new ScorePartwise.Part();
            part.setId(written.getId());
            parts.add(part);
            return part;
        });
    }

    private static void fill(ScorePartwise.Part part, ScoreTimewise score, int lastBar) {
        while (part.getMeasure().size() <= lastBar) {
            ScoreTimewise.Measure measure =
                    score.getMeasure().get(part.getMeasure().size());
            ScorePartwise.Part.Measure copy = new ScorePartwise.Part.Measure();
            copy.setNumber(measure.getNumber());
            copy.setImplicit(measure.getImplicit());
            part.getMeasure().add(copy);
        }
    }
}
