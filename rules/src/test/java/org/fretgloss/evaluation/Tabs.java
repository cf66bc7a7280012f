package org.fretgloss.evaluation;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.StreamSupport;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Given;
import org.fretgloss.neck.StringFret;
import org.fretgloss.solo.Note;
import org.fretgloss.time.Meter;

/** String and fret from pitch alone, in standard tuning: onsets, durations and pitches of tabs that people wrote. */
final class Tabs implements Measurement {

    /** The lowest fret that no hand reaches without leaving the open position. */
    private static final int UP_THE_NECK = 5;

    @Override
    public String name() {
        return "tabs";
    }

    @Override
    public List<Figure> measure(JsonArray cases) {
        List<Place> places = StreamSupport.stream(cases.spliterator(), false)
                .map(tab -> tab.getAsJsonObject().getAsJsonArray("notes"))
                .flatMap(notes -> places(notes).stream())
                .toList();
        return List.of(
                figure("tabs: string and fret", places),
                figure(
                        "tabs: notes at fret 5 and up",
                        places.stream()
                                .filter(place -> place.played().fret() >= UP_THE_NECK)
                                .toList()),
                figure(
                        "tabs: notes whose place is called at least 80 % sure",
                        places.stream().filter(place -> place.sureness() >= 0.8).toList()),
                figure(
                        "tabs: the other notes",
                        places.stream().filter(place -> place.sureness() < 0.8).toList()));
    }

    private static Figure figure(String what, List<Place> places) {
        long right = places.stream().filter(Place::isRight).count();
        return new Figure(what, (double) right / Math.max(1, places.size()), places.size());
    }

    private static List<Place> places(JsonArray notes) {
        Analysis analysis = Analysis.of(Melody.of(notes, Meter.COMMON), Given.NOTHING);
        List<Note> found = analysis.solo().notes().stream()
                .sorted(Comparator.comparing(Note::ordinal))
                .toList();
        List<Place> places = new ArrayList<>();
        for (JsonElement element : notes) {
            JsonArray note = element.getAsJsonArray();
            Note inferred = found.get(places.size());
            places.add(new Place(
                    new StringFret(note.get(3).getAsInt(), note.get(4).getAsInt()),
                    inferred.at().stream().toList(),
                    analysis.surenessOf(inferred)));
        }
        return places;
    }

    /**
     * Where a note was played and where it is thought to be.
     *
     * @param inferred one place, or none where no string was left
     */
    private record Place(StringFret played, List<StringFret> inferred, double sureness) {

        boolean isRight() {
            return inferred.contains(played);
        }
    }
}
