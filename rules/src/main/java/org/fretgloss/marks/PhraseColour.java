package org.fretgloss.marks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.HomeScale;
import org.fretgloss.pitch.Degree;
import org.fretgloss.solo.Note;

/**
 * What the notes of one phrase say for each pentatonic on the home tonic.
 *
 * @param home the home in force
 * @param minor the notes that speak for minor: ♭3 and ♭7
 * @param major the notes that speak for major: 2, 6 and a 3 that no bend reaches
 */
record PhraseColour(HomeScale home, List<Note> minor, List<Note> major) {

    private static final Set<String> OF_MINOR = Set.of("♭3", "♭7");
    private static final Set<String> OF_MAJOR = Set.of("2", "3", "6");

    /** Notes outside the home scale, of two different degrees, without which a phrase keeps the home's colour. */
    private static final int STRANGERS = 2;

    private static final int DEGREES = 2;

    PhraseColour {
        minor = List.copyOf(minor);
        major = List.copyOf(major);
    }

    /**
     * Listens to a phrase.
     *
     * @param notes the phrase's notes, in sounding order
     */
    static PhraseColour of(Analysis analysis, List<Note> notes) {
        List<Note> minor = new ArrayList<>();
        List<Note> major = new ArrayList<>();
        for (int i = 0; i < notes.size(); i++) {
            Note note = notes.get(i);
            String degree = analysis.degreeOf(note).toString();
            if (!note.isPitched() || belongsToAnotherChord(analysis, note)) {
                continue;
            }
            boolean leadsToThird = i + 1 < notes.size() && isThirdAbove(analysis, note, notes.get(i + 1));
            if (OF_MINOR.contains(degree) && !leadsToThird) {
                minor.add(note);
            } else if (OF_MAJOR.contains(degree) && !note.isBentAway()) {
                major.add(note);
            }
        }
        return new PhraseColour(analysis.homeAt(notes.get(0)).scale(), minor, major);
    }

    /** A chord tone of any chord but the home's follows the chord and says nothing of the colour. */
    private static boolean belongsToAnotherChord(Analysis analysis, Note note) {
        int tonic = analysis.homeAt(note).scale().tonic().chroma();
        return analysis.chordAt(note)
                .filter(chord -> chord.root().chroma() != tonic)
                .filter(chord -> chord.contains(Math.floorMod(note.heardMidi(), 12)))
                .isPresent();
    }

    /** The ♭3 that moves up to the 3 belongs to both colours. */
    private static boolean isThirdAbove(Analysis analysis, Note note, Note next) {
        return next.heardMidi() == note.heardMidi() + 1
                && analysis.degreeOf(next).toString().equals("3");
    }

    /**
     * The colour that the phrase plainly has.
     *
     * @param least how many notes must speak for it, one fewer for the home's own; and twice as many as for the other
     * @return whether it is major; none where the phrase is not plain
     */
    Optional<Boolean> isMajor(int least) {
        if (speaks(major, minor, least, home.scale().hasMajorThird())) {
            return Optional.of(true);
        }
        return speaks(minor, major, least, !home.scale().hasMajorThird()) ? Optional.of(false) : Optional.empty();
    }

    private boolean speaks(List<Note> notes, List<Note> others, int least, boolean isHomes) {
        int needed = isHomes ? least - 1 : least;
        boolean plain = notes.size() >= needed && notes.size() >= 2 * others.size();
        return plain && (isHomes || isFarFromHome(notes));
    }

    /** A lone 6 or 2 is no change of colour, nor are degrees that the home scale holds anyway. */
    private boolean isFarFromHome(List<Note> notes) {
        long strangers =
                notes.stream().filter(note -> !home.contains(note.heardMidi())).count();
        return strangers >= STRANGERS && degrees(notes).size() >= DEGREES;
    }

    /** The degrees of some of its notes, each once, in rising order. */
    List<Degree> degrees(List<Note> notes) {
        return notes.stream()
                .map(note -> home.degreeOf(note.heardMidi()))
                .distinct()
                .sorted()
                .toList();
    }
}
