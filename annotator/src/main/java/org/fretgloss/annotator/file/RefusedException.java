package org.fretgloss.annotator.file;

import javax.xml.stream.XMLStreamException;

/** Our own refusal to read on, in a musician's words, on its way through a parser's caller. */
final class RefusedException extends XMLStreamException {

    private static final long serialVersionUID = 1;

    private final String fault;
    private final String remedy;

    /**
     * Refuses.
     *
     * @param fault what is wrong, without the place
     * @param remedy what to do
     */
    RefusedException(String fault, String remedy) {
        super(fault + "; " + remedy);
        this.fault = fault;
        this.remedy = remedy;
    }

    String fault() {
        return fault;
    }

    String remedy() {
        return remedy;
    }
}
