package org.fretgloss.annotator.write;

import java.util.List;
import java.util.Optional;
import org.fretgloss.annotator.file.ElementSite;
import org.fretgloss.annotator.file.Header;
import org.fretgloss.annotator.file.ScoreScan;
import org.fretgloss.annotator.file.Splice;

/**
 * Takes our field out, and with it the elements that were inserted for it and are empty without it; an element that was
 * opened for it becomes an empty tag again.
 */
final class FieldStripper {

    private final String text;
    private final FieldContent content;

    private FieldStripper(String text, FieldContent content) {
        this.text = text;
        this.content = content;
    }

    /**
     * The splices that take our fields out.
     *
     * @param content what the field says, if it can be read
     */
    static List<Splice> splices(ScoreScan scan, Optional<FieldContent> content) {
        Header header = scan.header();
        List<Splice> fields = header.fields().stream()
                .map(field -> Stripper.withBlankBefore(scan.text(), field.start(), field.end()))
                .toList();
        if (fields.size() != 1 || content.isEmpty()) {
            return fields;
        }
        FieldStripper stripper = new FieldStripper(scan.text(), content.get());
        return stripper.outwards(
                fields.get(0),
                header.miscellaneous().orElseThrow(),
                header.identification().orElseThrow());
    }

    private List<Splice> outwards(Splice field, ElementSite miscellaneous, ElementSite identification) {
        if (!holdsOnly(field, miscellaneous)) {
            return List.of(field);
        }
        if (content.opened().contains(FieldWriter.MISCELLANEOUS)) {
            return closed(miscellaneous);
        }
        if (!content.inserted().contains(FieldWriter.MISCELLANEOUS)) {
            return List.of(field);
        }
        Splice whole = Stripper.withBlankBefore(text, miscellaneous.start(), miscellaneous.end());
        if (!holdsOnly(whole, identification)) {
            return List.of(whole);
        }
        if (content.opened().contains(FieldWriter.IDENTIFICATION)) {
            return closed(identification);
        }
        return content.inserted().contains(FieldWriter.IDENTIFICATION)
                ? List.of(Stripper.withBlankBefore(text, identification.start(), identification.end()))
                : List.of(whole);
    }

    /** Whether nothing but white space is left in an element once a stretch of it is gone. */
    private boolean holdsOnly(Splice stretch, ElementSite element) {
        return text.substring(element.startTagEnd(), stretch.from()).isBlank()
                && text.substring(stretch.to(), element.endTagStart()).isBlank();
    }

    /** Of {@code <name>...</name>} the slash stays, and what stands before the content. */
    private static List<Splice> closed(ElementSite element) {
        int slash = element.endTagStart() + 1;
        return List.of(Splice.remove(element.startTagEnd() - 1, slash), Splice.remove(slash + 1, element.end() - 1));
    }
}
