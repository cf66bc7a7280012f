package org.fretgloss.annotator.check;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What an annotated score has that the original lacks, letter by letter. White space before an element of ours may be the
 * original's or inserted with it; where one reading leads nowhere, the other is tried.
 */
public final class InsertedElements {

    private static final String SPACE = "\\s*+";
    private static final String PREFIX = "(?:[a-z]+:)?";
    private static final String FIELD = element("miscellaneous-field", " name=\"fretgloss\"", "[^<]*+");
    private static final String MISCELLANEOUS = element("miscellaneous", "", SPACE + FIELD + SPACE);
    private static final String FIELD_OR_ITS_PARENT = "(?:" + MISCELLANEOUS + "|" + FIELD + ")";

    /** The elements of ours, each with the white space before it, the widest first. */
    private static final List<Pattern> OURS = Stream.of(
                    element(
                            "lyric",
                            " number=\"\\d\" name=\"fretgloss:[a-z]+\"",
                            SPACE + element("syllabic", "", "single") + SPACE + element("text", "", "[^<]++") + SPACE),
                    element("identification", "", SPACE + MISCELLANEOUS + SPACE),
                    FIELD_OR_ITS_PARENT)
            .map(element -> Pattern.compile(SPACE + element))
            .toList();

    /** What stands in the place of the end of an empty tag that was opened. */
    private static final Pattern OPENED = Pattern.compile(
            ">" + SPACE + FIELD_OR_ITS_PARENT + SPACE + "</" + PREFIX + "(?:identification|miscellaneous)>");

    private static final String EMPTY_END = "/>";

    private static final Pattern STARTS =
            Pattern.compile(SPACE + "<" + PREFIX + "(?:lyric number|miscellaneous|identification)");

    /** A place in both texts, and how many elements were inserted before it. */
    private record Step(int here, int there, int inserted) {}

    private final String original;
    private final String annotated;
    private final List<String> inserted = new ArrayList<>();

    /** Where an insertion was taken, though the letter may be the original's. */
    private final Deque<Step> otherwise = new ArrayDeque<>();

    private InsertedElements(String original, String annotated) {
        this.original = original;
        this.annotated = annotated;
    }

    /**
     * What was inserted, in order.
     *
     * @throws AssertionError if the annotated text differs from the original by anything but our elements
     */
    public static List<String> between(String original, String annotated) {
        return new InsertedElements(original, annotated).walk();
    }

    private List<String> walk() {
        int here = 0;
        int there = 0;
        int furthest = 0;
        while (here < original.length() || there < annotated.length()) {
            furthest = Math.max(furthest, here);
            boolean same = isSame(here, there);
            Optional<String> opened = openedAt(here, there);
            Optional<String> ours = opened.isPresent() ? opened : oursAt(there);
            if (ours.isPresent()) {
                if (same) {
                    otherwise.push(new Step(here + 1, there + 1, inserted.size()));
                }
                inserted.add(ours.get());
                here += opened.isPresent() ? EMPTY_END.length() : 0;
                there += ours.get().length();
            } else if (same) {
                here++;
                there++;
            } else {
                Step back = back(furthest);
                here = back.here();
                there = back.there();
            }
        }
        return List.copyOf(inserted);
    }

    private Step back(int furthest) {
        if (otherwise.isEmpty()) {
            throw new AssertionError("changed from here on: …"
                    + original.substring(Math.max(0, furthest - 80), furthest) + "⟨here⟩"
                    + original.substring(furthest, Math.min(original.length(), furthest + 80)) + "…");
        }
        Step back = otherwise.pop();
        inserted.subList(back.inserted(), inserted.size()).clear();
        return back;
    }

    private boolean isSame(int here, int there) {
        return here < original.length()
                && there < annotated.length()
                && original.charAt(here) == annotated.charAt(there);
    }

    private Optional<String> openedAt(int here, int there) {
        return original.startsWith(EMPTY_END, here) ? at(OPENED, there) : Optional.empty();
    }

    private Optional<String> oursAt(int there) {
        return mayStart(there)
                ? OURS.stream().flatMap(ours -> at(ours, there).stream()).findFirst()
                : Optional.empty();
    }

    /** Asked at every character, so it must be quick to say no. */
    private boolean mayStart(int there) {
        boolean isLetter = there == annotated.length() || annotated.charAt(there) > '<';
        return !isLetter
                && STARTS.matcher(annotated).region(there, annotated.length()).lookingAt();
    }

    private Optional<String> at(Pattern pattern, int there) {
        Matcher matcher = pattern.matcher(annotated).region(there, annotated.length());
        return matcher.lookingAt() ? Optional.of(matcher.group()) : Optional.empty();
    }

    private static String element(String name, String attributes, String content) {
        return "<" + PREFIX + name + attributes + ">" + content + "</" + PREFIX + name + ">";
    }
}
