package org.fretgloss.annotator.file;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/**
 * The table of contents of a compressed score, {@value #ENTRY}: it names the entry that holds the score.
 *
 * <p>Source: the container element of the MusicXML 4.0 reference; the first root file is the score, others are other
 * renderings of it.
 */
final class ContainerXml {

    static final String ENTRY = "META-INF/container.xml";

    private static final String MUSICXML = "application/vnd.recordare.musicxml+xml";

    private record RootFile(String path, Optional<String> mediaType) {

        boolean isMusicXml() {
            return mediaType.map(MUSICXML::equals).orElse(true);
        }
    }

    private ContainerXml() {}

    /**
     * The path of the score's entry: the first root file that says it is MusicXML or does not say what it is, else the
     * first.
     */
    static String scorePath(byte[] containerXml) throws ScoreException {
        List<RootFile> rootFiles = rootFiles(containerXml);
        return rootFiles.stream()
                .filter(RootFile::isMusicXml)
                .findFirst()
                .or(() -> rootFiles.stream().findFirst())
                .orElseThrow(() -> new ScoreException("its " + ENTRY + " names no score; export the score again"))
                .path();
    }

    private static List<RootFile> rootFiles(byte[] containerXml) throws ScoreException {
        String text = DecodedText.of(containerXml).text();
        List<RootFile> found = new ArrayList<>();
        int line = 1;
        try {
            XMLStreamReader reader = SafeXml.factory().createXMLStreamReader(new StringReader(text));
            while (reader.hasNext()) {
                if (reader.next() == XMLStreamConstants.START_ELEMENT
                        && reader.getLocalName().equals("rootfile")) {
                    add(found, reader.getAttributeValue(null, "full-path"), reader);
                }
                line = reader.getLocation().getLineNumber();
            }
        } catch (XMLStreamException e) {
            throw new XmlFailure("its " + ENTRY, text, new ElementPath(), line).explain(e);
        }
        return found;
    }

    private static void add(List<RootFile> found, @Nullable String path, XMLStreamReader reader) {
        if (path != null && !path.isBlank()) {
            found.add(new RootFile(path.trim(), Optional.ofNullable(reader.getAttributeValue(null, "media-type"))));
        }
    }
}
