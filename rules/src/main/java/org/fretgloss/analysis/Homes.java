package org.fretgloss.analysis;

import java.util.List;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;

/**
 * The homes of a solo in order. Most solos have one; another begins where the music moves key.
 *
 * @param sections at least one; the first begins with the first note
 */
public record Homes(List<HomeSection> sections) {

    /**
     * Checks the components.
     *
     * @throws IllegalArgumentException if the sections do not begin with the first note, or do not rise
     */
    public Homes {
        sections = List.copyOf(sections);
        if (sections.isEmpty() || sections.get(0).from() != 0) {
            throw new IllegalArgumentException("the first home begins with the first note");
        }
        for (int i = 1; i < sections.size(); i++) {
            if (sections.get(i).from() <= sections.get(i - 1).from()) {
                throw new IllegalArgumentException("each home begins after the one before it");
            }
        }
    }

    /** One home from beginning to end. */
    public static Homes of(Home home) {
        return new Homes(List.of(new HomeSection(0, home)));
    }

    public Home first() {
        return sections.get(0).home();
    }

    /** The home in force at a note. */
    public Home at(Note note) {
        return sections.get(sectionOf(note)).home();
    }

    private int sectionOf(Note note) {
        int low = 0;
        int high = sections.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (sections.get(middle).from() > note.index()) {
                high = middle - 1;
            } else {
                low = middle;
            }
        }
        return low;
    }

    /** The notes of a section, in sounding order. */
    public List<Note> notesOf(HomeSection section, Solo solo) {
        int next = sections.indexOf(section) + 1;
        int end = next < sections.size()
                ? sections.get(next).from()
                : solo.notes().size();
        return solo.notes().subList(section.from(), end);
    }

    /** Whether one home is in force from a note to a later one. */
    public boolean isSame(Note earlier, Note later) {
        return sectionOf(earlier) == sectionOf(later);
    }
}
