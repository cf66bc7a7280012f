package org.fretgloss.fingering;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.NotesInTime;
import org.fretgloss.time.Fraction;

/**
 * Notes struck together, and what earlier onsets they remind the hand of. A grace note is struck alone.
 *
 * @param index place among the solo's onsets, from 0
 * @param notes at least one, the lowest pitch first
 * @param pitches their MIDI numbers as struck
 * @param time quarter notes from the start of the part
 * @param ends when each note stops sounding
 * @param sinceLast quarter notes since the onset before
 * @param samePitch by note: index of the onset that last had its pitch, if not long ago, else {@link #NONE}
 * @param samePitches index of the last onset with the same pitches, or {@link #NONE}
 * @param chordBefore index of the last onset with as many notes, if they are two or more and it is not long ago
 */
record Onset(
        int index,
        List<Note> notes,
        List<Integer> pitches,
        Fraction time,
        List<Fraction> ends,
        Fraction sinceLast,
        List<Integer> samePitch,
        int samePitches,
        int chordBefore) {

    static final int NONE = -1;

    /** A chord this many onsets ago is no longer under the fingers. */
    private static final int SHAPE_MEMORY = 8;

    /** Nor is the string of a note this many onsets ago. */
    private static final int NOTE_MEMORY = 16;

    /** Grace notes take no time, and neither the first note nor a grace note leaves the hand less than this. */
    private static final Fraction SHORTEST = Fraction.of(1, 16);

    /** Before the first note the hand has a bar's time. */
    private static final Fraction AT_REST = Fraction.of(4);

    Onset {
        notes = List.copyOf(notes);
        pitches = List.copyOf(pitches);
        ends = List.copyOf(ends);
        samePitch = List.copyOf(samePitch);
    }

    /** The onsets of notes in sounding order. */
    static List<Onset> of(List<Note> notes) {
        List<Onset> onsets = new ArrayList<>();
        Map<List<Integer>, Integer> lastOfPitches = new HashMap<>();
        Map<Integer, Integer> lastOfSize = new HashMap<>();
        Map<Integer, Integer> lastOfPitch = new HashMap<>();
        for (List<Note> together : NotesInTime.together(notes)) {
            int index = onsets.size();
            List<Note> rising = together.stream()
                    .sorted((a, b) -> Integer.compare(a.midi(), b.midi()))
                    .toList();
            List<Integer> pitches = rising.stream().map(Note::midi).toList();
            Fraction time = rising.get(0).onset();
            int chordBefore = rising.size() > 1 ? lastOfSize.getOrDefault(rising.size(), NONE) : NONE;
            onsets.add(new Onset(
                    index,
                    rising,
                    pitches,
                    time,
                    rising.stream().map(Note::end).toList(),
                    index == 0
                            ? AT_REST
                            : SHORTEST.max(time.minus(onsets.get(index - 1).time())),
                    pitches.stream()
                            .map(pitch -> recent(lastOfPitch.getOrDefault(pitch, NONE), index, NOTE_MEMORY))
                            .toList(),
                    lastOfPitches.getOrDefault(pitches, NONE),
                    recent(chordBefore, index, SHAPE_MEMORY)));
            pitches.forEach(pitch -> lastOfPitch.put(pitch, index));
            lastOfPitches.put(pitches, index);
            lastOfSize.put(rising.size(), index);
        }
        return onsets;
    }

    private static int recent(int last, int index, int memory) {
        return last != NONE && index - last <= memory ? last : NONE;
    }

    int size() {
        return notes.size();
    }

    /** Which of the notes has a pitch; of several the lowest string's. */
    int noteOf(int midi) {
        return pitches.lastIndexOf(midi);
    }

    boolean isGrace() {
        return notes.get(0).grace();
    }
}
