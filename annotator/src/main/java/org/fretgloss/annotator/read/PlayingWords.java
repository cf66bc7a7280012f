package org.fretgloss.annotator.read;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.fretgloss.solo.Technique;
import org.jspecify.annotations.Nullable;

/** Words that players write over the staff instead of a sign (common practice, no source). */
final class PlayingWords {

    private static final Map<String, Technique> TECHNIQUES = Map.ofEntries(
            Map.entry("pm", Technique.PALM_MUTE),
            Map.entry("palm mute", Technique.PALM_MUTE),
            Map.entry("palm muted", Technique.PALM_MUTE),
            Map.entry("palm muting", Technique.PALM_MUTE),
            Map.entry("let ring", Technique.LET_RING),
            Map.entry("vib", Technique.VIBRATO),
            Map.entry("vibrato", Technique.VIBRATO),
            Map.entry("wide vibrato", Technique.VIBRATO),
            Map.entry("dead note", Technique.DEAD),
            Map.entry("slide in", Technique.SLIDE_IN),
            Map.entry("slide out", Technique.SLIDE_OUT));

    private PlayingWords() {}

    /** The technique that some words stand for: "P.M.", "let ring ---", "palm-mute". */
    static Optional<Technique> technique(@Nullable String words) {
        return Optional.ofNullable(TECHNIQUES.get(plain(words)));
    }

    /** Whether the words say that a note is tapped. */
    static boolean isTap(@Nullable String words) {
        return plain(words).matches("t|tap|tapped|tapping");
    }

    /** Whether the words say that no chord sounds: "N.C.", "no chord". */
    static boolean saysNoChord(@Nullable String words) {
        return plain(words).matches("n ?c|no chord");
    }

    private static String plain(@Nullable String words) {
        return words == null
                ? ""
                : words.toLowerCase(Locale.ROOT)
                        .replace(".", "")
                        .replaceAll("[-–—_\\s]+", " ")
                        .strip();
    }
}
