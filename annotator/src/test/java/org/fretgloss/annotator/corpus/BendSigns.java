package org.fretgloss.annotator.corpus;

import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The bend elements of a score as they are written: which sorts, and with which sign. It tells one dialect from another. */
final class BendSigns {

    private static final Pattern BEND = Pattern.compile("<bend\\b.*?</bend>", Pattern.DOTALL);
    private static final Pattern ALTER = Pattern.compile("<bend-alter>\\s*([^<]*?)\\s*</bend-alter>");

    private BendSigns() {}

    /** "bend + 4, release − 3", or "-" where nothing is bent. */
    static String of(String text) {
        Map<String, Long> counts = BEND.matcher(text)
                .results()
                .map(MatchResult::group)
                .collect(Collectors.groupingBy(BendSigns::sort, TreeMap::new, Collectors.counting()));
        return counts.isEmpty()
                ? "-"
                : counts.entrySet().stream()
                        .map(entry -> entry.getKey() + " " + entry.getValue())
                        .collect(Collectors.joining(", "));
    }

    private static String sort(String bend) {
        String kind = bend.contains("<pre-bend") ? "pre-bend" : bend.contains("<release") ? "release" : "bend";
        Matcher alter = ALTER.matcher(bend);
        return kind + " " + (alter.find() ? sign(alter.group(1)) : "?");
    }

    private static String sign(String number) {
        if (number.startsWith("-")) {
            return "−";
        }
        return number.matches("0*\\.?0*") ? "0" : "+";
    }
}
