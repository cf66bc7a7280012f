package org.fretgloss.annotator.write;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Who wrote the lines, and how.
 *
 * @param version of this program
 * @param settings the settings that matter, by name, in the order in which they shall stand
 */
public record Stamp(String version, Map<String, String> settings) {

    public Stamp {
        settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
    }
}
