package org.fretgloss.annotator.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.fretgloss.time.Fraction;
import org.w3c.dom.Element;

/** Walks through a score by parts and tells of each note element where it stands. */
public final class ScoreElements {

    private final Map<String, Set<String>> tablatureStaves = new HashMap<>();
    private final List<NoteElement> notes = new ArrayList<>();

    private Fraction divisions = Fraction.ONE;
    private Fraction now = Fraction.ZERO;
    private Fraction lastOnset = Fraction.ZERO;

    private ScoreElements() {}

    /** All note elements of a score, in document order. */
    public static List<NoteElement> of(String text) {
        ScoreElements walk = new ScoreElements();
        for (Element part : Xml.children(Xml.parse(text).getDocumentElement(), "part")) {
            walk.part(part);
        }
        return List.copyOf(walk.notes);
    }

    private void part(Element part) {
        String id = part.getAttribute("id");
        tablatureStaves.put(id, tablatureStaves(part));
        divisions = Fraction.ONE;
        int measure = 0;
        for (Element bar : Xml.children(part, "measure")) {
            now = Fraction.ZERO;
            for (Element element : Xml.children(bar)) {
                element(element, id, measure);
            }
            measure++;
        }
    }

    private void element(Element element, String part, int measure) {
        switch (element.getTagName()) {
            case "attributes" ->
                Xml.children(element, "divisions")
                        .forEach(value -> divisions =
                                Fraction.parse(value.getTextContent().trim()));
            case "backup" -> now = now.minus(duration(element));
            case "forward" -> now = now.plus(duration(element));
            case "note" -> note(element, part, measure);
            default -> {
                // nothing else takes time
            }
        }
    }

    private void note(Element element, String part, int measure) {
        boolean withTheLast = !Xml.children(element, "chord").isEmpty();
        if (!withTheLast) {
            lastOnset = now;
            now = now.plus(duration(element));
        }
        notes.add(new NoteElement(
                notes.size() + 1,
                element,
                part,
                measure,
                lastOnset,
                tablatureStaves.getOrDefault(part, Set.of()).contains(staffOf(element))));
    }

    /** A grace note has no duration. */
    private Fraction duration(Element element) {
        return Xml.children(element, "duration").stream()
                .map(value -> Fraction.parse(value.getTextContent().trim()).dividedBy(divisions))
                .findFirst()
                .orElse(Fraction.ZERO);
    }

    private static String staffOf(Element note) {
        return Xml.children(note, "staff").stream()
                .map(staff -> staff.getTextContent().trim())
                .findFirst()
                .orElse("1");
    }

    private static Set<String> tablatureStaves(Element part) {
        return below(List.of(part), "measure", "attributes", "clef").stream()
                .filter(clef -> below(List.of(clef), "sign").stream()
                        .anyMatch(sign -> sign.getTextContent().trim().equals("TAB")))
                .map(clef -> clef.hasAttribute("number") ? clef.getAttribute("number") : "1")
                .collect(Collectors.toSet());
    }

    /** The elements reached by a path of names. */
    private static List<Element> below(List<Element> roots, String... path) {
        List<Element> reached = roots;
        for (String name : path) {
            reached = reached.stream()
                    .flatMap(element -> Xml.children(element, name).stream())
                    .toList();
        }
        return reached;
    }
}
