package org.fretgloss.annotator.write;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonParseException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What our miscellaneous field says, one JSON object: enough to take our lines out again and to notice texts edited by
 * hand. It holds no date, so the same score and settings give the same bytes.
 *
 * @param version of the program that wrote the lines
 * @param lines lyric number to line name
 * @param settings the settings that matter, by name
 * @param inserted names of the elements around the field that were inserted for it
 * @param opened names of the elements around the field that stood there as empty tags and were opened for it
 * @param digest of our texts, see {@link TextDigest}
 */
public record FieldContent(
        String version,
        Map<Integer, String> lines,
        Map<String, String> settings,
        List<String> inserted,
        List<String> opened,
        String digest) {

    private static final Gson GSON = new GsonBuilder().disableHtmlEscaping().create();

    /** As Gson reads it: anything may be missing. */
    private record Raw(
            @Nullable String version,
            @Nullable LinkedHashMap<Integer, String> lines,
            @Nullable LinkedHashMap<String, String> settings,
            @Nullable List<String> inserted,
            @Nullable List<String> opened,
            @Nullable String digest) {}

    public FieldContent {
        lines = Collections.unmodifiableMap(new LinkedHashMap<>(lines));
        settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
        inserted = List.copyOf(inserted);
        opened = List.copyOf(opened);
    }

    /** Reads the field's text; none where it is not as we write it. */
    public static Optional<FieldContent> parse(String text) {
        try {
            Raw raw = GSON.fromJson(text, Raw.class);
            return raw == null ? Optional.empty() : whole(raw);
        } catch (JsonParseException e) {
            return Optional.empty();
        }
    }

    private static Optional<FieldContent> whole(Raw raw) {
        if (raw.version == null
                || raw.lines == null
                || raw.settings == null
                || raw.inserted == null
                || raw.opened == null
                || raw.digest == null) {
            return Optional.empty();
        }
        return Optional.of(
                new FieldContent(raw.version, raw.lines, raw.settings, raw.inserted, raw.opened, raw.digest));
    }

    /** The field's text, not yet escaped for XML. */
    @Override
    public String toString() {
        return GSON.toJson(this);
    }
}
