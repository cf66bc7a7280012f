package org.fretgloss.annotator.file;

import com.ctc.wstx.exc.WstxEOFException;
import com.ctc.wstx.exc.WstxException;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;

/** Puts a parser's complaint into a musician's words. */
final class XmlFailure {

    private XmlFailure() {}

    /**
     * The failure as a musician reads it.
     *
     * @param failure what reading threw, perhaps wrapped
     * @param path the elements that were open then
     */
    static ScoreException explain(Exception failure, ElementPath path) {
        return new ScoreException(messageOf(failure, path), failure);
    }

    private static String messageOf(Exception failure, ElementPath path) {
        Optional<XMLStreamException> parsing = parsingFailure(failure);
        if (parsing.isEmpty()) {
            return "the score cannot be read as MusicXML: " + firstLine(failure);
        }
        XMLStreamException problem = parsing.get();
        String complaint = firstLine(problem);
        if (problem instanceof RefusedException) {
            return complaint + placeOf(path);
        }
        if (problem instanceof WstxEOFException) {
            return "the score breaks off at " + lineOf(problem) + placeOf(path) + "; export or copy it again";
        }
        if (!(problem instanceof WstxException)) {
            return "the file asks for more than any score needs (" + complaint + "); export it again";
        }
        return "the score is damaged at " + lineOf(problem) + placeOf(path) + ": " + complaint + "; export it again";
    }

    private static Optional<XMLStreamException> parsingFailure(Throwable failure) {
        Throwable cause = failure;
        while (cause != null && !(cause instanceof XMLStreamException)) {
            cause = cause.getCause();
        }
        return Optional.ofNullable((XMLStreamException) cause);
    }

    private static String lineOf(XMLStreamException problem) {
        return "line " + problem.getLocation().getLineNumber();
    }

    private static String placeOf(ElementPath path) {
        if (path.bar().isEmpty()) {
            return "";
        }
        String part = path.part().isEmpty() ? "" : " of part " + path.part();
        return " (in bar " + path.bar() + part + ")";
    }

    private static String firstLine(Exception failure) {
        String message = String.valueOf(failure.getMessage());
        return message.lines().findFirst().orElse(message);
    }
}
