package org.fretgloss.annotator.write;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.BiFunction;
import org.fretgloss.annotator.file.ElementSite;
import org.fretgloss.annotator.file.Header;
import org.fretgloss.annotator.file.ScoreScan;
import org.fretgloss.annotator.file.Splice;

/**
 * Puts our field into the score's identification. What is missing around it is inserted in the schema's order, and an
 * empty tag is opened: {@code <identification/>} becomes {@code <identification>...</identification>} by insertions
 * only.
 */
final class FieldWriter {

    static final String IDENTIFICATION = "identification";
    static final String MISCELLANEOUS = "miscellaneous";

    private final ScoreScan scan;
    private final Layout layout;
    private final BiFunction<List<String>, List<String>, FieldContent> content;

    private FieldWriter(ScoreScan scan, Layout layout, BiFunction<List<String>, List<String>, FieldContent> content) {
        this.scan = scan;
        this.layout = layout;
        this.content = content;
    }

    /**
     * The splices that bring the field in.
     *
     * @param content makes the field's content from the names of the elements that were inserted and opened for it
     */
    static List<Splice> splices(
            ScoreScan scan, Layout layout, BiFunction<List<String>, List<String>, FieldContent> content) {
        return new FieldWriter(scan, layout, content).splices();
    }

    private List<Splice> splices() {
        Header header = scan.header();
        if (header.miscellaneous().isPresent()) {
            return into(header.miscellaneous().get(), MISCELLANEOUS, List.of());
        }
        if (header.identification().isPresent()) {
            return into(header.identification().get(), IDENTIFICATION, List.of(MISCELLANEOUS));
        }
        NewElement identification = field(List.of(IDENTIFICATION, MISCELLANEOUS), List.of());
        Spacing spacing = Spacing.inside(scan.text(), scan.root());
        return List.of(Splice.insert(header.identificationOffset(), layout.markup(identification, spacing)));
    }

    private List<Splice> into(ElementSite container, String name, List<String> inserted) {
        Spacing outside = Spacing.before(scan.text(), container.start());
        if (container.isEmptyTag()) {
            String children = layout.markup(field(inserted, List.of(name)), layout.deeper(outside));
            int slash = container.end() - 2;
            return List.of(
                    Splice.insert(slash, ">" + children + outside + "<"),
                    Splice.insert(slash + 1, scan.prefix() + name));
        }
        Spacing spacing = container.hasChildren() ? Spacing.inside(scan.text(), container) : layout.deeper(outside);
        return List.of(Splice.insert(container.contentEnd(), layout.markup(field(inserted, List.of()), spacing)));
    }

    private NewElement field(List<String> inserted, List<String> opened) {
        NewElement element = NewElement.ofText(
                        "miscellaneous-field", content.apply(inserted, opened).toString())
                .with("name", Header.OUR_NAME);
        List<String> outwards = new ArrayList<>(inserted);
        Collections.reverse(outwards);
        for (String name : outwards) {
            element = NewElement.of(name, element);
        }
        return element;
    }
}
