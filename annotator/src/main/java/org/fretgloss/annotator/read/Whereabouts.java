package org.fretgloss.annotator.read;

import java.util.HashMap;
import java.util.Map;
import javax.xml.stream.XMLStreamReader;

/** Where in a score its parsing has come to, as messages name it. */
final class Whereabouts {

    /** How messages call each part of the part list, by its identifier. */
    private final Map<String, String> parts = new HashMap<>();

    private String header = "";
    private String part = "";
    private String bar = "";

    /** Takes note of an element that begins. */
    void begin(String element, XMLStreamReader at) {
        switch (element) {
            case "score-part" -> {
                header = attribute(at, "id");
                parts.put(header, "part " + header);
            }
            case "part" -> part = attribute(at, "id");
            case "measure" -> bar = attribute(at, "number");
            default -> {
                // Nothing else is a place.
            }
        }
    }

    /** Takes note of the text of an element that ends. */
    void end(String element, String text) {
        if (element.equals("part-name") && !text.isBlank()) {
            parts.put(header, "'" + text.strip().replaceAll("\\s+", " ") + "'");
        }
    }

    /** Whether the part list names a part. */
    boolean lists(String id) {
        return parts.containsKey(id);
    }

    /** The identifier of the part that was begun last. */
    String part() {
        return part;
    }

    /** The bar, and in a score of several parts the part; empty before the first bar. */
    String place() {
        return bar.isEmpty() || parts.size() < 2 ? bar : bar + " of " + parts.getOrDefault(part, "part " + part);
    }

    private static String attribute(XMLStreamReader at, String name) {
        String value = at.getAttributeValue(null, name);
        return value == null ? "" : value.strip();
    }
}
