package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fretgloss.solo.Attack;
import org.fretgloss.solo.Technique;

/**
 * How each note is begun. Hammer-ons, pull-offs and slides lead from a note to the next on the same string, whatever
 * numbers the file gives them; the direction of pitch tells a hammer-on from a pull-off, and the element's name only where
 * nothing on the string leads to the note. A slide without a partner comes from or goes nowhere in particular.
 */
final class Attacks {

    private final List<Sounding> notes;
    private final List<Attack> attacks = new ArrayList<>();
    private final List<Set<Technique>> lone = new ArrayList<>();

    /** The latest note on each string, or where no frets stand of each tone of a voice's chords. */
    private final Map<String, Integer> latest = new HashMap<>();

    /** How many notes of a voice without frets there were at a moment. */
    private final Map<String, Integer> tones = new HashMap<>();

    private Attacks(List<Sounding> notes) {
        this.notes = notes;
    }

    /**
     * Reads the attacks.
     *
     * @param notes in order of time
     */
    static Attacks of(List<Sounding> notes) {
        Attacks attacks = new Attacks(notes);
        for (int i = 0; i < notes.size(); i++) {
            attacks.read(i);
        }
        attacks.latest.values().forEach(attacks::leaveOpen);
        return attacks;
    }

    /** How a note is begun, by its place in the list. */
    Attack attack(int place) {
        return attacks.get(place);
    }

    /** Slides of a note that have no partner. */
    Set<Technique> loneSlides(int place) {
        return lone.get(place);
    }

    private void read(int place) {
        Sounding note = notes.get(place);
        Optional<Integer> before = Optional.ofNullable(latest.put(track(note), place));
        boolean slid = ends(place, Link.SLIDE)
                && before.filter(i -> begins(i, Link.SLIDE) && follows(notes.get(i), note))
                        .isPresent();
        lone.add(EnumSet.noneOf(Technique.class));
        if (ends(place, Link.SLIDE) && !slid) {
            lone.get(place).add(Technique.SLIDE_IN);
        }
        if (!slid) {
            before.ifPresent(this::leaveOpen);
        }
        attacks.add(attack(note, before.map(notes::get), slid));
    }

    private String track(Sounding note) {
        if (note.at().isPresent()) {
            return note.track();
        }
        String moment =
                note.track() + " at " + note.stroke().onset() + (note.stroke().grace() ? " grace" : "");
        return note.track() + " tone " + tones.merge(moment, 1, Integer::sum);
    }

    private static Attack attack(Sounding note, Optional<Sounding> before, boolean slid) {
        Marks marks = note.stroke().marks();
        if (marks.tapped()) {
            return Attack.TAPPED;
        }
        if (slid) {
            return Attack.SLID;
        }
        Optional<Sounding> from = before.filter(earlier -> leads(earlier, note));
        if (from.isEmpty() && !marks.endsLegato()) {
            return Attack.PICKED;
        }
        int rise = from.map(earlier -> note.midi() - earlier.midi()).orElse(0);
        if (rise == 0) {
            boolean begun = from.filter(earlier -> earlier.stroke().marks().beginsLegato())
                    .isPresent();
            Set<Link> said = begun ? from.orElseThrow().stroke().marks().begins() : marks.ends();
            return said.contains(Link.PULL_OFF) ? Attack.PULLED_OFF : Attack.HAMMERED_ON;
        }
        return rise > 0 ? Attack.HAMMERED_ON : Attack.PULLED_OFF;
    }

    /** Whether a hammer-on or pull-off leads from a note to another: both ends say so, or one of them and nothing between. */
    private static boolean leads(Sounding from, Sounding note) {
        boolean begins = from.stroke().marks().beginsLegato();
        boolean ends = note.stroke().marks().endsLegato();
        return (begins && ends) || ((begins || ends) && follows(from, note));
    }

    /** Whether no silence lies between; a grace note lies at the moment of its main note. */
    private static boolean follows(Sounding from, Sounding note) {
        return !from.stroke().end().isLessThan(note.stroke().onset());
    }

    private void leaveOpen(int place) {
        if (begins(place, Link.SLIDE)) {
            lone.get(place).add(Technique.SLIDE_OUT);
        }
    }

    private boolean begins(int place, Link link) {
        return notes.get(place).stroke().marks().begins().contains(link);
    }

    private boolean ends(int place, Link link) {
        return notes.get(place).stroke().marks().ends().contains(link);
    }
}
