package org.fretgloss.annotator.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Collects what the user is told, each thing once however often it occurs. */
final class Notices {

    /** What happened, with the bar where it first did and how often. */
    private record Occurrence(String firstBar, int count) {}

    private static final Occurrence NOWHERE = new Occurrence("", 1);

    private final Map<String, Occurrence> told = new LinkedHashMap<>();

    /** Says something about the score as a whole. */
    void say(String text) {
        told.putIfAbsent(text, NOWHERE);
    }

    /** Says something about a place; only the first bar is named, the others are counted. */
    void say(String text, String bar) {
        told.merge(text, new Occurrence(bar, 1), (first, next) -> new Occurrence(first.firstBar, first.count + 1));
    }

    /** Takes over everything that another collector holds. */
    void addAll(Notices others) {
        others.told.forEach(told::putIfAbsent);
    }

    List<Notice> list() {
        return told.entrySet().stream()
                .map(entry -> new Notice(entry.getKey() + place(entry.getValue())))
                .toList();
    }

    private static String place(Occurrence occurrence) {
        if (occurrence.firstBar.isEmpty()) {
            return "";
        }
        if (occurrence.count == 1) {
            return " (bar " + occurrence.firstBar + ")";
        }
        return " (" + occurrence.count + " times, first in bar " + occurrence.firstBar + ")";
    }
}
