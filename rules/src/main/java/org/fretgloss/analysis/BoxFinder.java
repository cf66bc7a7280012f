package org.fretgloss.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.fretgloss.neck.Box;
import org.fretgloss.neck.BoxLayout;
import org.fretgloss.neck.StringFret;
import org.fretgloss.solo.Attack;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;

/**
 * Follows the hand over the neck. Neighbouring boxes share notes, so no note alone tells its box: of all ways through the
 * whole solo the cheapest is taken.
 *
 * <p>A note costs as many frets as it lies outside the window of the box in force, an open string nothing; a dead note
 * with a fret costs like any other, since the hand is there. A change of box costs {@value #CHANGE}, or
 * {@value #EASY_CHANGE} where the hand has time or is on its way: at the start of a phrase and on a slide. Notes struck together are in one box. A note whose fret is not known costs nothing and
 * belongs to the box in force.
 *
 * <p>Of ways that cost the same, the one wins whose boxes hold more of the open strings in their own patterns; then
 * staying wins over changing. Where a box begins and several would do, it is the one whose pattern holds more of the
 * notes up to the end of the phrase (at the start of the solo: of the first phrase), then the lower one.
 */
public final class BoxFinder {

    /** What a change of box costs, in frets of reach: more than to stretch for one or two notes. */
    static final int CHANGE = 5;

    /** What a change costs at the start of a phrase or on a slide. */
    static final int EASY_CHANGE = 3;

    private final List<Box> boxes;
    private final List<Strike> strikes;

    /** By strike and box: the cheapest way from that strike, played in that box, to the end. */
    private final Cost[][] toEnd;

    /** By strike and box: how many notes from that strike to the end of its phrase the box's pattern holds. */
    private final int[][] held;

    private BoxFinder(List<Box> boxes, List<Strike> strikes) {
        this.boxes = boxes;
        this.strikes = strikes;
        this.toEnd = new Cost[strikes.size()][boxes.size()];
        this.held = new int[strikes.size()][boxes.size()];
    }

    /** What a stretch of the way costs: frets and changes first, then open strings outside the patterns. */
    private record Cost(long frets, long strangers) implements Comparable<Cost> {

        static final Cost NONE = new Cost(0, 0);

        Cost plus(Cost other) {
            return new Cost(frets + other.frets, strangers + other.strangers);
        }

        Cost plus(long more) {
            return new Cost(frets + more, strangers);
        }

        Cost min(Cost other) {
            return compareTo(other) <= 0 ? this : other;
        }

        @Override
        public int compareTo(Cost other) {
            return frets != other.frets ? Long.compare(frets, other.frets) : Long.compare(strangers, other.strangers);
        }
    }

    /** A stay in one box, from a strike up to and without another. */
    private record Stay(int box, int from, int to) {}

    /** Finds the boxes of a solo, numbered from the home in force; where the home changes a box begins. */
    static BoxPath find(Solo solo, Homes homes, Phrasing phrasing) {
        List<BoxSpan> spans = new ArrayList<>();
        for (HomeSection section : homes.sections()) {
            List<Note> notes = homes.notesOf(section, solo);
            HomeScale home = section.home().scale();
            spans.addAll(spans(solo, spans.isEmpty() ? fromFirstFretted(notes) : notes, home, phrasing));
        }
        return new BoxPath(spans);
    }

    /**
     * Finds the boxes of a solo that has one home.
     *
     * @param home the home that the boxes are numbered from
     * @param phrasing the solo's phrases
     * @return no boxes where no note has a fret
     */
    public static BoxPath find(Solo solo, HomeScale home, Phrasing phrasing) {
        return new BoxPath(spans(solo, fromFirstFretted(solo.notes()), home, phrasing));
    }

    private static List<Note> fromFirstFretted(List<Note> notes) {
        return notes.stream().dropWhile(note -> note.at().isEmpty()).toList();
    }

    private static List<BoxSpan> spans(Solo solo, List<Note> notes, HomeScale home, Phrasing phrasing) {
        if (notes.isEmpty()) {
            return List.of();
        }
        List<Strike> strikes = Strike.of(notes, phrasing);
        return new BoxFinder(BoxLayout.of(solo.tuning(), home.boxTonicChroma()), strikes).path();
    }

    private List<BoxSpan> path() {
        for (int strike = strikes.size() - 1; strike >= 0; strike--) {
            weigh(strike);
        }
        return follow();
    }

    private void weigh(int strike) {
        boolean last = strike + 1 == strikes.size();
        boolean phraseEnds = last || strikes.get(strike + 1).opensPhrase();
        Cost moving = last ? Cost.NONE : toEnd[strike + 1][best(strike + 1)].plus(changeAt(strike + 1));
        for (int box = 0; box < boxes.size(); box++) {
            Cost onward = last ? Cost.NONE : toEnd[strike + 1][box].min(moving);
            toEnd[strike][box] = onward.plus(costOf(strikes.get(strike), boxes.get(box)));
            held[strike][box] = (phraseEnds ? 0 : held[strike + 1][box]) + heldBy(boxes.get(box), strikes.get(strike));
        }
    }

    private List<BoxSpan> follow() {
        List<Stay> stays = new ArrayList<>();
        int box = best(0);
        int first = 0;
        for (int next = 1; next < strikes.size(); next++) {
            int other = best(next);
            if (toEnd[next][other].plus(changeAt(next)).compareTo(toEnd[next][box]) < 0) {
                stays.add(new Stay(box, first, next));
                box = other;
                first = next;
            }
        }
        stays.add(new Stay(box, first, strikes.size()));
        return IntStream.range(0, stays.size())
                .mapToObj(i -> span(stays.get(i), lead(stays, i)))
                .toList();
    }

    private BoxSpan span(Stay stay, long lead) {
        return new BoxSpan(
                boxes.get(stay.box()),
                strikes.get(stay.from()).first(),
                strikes.get(stay.to() - 1).last(),
                lead);
    }

    /** How many frets the cheapest other box costs more; whoever stays in a neighbour's box saves the change. */
    private long lead(List<Stay> stays, int which) {
        Stay stay = stays.get(which);
        long cheapest = Long.MAX_VALUE;
        for (int box = 0; box < boxes.size(); box++) {
            if (box != stay.box()) {
                cheapest = Math.min(cheapest, frets(stay, box) - savedChanges(stays, which, box));
            }
        }
        return Math.max(0, cheapest - frets(stay, stay.box()));
    }

    private long frets(Stay stay, int box) {
        return strikes.subList(stay.from(), stay.to()).stream()
                .mapToLong(strike -> costOf(strike, boxes.get(box)).frets())
                .sum();
    }

    private int savedChanges(List<Stay> stays, int which, int box) {
        boolean staysBefore = which > 0 && stays.get(which - 1).box() == box;
        boolean staysAfter = which + 1 < stays.size() && stays.get(which + 1).box() == box;
        return (staysBefore ? changeAt(stays.get(which).from()) : 0)
                + (staysAfter ? changeAt(stays.get(which).to()) : 0);
    }

    /** The box in which to begin at a strike. */
    private int best(int strike) {
        Comparator<Integer> cheapest = Comparator.comparing(box -> toEnd[strike][box]);
        return IntStream.range(0, boxes.size())
                .boxed()
                .min(cheapest.thenComparing(box -> -held[strike][box]))
                .orElseThrow();
    }

    private int changeAt(int strike) {
        return strikes.get(strike).opensPhrase() || strikes.get(strike).onSlide() ? EASY_CHANGE : CHANGE;
    }

    /** A tapped note costs the fretting hand nothing. */
    private static Cost costOf(Strike strike, Box box) {
        Cost cost = Cost.NONE;
        for (Note note : strike.notes()) {
            if (note.at().isPresent() && note.attack() != Attack.TAPPED) {
                StringFret at = note.at().get();
                boolean stranger = at.isOpen() && !box.patternHolds(at);
                cost = cost.plus(new Cost(Math.abs(box.reach(at)), stranger ? 1 : 0));
            }
        }
        return cost;
    }

    private static int heldBy(Box box, Strike strike) {
        return (int) strike.notes().stream()
                .flatMap(note -> note.at().stream())
                .filter(box::patternHolds)
                .count();
    }
}
