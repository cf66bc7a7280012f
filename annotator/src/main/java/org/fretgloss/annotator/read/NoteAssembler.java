package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Technique;
import org.fretgloss.solo.Written;

/** Puts the notes of the solo together from all that was found out about them. */
final class NoteAssembler {

    private final Notices notices;

    private NoteAssembler(Notices notices) {
        this.notices = notices;
    }

    /**
     * The notes in sounding order, each knowing its place in it.
     *
     * @param sounding in order of time
     */
    static List<Note> notes(List<Sounding> sounding, Notices notices) {
        Attacks attacks = Attacks.of(sounding);
        Set<Integer> vibrato = Vibrato.runOn(sounding);
        NoteAssembler assembler = new NoteAssembler(notices);
        List<Note> notes = new ArrayList<>();
        for (int i = 0; i < sounding.size(); i++) {
            Sounding note = sounding.get(i);
            Set<Technique> techniques = EnumSet.noneOf(Technique.class);
            techniques.addAll(note.stroke().marks().techniques());
            techniques.addAll(attacks.loneSlides(i));
            if (vibrato.contains(note.stroke().first().ordinal())) {
                techniques.add(Technique.VIBRATO);
            }
            notes.add(assembler.note(note, attacks, i, techniques));
        }
        notes.sort(Note.SOUNDING_ORDER);
        for (int i = 0; i < notes.size(); i++) {
            notes.set(i, notes.get(i).withIndex(i));
        }
        return notes;
    }

    private Note note(Sounding note, Attacks attacks, int place, Set<Technique> techniques) {
        Stroke stroke = note.stroke();
        NoteElement first = stroke.first();
        if (!note.bends().isEmpty() && note.bend().isEmpty() && !techniques.contains(Technique.WITH_BAR)) {
            notices.say(
                    "bend of no width",
                    "a bend of " + widths(note.bends())
                            + " semitones is none that a finger can make, so it is passed over",
                    first.bar().number());
        }
        if (disagrees(note)) {
            notices.say(
                    "string and fret disagree with the written pitch, and are believed",
                    first.bar().number());
        }
        Pitch written = first.pitch().orElse(note.pitch());
        return new Note(
                0,
                first.ordinal(),
                first.bar(),
                stroke.onset(),
                stroke.duration(),
                note.pitch(),
                note.at(),
                note.bend(),
                attacks.attack(place),
                techniques,
                stroke.grace(),
                first.voice(),
                new Written(written, offset(note), stroke.ordinals(), stroke.tieOpen(), SignReader.of(note)));
    }

    private static String widths(List<BendStep> steps) {
        return steps.stream().map(step -> step.semitones().toString()).collect(Collectors.joining(" and "));
    }

    /** Of this note alone: a slip shows where it is not the part's. Harmonics and dead notes have the part's. */
    private static int offset(Sounding note) {
        Marks marks = note.stroke().marks();
        boolean tells = note.at().isPresent() && marks.harmonic().isEmpty() && !marks.has(Technique.DEAD);
        return tells ? note.offset() + note.writtenMidi() - note.midi() : note.offset();
    }

    /** A bent note may be written at its peak, a harmonic at any of its pitches, a dead note anywhere. */
    private static boolean disagrees(Sounding note) {
        Marks marks = note.stroke().marks();
        return note.writtenMidi() != note.midi()
                && note.bends().isEmpty()
                && marks.harmonic().isEmpty()
                && !marks.has(Technique.DEAD);
    }
}
