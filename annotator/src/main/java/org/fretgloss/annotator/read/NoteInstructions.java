package org.fretgloss.annotator.read;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.function.IntSupplier;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import javax.xml.stream.util.StreamReaderDelegate;

/**
 * Listens, while a score is parsed, for processing instructions inside of notes: some exporters keep their vibrato there,
 * and data binding passes all of them over.
 */
final class NoteInstructions extends StreamReaderDelegate {

    private static final Pattern VIBRATO = Pattern.compile("\\bvibrato\\b");

    /** The vibrato's kind or a switch, by which an exporter says that there is none. */
    private static final Pattern NO_VIBRATO = Pattern.compile("\\bvibrato\\b[^<>]{0,40}\\b(none|no|off|false)\\b");

    private final IntSupplier ordinal;
    private final Set<Integer> vibratos = new HashSet<>();
    private boolean inNote;

    /**
     * Listens to a reader.
     *
     * @param ordinal 1-based place among all note elements of the one that began last
     */
    NoteInstructions(XMLStreamReader reader, IntSupplier ordinal) {
        super(reader);
        this.ordinal = ordinal;
    }

    /** Ordinals of the note elements, so far, that an instruction gives a vibrato. */
    Set<Integer> vibratos() {
        return Set.copyOf(vibratos);
    }

    @Override
    public int next() throws XMLStreamException {
        int event = super.next();
        switch (event) {
            case START_ELEMENT -> inNote |= getLocalName().equals("note");
            case END_ELEMENT -> inNote &= !getLocalName().equals("note");
            case PROCESSING_INSTRUCTION -> instruction(getPIData());
            default -> {
                // Everything else is data binding's.
            }
        }
        return event;
    }

    private void instruction(String data) {
        String text = data.toLowerCase(Locale.ROOT);
        if (inNote && VIBRATO.matcher(text).find() && !NO_VIBRATO.matcher(text).find()) {
            vibratos.add(ordinal.getAsInt());
        }
    }
}
