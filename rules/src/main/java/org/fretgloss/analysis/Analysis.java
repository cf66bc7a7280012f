package org.fretgloss.analysis;

import java.util.List;
import java.util.Optional;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.pitch.Degree;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;

/**
 * What a solo means, computed once and shared by all rules. Rules ask it and never compute the same again.
 *
 * @param solo the solo itself
 * @param home where it is at home
 * @param harmony the chord of each moment
 * @param form the progression laid over it, where the user gave one
 * @param boxes the boxes it moves through
 * @param silences every stretch between two notes in which nothing sounds, in order
 * @param climax where it builds to; none in a solo under eight bars
 */
public record Analysis(
        Solo solo,
        Home home,
        Harmony harmony,
        Optional<Form> form,
        BoxPath boxes,
        List<Silence> silences,
        Optional<Climax> climax) {

    public Analysis {
        silences = List.copyOf(silences);
    }

    /** The chord of the moment at which a note is struck. */
    public Optional<ChordSymbol> chordAt(Note note) {
        return harmony.chordAt(note.onset());
    }

    /** The degree of a sounding note against the home tonic. */
    public Degree degreeOf(int midi) {
        return home.scale().degreeOf(midi);
    }

    /** A sounding note spelled against the home tonic. */
    public Pitch spell(int midi) {
        return home.scale().spell(midi);
    }

    /** Whether the note opens a phrase: the first note, or one after a silence of a beat or more. */
    public boolean startsPhrase(Note note) {
        return note.index() == 0
                || silences.stream()
                        .anyMatch(silence ->
                                silence.after().equals(note) && !silence.beats().isLessThan(Fraction.ONE));
    }
}
