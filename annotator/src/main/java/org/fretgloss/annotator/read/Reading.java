package org.fretgloss.annotator.read;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fretgloss.solo.Part;
import org.fretgloss.solo.Solo;

/**
 * What was read from a score.
 *
 * @param solo the solo
 * @param carriers from a note's ordinal to the ordinal of the note element that bears its lyrics; a note for which none may
 *     bear any is absent
 * @param partElements ordinals of all note elements of the solo's part, or of both parts of a guitar that stands in two,
 *     rests and cues too: a lyric's number must be free in all of them
 * @param backing what other parts play, where the score names no chords
 * @param notices what the user is told once
 * @param parts all parts of the score, in its order
 */
public record Reading(
        Solo solo,
        Map<Integer, Integer> carriers,
        Set<Integer> partElements,
        Backing backing,
        List<Notice> notices,
        List<Part> parts) {

    public Reading {
        carriers = Map.copyOf(carriers);
        partElements = Set.copyOf(partElements);
        notices = List.copyOf(notices);
        parts = List.copyOf(parts);
    }
}
