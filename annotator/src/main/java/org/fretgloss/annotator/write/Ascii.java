package org.fretgloss.annotator.write;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Texts for programs and terminals that cannot show the glyphs: {@code 1½ ♭3→3} becomes {@code 1 1/2 b3->3}. */
public final class Ascii {

    /** A fraction's sign after a whole number stands apart from it: 1 1/2, not 11/2. */
    private static final Pattern MIXED = Pattern.compile("(?<=\\d)(?=[½¼¾⅓⅔])");

    private static final List<Map.Entry<String, String>> STAND_INS = List.of(
            Map.entry("♭", "b"),
            Map.entry("♯", "#"),
            Map.entry("→", "->"),
            Map.entry("·", ";"),
            Map.entry("…", "..."),
            Map.entry("′", "'"),
            Map.entry("½", "1/2"),
            Map.entry("¼", "1/4"),
            Map.entry("¾", "3/4"),
            Map.entry("⅓", "1/3"),
            Map.entry("⅔", "2/3"));

    private Ascii() {}

    /** The text with every glyph of ours replaced; other characters stay. */
    public static String of(String text) {
        String plain = MIXED.matcher(text).replaceAll(" ");
        for (Map.Entry<String, String> standIn : STAND_INS) {
            plain = plain.replace(standIn.getKey(), standIn.getValue());
        }
        return plain;
    }
}
