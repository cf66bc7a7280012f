package org.fretgloss.annotator.read;

import jakarta.xml.bind.JAXBContext;
import jakarta.xml.bind.JAXBException;
import jakarta.xml.bind.Unmarshaller;
import jakarta.xml.bind.ValidationEvent;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.audiveris.proxymusic.Kind;
import org.audiveris.proxymusic.KindValue;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.ScoreTimewise;
import org.fretgloss.annotator.file.NoteScanner;
import org.fretgloss.annotator.file.ScoreException;

/** From the text of a score to its tree. Nothing is validated: unknown elements and values are passed over. */
final class ScoreParser {

    private ScoreParser() {}

    /**
     * Parses a score, part by part or bar by bar.
     *
     * @throws ScoreException if the text is not well-formed XML or no MusicXML score
     */
    static ParsedScore parse(NoteScanner scanner) throws ScoreException {
        Map<Note, Integer> ordinals = new HashMap<>();
        Unread unread = new Unread();
        try {
            Unmarshaller unmarshaller = Context.INSTANCE.createUnmarshaller();
            unmarshaller.setEventHandler(event -> event.getSeverity() != ValidationEvent.FATAL_ERROR);
            Strangers strangers = new Strangers(scanner.reader());
            unmarshaller.setListener(new Unmarshaller.Listener() {
                @Override
                public void beforeUnmarshal(Object target, Object parent) {
                    if (target instanceof Note note) {
                        ordinals.put(note, scanner.ordinal());
                    }
                }

                @Override
                public void afterUnmarshal(Object target, Object parent) {
                    unread.add(target, strangers.unread());
                    if (target instanceof Kind kind && kind.getValue() == null && strangers.textStands()) {
                        // A kind that the schema does not know is not the same as none.
                        kind.setValue(KindValue.OTHER);
                    }
                }
            });
            NoteInstructions reader = new NoteInstructions(new KnownAttributes(strangers), scanner::ordinal);
            Object root = unmarshaller.unmarshal(reader);
            return understand(root, ordinals, reader.vibratos(), unread, strangers.notices());
        } catch (JAXBException e) {
            throw scanner.explain(e);
        }
    }

    private static ParsedScore understand(
            Object root, Map<Note, Integer> ordinals, Set<Integer> vibratos, Unread unread, Notices strangers)
            throws ScoreException {
        if (root instanceof ScorePartwise score) {
            return new ParsedScore(
                    Titles.of(score.getWork(), score.getMovementTitle()),
                    PartSources.of(score.getPartList(), score.getPart(), unread),
                    ordinals,
                    vibratos,
                    strangers);
        }
        if (root instanceof ScoreTimewise score) {
            List<ScorePartwise.Part> parts = Timewise.byPart(score);
            return new ParsedScore(
                    Titles.of(score.getWork(), score.getMovementTitle()),
                    PartSources.of(score.getPartList(), parts, unread),
                    ordinals,
                    vibratos,
                    strangers);
        }
        throw new ScoreException("this is XML, but no MusicXML score; export the transcription as MusicXML");
    }

    /** Building the context takes longer than reading most scores, so it is built once, when first needed. */
    private static final class Context {

        static final JAXBContext INSTANCE = build();

        private static JAXBContext build() {
            try {
                return JAXBContext.newInstance(ScorePartwise.class, ScoreTimewise.class);
            } catch (JAXBException e) {
                throw new IllegalStateException(e);
            }
        }
    }
}
