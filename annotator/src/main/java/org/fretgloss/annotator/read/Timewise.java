package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.ScoreTimewise;
import org.fretgloss.annotator.file.ScoreException;

/** A score written bar by bar, turned into one written part by part. */
final class Timewise {

    /** Bars that parts may leave out, all parts together: each takes memory all the same. */
    private static final int MOST_LEFT_OUT = 50_000;

    private Timewise() {}

    /**
     * The parts in the order of the first bar; a part that a bar leaves out has an empty bar there.
     *
     * @throws ScoreException if nearly all parts are missing from nearly all bars
     */
    static List<ScorePartwise.Part> byPart(ScoreTimewise score) throws ScoreException {
        long leftOut = leftOut(score);
        if (leftOut > MOST_LEFT_OUT) {
            throw new ScoreException("the score is written bar by bar, and its parts are missing from " + leftOut
                    + " bars, where at most " + MOST_LEFT_OUT
                    + " are filled in; export the solo's part alone, or part by part");
        }
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

    private static long leftOut(ScoreTimewise score) {
        Set<Object> parts = new HashSet<>();
        long written = 0;
        for (ScoreTimewise.Measure measure : score.getMeasure()) {
            for (int place = 0; place < measure.getPart().size(); place++) {
                parts.add(idOf(measure.getPart().get(place), place));
                written++;
            }
        }
        return (long) parts.size() * score.getMeasure().size() - written;
    }

    private static Object idOf(ScoreTimewise.Measure.Part written, int place) {
        return written.getId() == null ? Integer.valueOf(place) : written.getId();
    }

    private static ScorePartwise.Part partOf(
            ScoreTimewise.Measure.Part written,
            int place,
            List<ScorePartwise.Part> parts,
            Map<Object, ScorePartwise.Part> byId) {
        return byId.computeIfAbsent(idOf(written, place), unseen -> {
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
