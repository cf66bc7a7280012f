package org.fretgloss.annotator.file;

import javax.xml.stream.XMLStreamException;

/** Our own refusal to read on, in a musician's words, on its way through a parser's caller. */
final class RefusedException extends XMLStreamException {

    private static final long serialVersionUID = 1;

    RefusedException(String message) {
        super(message);
    }
}
