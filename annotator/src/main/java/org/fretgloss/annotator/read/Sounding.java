package org.fretgloss.annotator.read;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fretgloss.neck.StringFret;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Bend;
import org.fretgloss.time.Fraction;

/**
 * A stroke whose sound is known.
 *
 * @param stroke as it is written
 * @param pitch what sounds when it is struck
 * @param offset semitones from the fretted pitch up to the written one on its staff; 0 where there is no fret
 * @param at where it is played, if that can be
 * @param bends movements of the string, in order
 */
record Sounding(Stroke stroke, Pitch pitch, int offset, Optional<StringFret> at, List<BendStep> bends) {

    /** In time, grace notes first, further down by the place in the document: so that partners on a string follow. */
    static final Comparator<Sounding> IN_TIME = Comparator.<Sounding, Fraction>comparing(
                    sounding -> sounding.stroke.onset())
            .thenComparing(sounding -> !sounding.stroke.grace())
            .thenComparing(sounding -> sounding.stroke.first().ordinal());

    Sounding {
        bends = List.copyOf(bends);
    }

    /** The course of its bend, if it is bent. */
    Optional<Bend> bend() {
        return BendCourse.of(bends);
    }

    int midi() {
        return pitch.midi();
    }

    /** What two notes have in common that a hammer-on or slide can join: the string, or the voice where no frets stand. */
    String track() {
        return at.map(place -> "string " + place.string()).orElseGet(this::voiceTrack);
    }

    String voiceTrack() {
        return "voice " + stroke.first().voice();
    }

    /** MIDI number of the written pitch as it sounds on its staff, whatever the fret says. */
    int writtenMidi() {
        return at.flatMap(place -> stroke.first().pitch())
                .map(written -> written.midi() - offset)
                .orElseGet(this::midi);
    }

    /** This stroke and another that only goes on with it. */
    Sounding then(Sounding continuation) {
        return new Sounding(
                stroke.then(continuation.stroke),
                pitch,
                offset,
                at,
                Stream.concat(bends.stream(), continuation.bends.stream()).toList());
    }

    Sounding withBends(List<BendStep> steps) {
        return new Sounding(stroke, pitch, offset, at, steps);
    }

    Sounding withSound(Pitch struck, Optional<StringFret> place) {
        return new Sounding(stroke, struck, offset, place, bends);
    }
}
