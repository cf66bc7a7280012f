package org.fretgloss.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.fretgloss.neck.Box;
import org.fretgloss.neck.BoxLayout;
import org.fretgloss.neck.Tuning;
import org.fretgloss.page.SoloText;
import org.fretgloss.pitch.Seeded;
import org.fretgloss.solo.Attack;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.junit.jupiter.api.Test;

class BoxFinderPropertiesTest {

    private static final HomeScale HOME = HomeScale.parse("A minor pentatonic");

    @Test
    void theSpansHoldEveryNoteAndNeighboursDiffer() {
        Seeded any = new Seeded(21);
        for (int i = 0; i < 200; i++) {
            Solo solo = anySolo(any, any.between(1, 20));
            List<BoxSpan> spans = find(solo).spans();
            int next = 0;
            for (BoxSpan span : spans) {
                assertThat(span.first().index()).isEqualTo(next);
                next = span.last().index() + 1;
            }
            assertThat(next).isEqualTo(solo.notes().size());
            for (int s = 1; s < spans.size(); s++) {
                assertThat(spans.get(s).box()).isNotEqualTo(spans.get(s - 1).box());
            }
        }
    }

    /** Every way through four notes is tried, and what it costs is reckoned from the definition. */
    @Test
    void noOtherWayIsCheaper() {
        Seeded any = new Seeded(22);
        List<Box> boxes = BoxLayout.of(Tuning.STANDARD, HOME.boxTonicChroma());
        for (int i = 0; i < 25; i++) {
            Solo solo = anySolo(any, 1);
            BoxPath path = find(solo);
            List<Box> found = solo.notes().stream()
                    .map(note -> path.boxOf(note).orElseThrow())
                    .toList();
            int cheapest = IntStream.range(0, (int) Math.pow(boxes.size(), 4))
                    .map(way -> cost(solo, boxesOf(way, boxes)))
                    .min()
                    .orElseThrow();
            assertThat(cost(solo, found)).isEqualTo(cheapest);
        }
    }

    private static List<Box> boxesOf(int way, List<Box> boxes) {
        List<Box> chosen = new ArrayList<>();
        for (int rest = way; chosen.size() < 4; rest /= boxes.size()) {
            chosen.add(boxes.get(rest % boxes.size()));
        }
        return chosen;
    }

    private static int cost(Solo solo, List<Box> boxes) {
        int cost = 0;
        for (Note note : solo.notes()) {
            Box box = boxes.get(note.index());
            int fret = note.at().orElseThrow().fret();
            if (fret != 0) {
                cost += Math.max(0, box.lowestFret() - fret) + Math.max(0, fret - box.highestFret());
            }
            if (note.index() > 0 && !box.equals(boxes.get(note.index() - 1))) {
                Note before = solo.notes().get(note.index() - 1);
                boolean afterRest = !note.onset().minus(before.end()).isZero();
                cost += afterRest || note.attack() == Attack.SLID ? 3 : 5;
            }
        }
        return cost;
    }

    /** Bars of four notes; some bars' second half begins after a rest of a beat, some notes are slid to. */
    private static Solo anySolo(Seeded any, int bars) {
        StringBuilder music = new StringBuilder();
        for (int bar = 0; bar < bars; bar++) {
            boolean rest = any.once(2);
            music.append("| ").append(anyNote(any)).append(":1 ").append(anyNote(any));
            music.append(rest ? " r:1 " : " ").append(anyNote(any)).append(rest ? ":1/2 " : ":1 ");
            music.append(anyNote(any)).append(' ');
        }
        return SoloText.parse(music + "|").solo();
    }

    private static String anyNote(Seeded any) {
        int fret = any.once(6) ? 0 : any.between(1, 22);
        return (any.once(5) ? "s" : "") + any.between(1, 6) + "/" + fret;
    }

    private static BoxPath find(Solo solo) {
        return BoxFinder.find(solo, HOME, Phrasing.of(solo, Silences.of(solo)));
    }
}
