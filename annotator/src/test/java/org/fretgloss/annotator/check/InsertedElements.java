package org.fretgloss.annotator.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What an annotated score has that the original lacks, letter by letter. */
public final class InsertedElements {

    private static final String FIELD = "<miscellaneous-field name=\"fretgloss\">[^<]*</miscellaneous-field>";

    /** The elements of ours, each with the white space before it, the widest first. */
    private static final List<Pattern> OURS = Stream.of(
                    "<lyric number=\"\\d\" name=\"fretgloss:[a-z]+\">\\s*<syllabic>single</syllabic>"
                            + "\\s*<text>[^<]+</text>\\s*</lyric>",
                    "<identification>\\s*<miscellaneous>\\s*" + FIELD + "\\s*</miscellaneous>\\s*</identification>",
                    "<miscellaneous>\\s*" + FIELD + "\\s*</miscellaneous>",
                    FIELD)
            .map(element -> Pattern.compile("\\s*" + element))
            .toList();

    /** Asked at every character, so it must be quick to say no. */
    private static final Pattern STARTS = Pattern.compile("\\s*+<(?:lyric|miscellaneous|identification)");

    private InsertedElements() {}

    /**
     * What was inserted, in order.
     *
     * @throws AssertionError if the annotated text differs from the original by anything but our elements
     */
    public static List<String> between(String original, String annotated) {
        List<String> inserted = new ArrayList<>();
        int there = 0;
        for (int here = 0; here <= original.length(); ) {
            Optional<String> ours = oursAt(annotated, there);
            if (ours.isPresent()) {
                inserted.add(ours.get());
                there += ours.get().length();
            } else if (here == original.length()) {
                break;
            } else {
                require(there < annotated.length() && annotated.charAt(there) == original.charAt(here), original, here);
                here++;
                there++;
            }
        }
        require(there == annotated.length(), original, original.length());
        return inserted;
    }

    private static Optional<String> oursAt(String text, int offset) {
        if (!STARTS.matcher(text).region(offset, text.length()).lookingAt()) {
            return Optional.empty();
        }
        return OURS.stream()
                .map(pattern -> pattern.matcher(text).region(offset, text.length()))
                .filter(Matcher::lookingAt)
                .map(Matcher::group)
                .findFirst();
    }

    private static void require(boolean same, String original, int offset) {
        if (!same) {
            throw new AssertionError("changed from here on: …"
                    + original.substring(Math.max(0, offset - 80), offset) + "⟨here⟩"
                    + original.substring(offset, Math.min(original.length(), offset + 80)) + "…");
        }
    }
}
