package org.fretgloss.evaluation;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.List;
import java.util.Locale;
import java.util.stream.StreamSupport;
import org.fretgloss.analysis.HomeFinder;
import org.fretgloss.analysis.HomeScale;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.time.Meter;

/** Tonic and mode from pitches and durations alone: no signature, no chords, no phrase endings, no last note. */
final class Keys implements Measurement {

    @Override
    public String name() {
        return "keys";
    }

    @Override
    public List<Figure> measure(JsonArray cases) {
        List<Case> melodies = StreamSupport.stream(cases.spliterator(), false)
                .map(JsonElement::getAsJsonObject)
                .map(Case::of)
                .toList();
        return List.of(
                figure(
                        "keys: tonic and mode",
                        melodies.stream().filter(Case::isRight).count(),
                        melodies.size()),
                figure(
                        "keys: tonic",
                        melodies.stream().filter(Case::isTonicRight).count(),
                        melodies.size()));
    }

    private static Figure figure(String what, long right, int cases) {
        return new Figure(what, (double) right / Math.max(1, cases), cases);
    }

    /**
     * A melody's key and what is found.
     *
     * @param key a tonic, capital for major, small for minor; "-" is a flat, "#" a sharp
     */
    private record Case(String key, HomeScale found) {

        static Case of(JsonObject json) {
            return new Case(
                    json.get("key").getAsString(),
                    HomeFinder.byNotesAlone(Melody.of(json.getAsJsonArray("notes"), Meter.COMMON))
                            .scale());
        }

        boolean isTonicRight() {
            String name = key.substring(0, 1).toUpperCase(Locale.ROOT)
                    + key.substring(1).replace('-', 'b');
            return PitchClass.parse(name).chroma() == found.tonic().chroma();
        }

        boolean isRight() {
            return isTonicRight()
                    && Character.isUpperCase(key.charAt(0)) == found.scale().hasMajorThird();
        }
    }
}
