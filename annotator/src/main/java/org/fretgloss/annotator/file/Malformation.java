package org.fretgloss.annotator.file;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is wrong with a text that should be XML, in words for people who write music. The parser knows, but says it in
 * words for those who write parsers.
 */
final class Malformation {

    /** A name in a damaged text may be as long as the text. */
    private static final int LONGEST_NAME = 40;

    private static final Pattern GROUP = Pattern.compile("#(\\d)");

    private static final String CHARACTER = "^Unexpected character .*?code (\\d+)[^)]*\\).*";

    /**
     * A fault.
     *
     * @param phrase how the parser tells it
     * @param words how we tell it; {@code #1} is the phrase's first group, {@code @1} the character of that code
     */
    private record Kind(Pattern phrase, String words) {

        private static final Pattern CODE = Pattern.compile("@(\\d)");

        static Kind of(String phrase, String words) {
            return new Kind(Pattern.compile(phrase, Pattern.DOTALL), words);
        }

        String tell(Matcher found) {
            String named = GROUP.matcher(words)
                    .replaceAll(group -> Matcher.quoteReplacement(shortened(found.group(digit(group.group(1))))));
            return CODE.matcher(named)
                    .replaceAll(group -> Matcher.quoteReplacement(character(found.group(digit(group.group(1))))));
        }

        private static int digit(String text) {
            return Integer.parseInt(text);
        }
    }

    private static final String LONE_AMPERSAND = "an & stands alone; a plain & is written &amp;";

    private static final String NOTHING_MORE_IS_KNOWN = "it is not as XML has to be";

    /** The first that fits tells the fault. */
    private static final List<Kind> KINDS = List.of(
            Kind.of("^Unexpected close tag </(.+)>; expected </(.+)>\\.", "<#2> is not closed before </#1>"),
            Kind.of("^Duplicate attribute '(?:\\{.*\\})?(.+)'", "a tag gives its '#1' twice"),
            Kind.of(
                    "^Invalid character reference|^Illegal character entity|expected a (decimal number|hex digit)",
                    "a number after &# stands for no character"),
            Kind.of("^Illegal character.*NULL", "it holds a control character (code 0), which no text may"),
            Kind.of("^Illegal character.*code (\\d+)", "it holds a control character (code #1), which no text may"),
            Kind.of("^Undeclared namespace prefix \"(.+?)\"", "the prefix of '#1:' is not declared"),
            Kind.of(
                    "semi-colon after the reference for entity '(.+)'",
                    "&#1 lacks its semicolon; a plain & is written &amp;"),
            Kind.of(" in attribute value", "a < stands within a value: a quotation mark is missing, or &lt; is meant"),
            Kind.of("in start tag Expected a quote", "a value lacks its quotation marks"),
            Kind.of("expected '='", "a name in a tag has no = and no value"),
            Kind.of(
                    CHARACTER + "in content after '<'",
                    "a < stands before @1, which begins no tag; a plain < is written &lt;"),
            Kind.of("missing element name", "a closing tag has no name"),
            Kind.of("missing closing '>'|in end tag Expected '>'", "a tag lacks its >"),
            Kind.of("DOCTYPE|DTD|'PUBLIC'|public identifier", "its DOCTYPE is not as XML has it"),
            Kind.of(CHARACTER + "expected .*'>'", "@1 stands in a tag where it has no place"),
            Kind.of("^String '\\]\\]>'", "]]> stands in a text; it is written ]]&gt;"),
            Kind.of("^String '--'", "-- stands within a comment"),
            Kind.of(
                    "^Unrecognized XML directive|after '<!'",
                    "what follows a <! is no comment and nothing else that XML has"),
            Kind.of(
                    "^Illegal processing instruction target",
                    "an <?xml stands where none may: it belongs to the very beginning"),
            Kind.of("PI target|missing name", "a <? has no proper name after it"),
            Kind.of("namespace|^Trying to (re)?declare|^Trying to bind", "an xmlns declares what none may"),
            Kind.of("multiple roots", "another element follows after the score's end"),
            Kind.of("in epilog.*extra close tag", "a closing tag too many follows after the score's end"),
            Kind.of("epilog", "text follows after the score's end"),
            Kind.of("in prolog", "something stands before the first tag that does not belong there"),
            Kind.of(CHARACTER + "name start character", "@1 stands where a name should begin"),
            Kind.of(CHARACTER, "@1 stands where it has no place"));

    private Malformation() {}

    /**
     * The fault, in a clause without an end mark.
     *
     * @param phrase what the parser says
     * @param text the text
     * @param offset where in the text the parser stopped
     */
    static String tell(String phrase, CharSequence text, int offset) {
        boolean afterAmpersand = offset > 0 && offset <= text.length() && text.charAt(offset - 1) == '&';
        if (afterAmpersand && phrase.contains("name")) {
            return LONE_AMPERSAND;
        }
        for (Kind kind : KINDS) {
            Matcher found = kind.phrase().matcher(phrase);
            if (found.find()) {
                return kind.tell(found);
            }
        }
        return NOTHING_MORE_IS_KNOWN;
    }

    private static String shortened(String name) {
        return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME) + "…";
    }

    private static String character(String code) {
        int point = Integer.parseInt(code);
        if (Character.isWhitespace(point)) {
            return "white space";
        }
        // The parser sees the halves of a character beyond U+FFFF one by one.
        return Character.isSurrogate((char) point) ? "a symbol" : "'" + Character.toString(point) + "'";
    }
}
