package org.fretgloss.evaluation;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Given;
import org.fretgloss.checks.BuiltInChecks;
import org.fretgloss.neck.StringFret;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Meter;

/**
 * How seldom {@code wrong-box} doubts music that nobody here wrote, and of which nothing but the notes is known: no chord,
 * no home. Without strings and frets in the data, the likely ones are taken as written.
 */
final class Doubts implements Measurement {

    private static final int STRING = 3;
    private static final int FRET = 4;

    private static final Rule WRONG_BOX = new BuiltInChecks()
            .rules().stream()
                    .filter(rule -> rule.id().equals("wrong-box"))
                    .findFirst()
                    .orElseThrow();

    @Override
    public String name() {
        return "doubts";
    }

    private record Piece(int notes, int doubts) {}

    @Override
    public List<Figure> measure(JsonArray cases) {
        List<Piece> pieces = StreamSupport.stream(cases.spliterator(), false)
                .map(piece -> piece(piece.getAsJsonObject().getAsJsonArray("notes")))
                .toList();
        int notes = pieces.stream().mapToInt(Piece::notes).sum();
        int doubts = pieces.stream().mapToInt(Piece::doubts).sum();
        long clean = pieces.stream().filter(piece -> piece.doubts() == 0).count();
        return List.of(
                new Figure(
                        "doubts: notes that wrong-box leaves alone", 1 - (double) doubts / Math.max(1, notes), notes),
                new Figure(
                        "doubts: pieces that it leaves alone",
                        (double) clean / Math.max(1, pieces.size()),
                        pieces.size()));
    }

    private static Piece piece(JsonArray notes) {
        Solo bare = Melody.of(notes, Meter.COMMON);
        Analysis analysis = Analysis.of(bare.withPlaces(places(notes, bare)), Given.NOTHING);
        long doubts =
                WRONG_BOX.examine(analysis, Settings.of(WRONG_BOX, Map.of())).count();
        return new Piece(bare.notes().size(), (int) doubts);
    }

    /** By the notes' ordinals, which count them as the data does. */
    private static Map<Integer, StringFret> places(JsonArray notes, Solo bare) {
        Map<Integer, StringFret> places = new HashMap<>();
        int ordinal = 0;
        for (JsonElement element : notes) {
            JsonArray note = element.getAsJsonArray();
            ordinal++;
            if (note.size() > FRET && note.get(FRET).getAsInt() >= 0) {
                places.put(
                        ordinal,
                        new StringFret(
                                note.get(STRING).getAsInt(), note.get(FRET).getAsInt()));
            }
        }
        if (places.isEmpty()) {
            for (Note note : Analysis.of(bare, Given.NOTHING).solo().notes()) {
                note.at().ifPresent(at -> places.put(note.ordinal(), at));
            }
        }
        return places;
    }
}
