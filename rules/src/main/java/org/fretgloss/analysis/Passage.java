package org.fretgloss.analysis;

import java.util.List;
import java.util.Optional;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.solo.KeySignature;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.NotesInTime;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;

/**
 * A stretch of a solo whose home is asked for, with all that speaks for one.
 *
 * @param notes in sounding order; dead notes and grace notes included
 * @param landings the note that each phrase comes to rest on in it
 * @param harmony the chord of each of its moments
 * @param statedKey the key of a form that the user names
 * @param signature the key signature at its start
 */
record Passage(
        List<Note> notes,
        List<Note> landings,
        Harmony harmony,
        Optional<PitchClass> statedKey,
        KeySignature signature) {

    Passage {
        notes = List.copyOf(notes);
        landings = List.copyOf(landings);
    }

    static Passage whole(Solo solo, Phrasing phrasing, Harmony harmony, Optional<Form> form) {
        return new Passage(
                solo.notes(),
                phrasing.phrases().stream()
                        .flatMap(phrase -> phrase.landing().stream())
                        .toList(),
                harmony,
                form.flatMap(laid -> laid.progression().key()),
                solo.bars().get(0).key());
    }

    /** The notes alone, as if nothing else were known. */
    static Passage ofNotesAlone(Solo solo) {
        return new Passage(solo.notes(), List.of(), Harmony.UNKNOWN, Optional.empty(), KeySignature.NONE);
    }

    /** From one bar line of the solo to another. */
    Passage between(Fraction start, Fraction end) {
        List<Note> within = NotesInTime.between(notes, start, end);
        return new Passage(
                within,
                NotesInTime.between(landings, start, end),
                harmony.between(start, end),
                statedKey,
                within.isEmpty() ? signature : within.get(0).bar().key());
    }

    /** As if one note were not there. */
    Passage without(Note note) {
        return new Passage(
                notes.stream().filter(other -> !other.equals(note)).toList(),
                landings.stream().filter(other -> !other.equals(note)).toList(),
                harmony,
                statedKey,
                signature);
    }

    /** Everything that is heard in it, in order. */
    List<Heard> heard() {
        return notes.stream().flatMap(note -> Heard.of(note).stream()).toList();
    }
}
