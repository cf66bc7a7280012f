package org.fretgloss.analysis;

import java.util.List;
import java.util.Random;
import java.util.StringJoiner;
import java.util.stream.IntStream;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.pitch.Scale;

/** Makes up lines in a scale: eighths that wander by a step or two, phrases that come home and end in a rest. */
final class WanderingLine {

    private WanderingLine() {}

    /**
     * Some bars of 4/4 in the notation of examples, without the outer bar lines.
     *
     * @param tonic MIDI number
     * @param bars how many
     * @param phrase how many bars make a phrase
     */
    static String of(Random random, Scale scale, int tonic, int bars, int phrase) {
        List<Integer> notes = IntStream.rangeClosed(-5, 17)
                .filter(scale::contains)
                .map(step -> tonic + step)
                .boxed()
                .toList();
        int place = notes.indexOf(tonic);
        StringJoiner line = new StringJoiner(" | ");
        for (int bar = 1; bar <= bars; bar++) {
            boolean closes = bar % phrase == 0;
            StringJoiner events = new StringJoiner(" ");
            for (int eighth = 0; eighth < (closes ? 4 : 8); eighth++) {
                events.add(Pitch.ofMidi(notes.get(place)) + ":1/2");
                place = Math.max(0, Math.min(notes.size() - 1, place + random.nextInt(5) - 2));
            }
            if (closes) {
                events.add(Pitch.ofMidi(tonic) + ":1 r:1");
                place = notes.indexOf(tonic);
            }
            line.add(events.toString());
        }
        return line.toString();
    }
}
