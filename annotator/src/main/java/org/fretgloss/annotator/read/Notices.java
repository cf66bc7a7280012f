package org.fretgloss.annotator.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Collects what the user is told, each thing once however often it occurs. */
final class Notices {

    /** What happened, with the bar where it first did and how often. */
    private record Occurrence(String text, String firstBar, int count) {}

    /** Longer than anything that a score has to say in one value. */
    private static final int LONGEST_VALUE = 40;

    /** By kind. */
    private final Map<String, Occurrence> told = new LinkedHashMap<>();

    /** Says something about the score as a whole. */
    void say(String text) {
        told.putIfAbsent(text, new Occurrence(text, "", 1));
    }

    /** Says something about a place; only the first bar is named, the others are counted. */
    void say(String text, String bar) {
        say(text, text, bar);
    }

    /** Says something of which each place would say a little differently; only the first text of a kind is told. */
    void say(String kind, String text, String bar) {
        told.merge(
                kind,
                new Occurrence(text, bar, 1),
                (first, next) -> new Occurrence(first.text, first.firstBar, first.count + 1));
    }

    /** A value of the score, as it is written, within a text. */
    static String quoted(String written) {
        String value = written.strip();
        return "'" + shortened(value) + "'";
    }

    private static String shortened(String value) {
        return value.length() > LONGEST_VALUE ? value.substring(0, LONGEST_VALUE) + "…" : value;
    }

    /** Takes over everything that another collector holds. */
    void addAll(Notices others) {
        others.told.forEach(told::putIfAbsent);
    }

    List<Notice> list() {
        return told.values().stream()
                .map(occurrence -> new Notice(occurrence.text + place(occurrence)))
                .toList();
    }

    private static String place(Occurrence occurrence) {
        if (occurrence.firstBar.isEmpty()) {
            return "";
        }
        if (occurrence.count == 1) {
            return " (bar " + shortened(occurrence.firstBar) + ")";
        }
        return " (" + occurrence.count + " times, first in bar " + shortened(occurrence.firstBar) + ")";
    }
}
