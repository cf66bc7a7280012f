package org.fretgloss.annotator.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLStreamReader;

/** Remembers where the identification of a score stands, and our field in it. */
final class HeaderRecorder {

    private int identificationOffset;
    private Optional<ElementSite> identification = Optional.empty();
    private Optional<ElementSite> miscellaneous = Optional.empty();
    private final List<Header.Field> fields = new ArrayList<>();

    private boolean inOurField;
    private final StringBuilder words = new StringBuilder();

    void started(ElementPath path, XMLStreamReader reader, int startTagEnd) {
        if (path.depth() == 1) {
            identificationOffset = startTagEnd;
        } else if (isField(path)) {
            inOurField = isFirst() && Header.OUR_NAME.equals(reader.getAttributeValue(null, "name"));
            words.setLength(0);
        }
    }

    void text(ElementPath path, XMLStreamReader reader) {
        if (inOurField && isField(path)) {
            words.append(reader.getText());
        }
    }

    /** The path's last element has just been read to its end. */
    void ended(ElementPath path, ElementSite site) {
        if (path.is("work") || path.is("movement-number") || path.is("movement-title")) {
            identificationOffset = site.end();
        } else if (path.is("identification") && identification.isEmpty()) {
            identification = Optional.of(site);
        } else if (path.is("identification", "miscellaneous") && isFirst()) {
            miscellaneous = Optional.of(site);
        } else if (isField(path) && inOurField) {
            fields.add(new Header.Field(site.start(), site.end(), words.toString()));
            inOurField = false;
        }
    }

    Header header() {
        return new Header(identificationOffset, identification, miscellaneous, fields);
    }

    /** The identification in use is the first, and of its miscellaneous children the first. */
    private boolean isFirst() {
        return identification.isEmpty() && miscellaneous.isEmpty();
    }

    private static boolean isField(ElementPath path) {
        return path.is("identification", "miscellaneous", "miscellaneous-field");
    }
}
