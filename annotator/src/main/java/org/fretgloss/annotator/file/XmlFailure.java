package org.fretgloss.annotator.file;

import com.ctc.wstx.exc.WstxEOFException;
import com.ctc.wstx.exc.WstxException;
import java.util.Optional;
import javax.xml.stream.Location;
import javax.xml.stream.XMLStreamException;

/**
 * Puts a failure of reading XML into a musician's words: what was read, where it fails, what is wrong there, what to do.
 * The parser's own words stay in the cause.
 *
 * @param subject what was read, as a sentence begins: "the score"
 * @param text its text
 * @param path the elements that were open when reading failed
 * @param line how far reading had come
 */
record XmlFailure(String subject, CharSequence text, ElementPath path, int line) {

    private static final String REMEDY = "; export it again";

    /** An XML declaration that is wrong: the parser reads it before anything else. */
    static ScoreException ofDeclaration(XMLStreamException failure) {
        return new ScoreException(
                failure instanceof WstxEOFException
                        ? "the score breaks off at line 1; export or copy it again"
                        : "the score is damaged at line 1: its first tag, <?xml …?>, is not as XML has it" + REMEDY,
                failure);
    }

    /** The failure as a musician reads it; what reading threw may be wrapped. */
    ScoreException explain(Exception failure) {
        return new ScoreException(
                parsingFailure(failure)
                        .map(this::sentence)
                        .orElseGet(() -> subject + " cannot be read as MusicXML from " + place(line) + " on" + REMEDY),
                failure);
    }

    private String sentence(XMLStreamException problem) {
        if (problem instanceof RefusedException refusal) {
            return refusal.fault() + " (" + place(line) + "); " + refusal.remedy();
        }
        String phrase = String.valueOf(problem.getMessage());
        if (!(problem instanceof WstxException)) {
            return subject + " holds " + Excess.named(phrase) + ", more than any score needs (" + place(line) + ")"
                    + REMEDY;
        }
        Location at = problem.getLocation();
        if (problem instanceof WstxEOFException || isAtEnd(at)) {
            return subject + " breaks off at " + place(at.getLineNumber()) + "; export or copy it again";
        }
        return subject + " is damaged at " + place(at.getLineNumber()) + ": "
                + Malformation.tell(phrase, text, at.getCharacterOffset()) + REMEDY;
    }

    /** Whether nothing is left; of the last character too the parser may complain where more is due. */
    private boolean isAtEnd(Location at) {
        return at.getCharacterOffset() >= text.length() - (path.isEmpty() ? 0 : 1);
    }

    private static Optional<XMLStreamException> parsingFailure(Throwable failure) {
        Throwable cause = failure;
        while (cause != null && !(cause instanceof XMLStreamException)) {
            cause = cause.getCause();
        }
        return Optional.ofNullable((XMLStreamException) cause);
    }

    /** "line 12, bar 3 of part P1". */
    private String place(int atLine) {
        String inPart = path.part().isEmpty() ? "" : " of part " + path.part();
        String inBar = path.bar().isEmpty() ? "" : ", bar " + path.bar() + inPart;
        return "line " + atLine + inBar;
    }

    /** The limits that the parser holds, which it tells without a place. */
    private enum Excess {
        ATTRIBUTE_LENGTH(
                "attribute size", "an attribute of more than " + SafeXml.MAX_ATTRIBUTE_CHARACTERS + " characters"),
        ATTRIBUTES("Attribute limit", "a tag of more than " + SafeXml.MAX_ATTRIBUTES + " attributes"),
        TEXT_LENGTH("Text size", "a text of more than " + SafeXml.MAX_TEXT_CHARACTERS + " characters");

        private final String phrase;
        private final String words;

        Excess(String phrase, String words) {
            this.phrase = phrase;
            this.words = words;
        }

        static String named(String said) {
            for (Excess excess : values()) {
                if (said.contains(excess.phrase)) {
                    return excess.words;
                }
            }
            return "more of something";
        }
    }
}
