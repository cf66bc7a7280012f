package org.fretgloss.fingering;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fretgloss.neck.StringFret;
import org.fretgloss.neck.Tuning;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;

/**
 * Finds the way over the neck that costs the hand least. Of all ways up to an onset only the {@value #WAYS} cheapest that
 * differ are followed, so that the time it takes grows with the notes alone.
 */
public final class HandFinder {

    /** Ways that are followed side by side. */
    private static final int WAYS = 24;

    /** Onsets after which a grip stands: by then all ways that are left mostly agree. */
    static final int SETTLING = 12;

    /** By how much dearer a way is that is e times less likely. */
    private static final double TEMPERATURE = 10;

    /** How sure a place is on which all ways agree: on tabs that people wrote they are right about so often. */
    private static final double MOST_SURE = 0.87;

    /** The same in a lead: on the solos of this project's fixtures. */
    private static final double MOST_SURE_OF_LEAD = 0.72;

    private final Tuning tuning;
    private final int strings;
    private final List<Onset> onsets;
    private final Style style;
    private final Effort effort;
    private final Map<List<Integer>, Grip> settled = new HashMap<>();

    /** By onset: how much weight the ways had that went through each grip, once it was settled. */
    private final List<Map<Grip, Double>> shares = new ArrayList<>();

    private List<Hand> hands;

    private HandFinder(Solo solo, Comfort comfort) {
        this.tuning = solo.tuning();
        this.strings = solo.notes().stream()
                .flatMap(note -> note.at().stream())
                .mapToInt(StringFret::string)
                .reduce(tuning.size(), Math::max);
        this.onsets = Onset.of(solo.notes());
        this.style = Style.of(onsets);
        this.effort = new Effort(comfort, style);
        this.hands = List.of(Hand.atRest(strings));
    }

    /** A grip that may be taken next. */
    private record Step(Hand hand, Grip grip, double cost) {}

    /**
     * Fills in the places that a solo lacks. Those that it has stand, and lead the hand.
     *
     * @param comfort what speaks against a place besides
     */
    public static Fingering find(Solo solo, Comfort comfort) {
        return solo.notes().stream().allMatch(note -> note.at().isPresent() || note.isDead())
                ? Fingering.asWritten(solo)
                : new HandFinder(solo, comfort).fingering(solo);
    }

    private Fingering fingering(Solo solo) {
        for (Onset onset : onsets) {
            step(onset);
            if (onset.index() >= SETTLING) {
                settle(onset.index(), SETTLING);
            }
        }
        int last = onsets.size() - 1;
        for (int ago = Math.min(SETTLING - 1, last); ago >= 0; ago--) {
            settle(last, ago);
        }
        return filledIn(solo);
    }

    private void step(Onset onset) {
        List<Grip> grips = Grips.of(onset, tuning, strings);
        List<Step> steps = new ArrayList<>(hands.size() * grips.size());
        for (Hand hand : hands) {
            Held held = Held.of(hand, onset);
            Memory memory = Memory.of(hand, onset, onsets, settled);
            for (Grip grip : grips) {
                steps.add(new Step(hand, grip, hand.cost() + effort.of(hand, held, memory, onset, grip)));
            }
        }
        steps.sort(Comparator.comparingDouble(Step::cost));
        List<Hand> next = new ArrayList<>(WAYS);
        for (Step step : steps) {
            Hand hand = step.hand().take(step.grip(), onset, step.cost());
            if (next.stream().noneMatch(hand::isLike)) {
                next.add(hand);
            }
            if (next.size() == WAYS) {
                break;
            }
        }
        hands = next;
    }

    /**
     * Weighs the grips of an onset some onsets ago by what the ways through them cost by now. In the ways' order, so that
     * sums come out alike on every run.
     */
    private void settle(int now, int ago) {
        double cheapest = hands.get(0).cost();
        Map<Grip, Double> weights = new LinkedHashMap<>();
        for (Hand hand : hands) {
            weights.merge(hand.ago(ago).grip(), Math.exp((cheapest - hand.cost()) / TEMPERATURE), Double::sum);
        }
        double all = weights.values().stream().mapToDouble(Double::doubleValue).sum();
        weights.replaceAll((grip, weight) -> weight / all);
        shares.add(weights);
        settled.put(onsets.get(now - ago).pitches(), hands.get(0).ago(ago).grip());
    }

    private Fingering filledIn(Solo solo) {
        Map<Integer, StringFret> places = new HashMap<>();
        Map<Integer, Double> sureness = new HashMap<>();
        Hand hand = hands.get(0);
        for (int i = onsets.size() - 1; i >= 0; i--) {
            Grip grip = hand.grip();
            Onset onset = onsets.get(i);
            for (int n = 0; n < onset.size(); n++) {
                Note note = onset.notes().get(n);
                if (note.at().isEmpty() && grip.isPlayed(n)) {
                    places.put(note.ordinal(), grip.place(n));
                    sureness.put(note.ordinal(), sureness(shares.get(i), grip, n));
                }
            }
            hand = hand.ago(1);
        }
        return new Fingering(solo, solo.withPlaces(places), sureness);
    }

    /** The share of the weight that goes through the same place. */
    private double sureness(Map<Grip, Double> grips, Grip chosen, int note) {
        double agreeing = grips.entrySet().stream()
                .filter(entry -> entry.getKey().string(note) == chosen.string(note))
                .mapToDouble(Map.Entry::getValue)
                .sum();
        return (style.isLead() ? MOST_SURE_OF_LEAD : MOST_SURE) * Math.min(1, agreeing);
    }
}
