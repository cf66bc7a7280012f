package org.fretgloss.solo;

import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import org.fretgloss.neck.StringFret;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.time.Fraction;

/**
 * One note as it sounds; tied notes are one.
 *
 * @param index place in the solo's sounding order, from 0
 * @param ordinal 1-based place of its first element among all note elements of the document
 * @param bar the bar it begins in
 * @param onset quarter notes from the start of the part; a grace note has its main note's onset
 * @param duration sounding length in quarter notes, ties included; 0 for a grace note
 * @param pitch sounding pitch as struck (fretted, before any bend), spelled as written
 * @param at string and fret, where the score has them
 * @param bend how it is bent, if it is
 * @param attack how it is begun
 * @param techniques what else is written about it
 * @param grace whether it is a grace note
 * @param voice the voice it was written in
 * @param written what stands in the score
 */
public record Note(
        int index,
        int ordinal,
        Bar bar,
        Fraction onset,
        Fraction duration,
        Pitch pitch,
        Optional<StringFret> at,
        Optional<Bend> bend,
        Attack attack,
        Set<Technique> techniques,
        boolean grace,
        String voice,
        Written written) {

    /** By onset, then grace before main, then string 6 first (without frets the lower pitch first), then as written. */
    public static final Comparator<Note> SOUNDING_ORDER = Comparator.comparing(Note::onset)
            .thenComparing(note -> !note.grace())
            .thenComparing(note ->
                    note.grace() ? 0 : -note.at().map(StringFret::string).orElse(0))
            .thenComparing(note -> note.grace() ? 0 : note.pitch().midi())
            .thenComparing(Note::ordinal);

    public Note {
        techniques = Set.copyOf(techniques);
    }

    public Note withIndex(int place) {
        return new Note(
                place, ordinal, bar, onset, duration, pitch, at, bend, attack, techniques, grace, voice, written);
    }

    /** The same note at another place on the neck, or at none. */
    public Note at(Optional<StringFret> place) {
        return new Note(
                index, ordinal, bar, onset, duration, pitch, place, bend, attack, techniques, grace, voice, written);
    }

    /** The same note, written otherwise. */
    public Note with(Written other) {
        return new Note(index, ordinal, bar, onset, duration, pitch, at, bend, attack, techniques, grace, voice, other);
    }

    /** The moment the note stops sounding, in quarter notes from the start of the part. */
    public Fraction end() {
        return onset.plus(duration);
    }

    /** The beat it begins on, counted from 1 in the meter's own beats. */
    public Fraction beat() {
        return bar.beatAt(onset);
    }

    public boolean isDead() {
        return techniques.contains(Technique.DEAD);
    }

    /** Whether it has a pitch of its own and takes time: neither a grace note nor a dead note. */
    public boolean isPitched() {
        return !grace && !isDead();
    }

    public boolean has(Technique technique) {
        return techniques.contains(technique);
    }

    /** MIDI number as struck. */
    public int midi() {
        return pitch.midi();
    }

    /** MIDI number of what the ear takes it for: the peak of a bend of a semitone or more, else the struck pitch. */
    public int heardMidi() {
        return midi() + bend.map(Bend::heardSemitones).orElse(0);
    }

    /** MIDI number at which it begins to sound: the fretted pitch, or what a pre-bend makes of it. */
    public int startMidi() {
        return midi() + bend.map(Bend::heardAtStart).orElse(0);
    }

    /** MIDI number at which it stops sounding: a released bend ends where it is let down to. */
    public int endMidi() {
        return midi() + bend.map(Bend::heardAtEnd).orElse(0);
    }

    /** Whether the ear hears it at a bend's peak. */
    public boolean isBentAway() {
        return heardMidi() != midi();
    }

    /** Whether both are known to lie on one string. */
    public boolean sharesStringWith(Note other) {
        return at.isPresent() && at.map(StringFret::string).equals(other.at().map(StringFret::string));
    }

    /** Whether it sounds together with another at some moment. */
    public boolean overlaps(Note other) {
        return onset.isLessThan(other.end()) && other.onset.isLessThan(end());
    }
}
