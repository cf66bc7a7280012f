package org.fretgloss.annotator.file;

import java.util.ArrayList;
import java.util.List;

/** The elements open at a moment of reading, the root first. */
final class ElementPath {

    private static final int PART_OR_MEASURE = 1;
    private static final int NOTE = 3;

    private final List<OpenElement> open = new ArrayList<>();

    void push(OpenElement element) {
        open.add(element);
    }

    OpenElement pop() {
        return open.remove(open.size() - 1);
    }

    int depth() {
        return open.size();
    }

    boolean isEmpty() {
        return open.isEmpty();
    }

    OpenElement last() {
        return open.get(open.size() - 1);
    }

    /** Whether exactly these elements are open below the root. */
    boolean is(String... names) {
        if (open.size() != names.length + 1) {
            return false;
        }
        for (int i = 0; i < names.length; i++) {
            if (!open.get(i + 1).is(names[i])) {
                return false;
            }
        }
        return true;
    }

    /** Whether the last element is a note of the music, in a score by parts or by measures. */
    boolean isNote() {
        return open.size() == NOTE + 1 && open.get(NOTE).is("note") && isMusic();
    }

    /** Whether the last element is a lyric of a note. */
    boolean isLyric() {
        return open.size() == NOTE + 2 && last().is("lyric") && open.get(NOTE).is("note") && isMusic();
    }

    /** Whether the last element holds a lyric's words. */
    boolean isLyricText() {
        return open.size() == NOTE + 3
                && last().is("text")
                && open.get(NOTE + 1).is("lyric")
                && open.get(NOTE).is("note")
                && isMusic();
    }

    private boolean isMusic() {
        OpenElement outer = open.get(PART_OR_MEASURE);
        OpenElement inner = open.get(PART_OR_MEASURE + 1);
        return outer.is("part") ? inner.is("measure") : outer.is("measure") && inner.is("part");
    }

    /** The id of the part that is open; empty where none is or it has no id. */
    String part() {
        return keyOf("part");
    }

    /** The number of the bar that is open; empty where none is or it has no number. */
    String bar() {
        return keyOf("measure");
    }

    private String keyOf(String name) {
        return open.stream()
                .filter(element -> element.is(name))
                .map(OpenElement::key)
                .findFirst()
                .orElse("");
    }
}
