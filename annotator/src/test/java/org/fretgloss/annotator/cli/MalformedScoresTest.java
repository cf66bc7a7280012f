package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fretgloss.annotator.file.Archives;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Texts that are no XML: each is refused in one line that tells file, line, bar where there is one, fault and remedy. */
class MalformedScoresTest {

    private static final String DECLARATION = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";

    private static final String AGAIN = "; export it again";

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    private Path folder;

    @ParameterizedTest
    @MethodSource({"inABar", "outsideTheBars"})
    void isRefusedInWords(String score, String sentence) throws IOException {
        assertRefused(Files.writeString(folder.resolve("solo.musicxml"), score), sentence);
    }

    /** What the sixth line holds, which stands in bar 7, and what is said of it. */
    static Stream<Arguments> inABar() {
        return Stream.of(
                        arguments("<note><rest></note>", "<rest> is not closed before </note>"),
                        arguments("<note></voice>", "<note> is not closed before </voice>"),
                        arguments("</note>", "<measure> is not closed before </note>"),
                        arguments("<note dynamics='1' dynamics='2'/>", "a tag gives its 'dynamics' twice"),
                        arguments("<note>\u0000</note>", "it holds a control character (code 0), which no text may"),
                        arguments("<note>\u0007</note>", "it holds a control character (code 7), which no text may"),
                        arguments("<note a='\u001B'/>", "it holds a control character (code 27), which no text may"),
                        arguments("<!-- \u0001 -->", "it holds a control character (code 1), which no text may"),
                        arguments("<![CDATA[\u0001]]>", "it holds a control character (code 1), which no text may"),
                        arguments("<x:note/>", "the prefix of 'x:' is not declared"),
                        arguments("<note x:a='1'/>", "the prefix of 'x:' is not declared"),
                        arguments("<words>Tom & Ann</words>", "an & stands alone; a plain & is written &amp;"),
                        arguments("<note a='b & c'/>", "an & stands alone; a plain & is written &amp;"),
                        arguments("<words>&;</words>", "an & stands alone; a plain & is written &amp;"),
                        arguments("<words>R&B</words>", "&B lacks its semicolon; a plain & is written &amp;"),
                        arguments("<words>&#0;</words>", "a number after &# stands for no character"),
                        arguments("<words>&#;</words>", "a number after &# stands for no character"),
                        arguments("<words>&#x110000;</words>", "a number after &# stands for no character"),
                        arguments("<words>&#xD800;</words>", "a number after &# stands for no character"),
                        arguments("<words>&#12a;</words>", "a number after &# stands for no character"),
                        arguments("<words>&#xg;</words>", "a number after &# stands for no character"),
                        arguments(
                                "<note a='<'/>",
                                "a < stands within a value: a quotation mark is missing, or &lt; is meant"),
                        arguments("<note a=1/>", "a value lacks its quotation marks"),
                        arguments("<note a/>", "a name in a tag has no = and no value"),
                        arguments("<note a '1'/>", "a name in a tag has no = and no value"),
                        arguments("<note a='1'b='2'/>", "'b' stands in a tag where it has no place"),
                        arguments("<note / >", "white space stands in a tag where it has no place"),
                        arguments("<note 1a='x'/>", "'1' stands where a name should begin"),
                        arguments(
                                "<words>3 < 4</words>",
                                "a < stands before white space, which begins no tag; a plain < is written &lt;"),
                        arguments("<<note/>", "a < stands before '<', which begins no tag; a plain < is written &lt;"),
                        arguments("<note a='1'\uD834\uDD2A/>", "a symbol stands in a tag where it has no place"),
                        arguments("<note></ note>", "a closing tag has no name"),
                        arguments("<note></note a='1'>", "a tag lacks its >"),
                        arguments("<note <rest/>", "a tag lacks its >"),
                        arguments("<words>]]></words>", "]]> stands in a text; it is written ]]&gt;"),
                        arguments("<!-- a -- b -->", "-- stands within a comment"),
                        arguments("<!note>", "what follows a <! is no comment and nothing else that XML has"),
                        arguments("<![CDAT[x]]>", "what follows a <! is no comment and nothing else that XML has"),
                        arguments("<!DOCTYPE x>", "what follows a <! is no comment and nothing else that XML has"),
                        arguments("<? x?>", "a <? has no proper name after it"),
                        arguments("<?x#?>", "a <? has no proper name after it"),
                        arguments(
                                "<?xml version='1.0'?>",
                                "an <?xml stands where none may: it belongs to the very beginning"),
                        arguments("<note xmlns:a=''/>", "an xmlns declares what none may"),
                        arguments("<note xmlns:xmlns='a'/>", "an xmlns declares what none may"),
                        arguments("<note xmlns:a='b' xmlns:a='c'/>", "an xmlns declares what none may"),
                        arguments(
                                "<" + "x".repeat(99) + "></note>",
                                "<" + "x".repeat(40) + "…> is not closed before </note>"))
                .map(row -> arguments(
                        score((String) row.get()[0]),
                        "the score is damaged at line 6, bar 7 of part P1: " + row.get()[1] + AGAIN));
    }

    static Stream<Arguments> outsideTheBars() {
        String whole = score("");
        return Stream.of(
                arguments(
                        score("<note a='1/>"),
                        "the score is damaged at line 7, bar 7 of part P1: a < stands within a value: a quotation mark is"
                                + " missing, or &lt; is meant" + AGAIN),
                arguments(
                        score("<words>caf&eacute;</words>"),
                        "the score uses entities of its own (&eacute;), which are never expanded (line 6, bar 7 of part"
                                + " P1)" + AGAIN),
                arguments(
                        score("<note a='&nbsp;'/>"),
                        "the score uses entities of its own (&nbsp;), which are never expanded (line 6, bar 7 of part"
                                + " P1)" + AGAIN),
                arguments(
                        score("<a"
                                + IntStream.rangeClosed(0, 500)
                                        .mapToObj(i -> " a" + i + "=''")
                                        .reduce("", String::concat)
                                + "/>"),
                        "the score holds a tag of more than 500 attributes, more than any score needs (line 6, bar 7 of"
                                + " part P1)" + AGAIN),
                arguments(
                        score("<a b='" + "c".repeat(1_100_000) + "'/>"),
                        "the score holds an attribute of more than 1048576 characters, more than any score needs (line"
                                + " 6, bar 7 of part P1)" + AGAIN),
                arguments(
                        score("<a>".repeat(200)),
                        "the score is nested more than 200 elements deep, which no score is (line 6, bar 7 of part P1)"
                                + AGAIN),
                arguments(whole + "<score-partwise/>", damaged(8, "another element follows after the score's end")),
                arguments(whole + "the end", damaged(8, "text follows after the score's end")),
                arguments(whole + "&amp;", damaged(8, "text follows after the score's end")),
                arguments(whole + "<![CDATA[x]]>", damaged(8, "text follows after the score's end")),
                arguments(
                        whole + "</score-partwise>",
                        damaged(8, "a closing tag too many follows after the score's end")),
                arguments(whole + "\u0000", damaged(8, "it holds a control character (code 0), which no text may")),
                arguments(
                        DECLARATION + "hello" + whole.substring(DECLARATION.length()),
                        damaged(2, "something stands before the first tag that does not belong there")),
                arguments(
                        "</score-partwise>",
                        damaged(1, "something stands before the first tag that does not belong there")),
                arguments("\n" + whole, damaged(2, "an <?xml stands where none may: it belongs to the very beginning")),
                arguments(
                        whole.replace("\"1.0\" encoding", "\"3.0\" encoding"),
                        damaged(1, "its first tag, <?xml …?>, is not as XML has it")),
                arguments(
                        whole.replace("version=\"1.0\"", "version=1.0"),
                        damaged(1, "its first tag, <?xml …?>, is not as XML has it")),
                arguments(
                        whole.replace(" version=\"1.0\"", ""),
                        damaged(1, "its first tag, <?xml …?>, is not as XML has it")),
                arguments(
                        whole.replace("?>", " standalone='perhaps'?>"),
                        damaged(1, "its first tag, <?xml …?>, is not as XML has it")),
                arguments(whole.replace("?>", ">"), damaged(1, "its first tag, <?xml …?>, is not as XML has it")),
                arguments(doctype("<!DOCTYPE>"), damaged(2, "'>' stands where a name should begin")),
                arguments(
                        doctype("<!DOCTYPE score-partwise [ rubbish ]>"),
                        damaged(2, "its DOCTYPE is not as XML has it")),
                arguments(doctype("<!DOCTYPE score-partwise PUBLIC>"), damaged(2, "its DOCTYPE is not as XML has it")),
                arguments(
                        doctype("<!DOCTYPE score-partwise PUBLIC '{' 'x'>"),
                        damaged(2, "its DOCTYPE is not as XML has it")),
                arguments(doctype("<!DOCTYPE score-partwise rubbish>"), damaged(2, "its DOCTYPE is not as XML has it")),
                arguments(doctype("<!DOCTYPE x><!DOCTYPE x>"), damaged(2, "its DOCTYPE is not as XML has it")),
                arguments(doctype("<!DOCTIPE x>"), damaged(2, "its DOCTYPE is not as XML has it")),
                arguments(whole + "<!DOCTYPE x>", damaged(8, "its DOCTYPE is not as XML has it")),
                arguments(
                        doctype("<!doctype x>"),
                        damaged(2, "what follows a <! is no comment and nothing else that XML has")),
                arguments(
                        doctype("<!DOCTYPE x [<!ENTITY a SYSTEM 'b'>]>"),
                        "the score declares an entity that lies in another file (line 2); export it again without its own"
                                + " entities"),
                arguments("<?xml version=", "the score breaks off at line 1; export or copy it again"),
                arguments(DECLARATION, "the score breaks off at line 2; export or copy it again"),
                arguments(
                        DECLARATION + "<!-- only this -->", "the score breaks off at line 2; export or copy it again"),
                arguments(
                        DECLARATION + "<opus/>",
                        "this is XML but no MusicXML score: it holds <opus> where a score has <score-partwise> (line 2);"
                                + " export it as MusicXML"));
    }

    @Test
    void tellsWhereATextThatIsCutOffEnds() throws IOException {
        String whole = score("<![CDATA[x]]><!-- x --><?x y?>&amp;&#65;").replace("<measure", "<!-- x --><measure");
        int bar = whole.indexOf("<measure number=\"7\">") + "<measure number=\"7\">".length();
        int end = whole.indexOf("</score-partwise>") + "</score-partwise>".length();
        for (int cut = "<?xml v".length(); cut < end; cut++) {
            String left = whole.substring(0, cut);
            long line = 1 + left.chars().filter(c -> c == '\n').count();
            String inBar =
                    cut >= bar && cut < whole.indexOf("</measure>") + "</measure>".length() ? ", bar 7 of part P1" : "";
            assertThat(refusal(Files.writeString(folder.resolve("cut.musicxml"), left), "strip"))
                    .as(left)
                    .isEqualTo("the score breaks off at line " + line + inBar + "; export or copy it again");
        }
    }

    @Test
    void tellsBytesThatAreNoText() throws IOException {
        byte[] score = score("<words>é \u0001</words>").getBytes(StandardCharsets.UTF_8);
        int place = new String(score, StandardCharsets.ISO_8859_1).indexOf('\u0001');
        score[place] = (byte) 0xC3;
        assertRefused(
                Files.write(folder.resolve("solo.musicxml"), score),
                "line 6 holds bytes that are no UTF-8 text (at byte " + place + "); save the score again as UTF-8");
    }

    @Test
    void speaksTheSameOfACompressedScore() throws IOException {
        assertRefused(
                Files.write(folder.resolve("solo.mxl"), Archives.mxl(score("<note><rest></note>"), false)),
                "the score is damaged at line 6, bar 7 of part P1: <rest> is not closed before </note>" + AGAIN);
    }

    @Test
    void keepsTheParsersWordsForTheTrace() throws IOException {
        Path score = Files.writeString(folder.resolve("solo.musicxml"), score("<note><rest></note>"));
        assertThat(Session.run("annotate", score.toString(), "--trace").err())
                .contains("<rest> is not closed before </note>", "Unexpected close tag </note>; expected </rest>");
    }

    private static void assertRefused(Path score, String sentence) {
        assertThat(refusal(score, "annotate")).isEqualTo(sentence);
        assertThat(refusal(score, "strip")).isEqualTo(sentence);
        assertThat(refusal(score, "check")).isEqualTo(sentence);
    }

    /** What a command says of the score, after the score's name. */
    private static String refusal(Path score, String command) {
        Session session = Session.run(command, score.toString());
        assertThat(session.exit()).as(session.err()).isEqualTo(ExitCode.BAD_INPUT.number());
        assertThat(session.err()).startsWith("fretgloss: " + score + ": ").endsWith("\n");
        return session.err().strip().substring(("fretgloss: " + score + ": ").length());
    }

    private static String damaged(int line, String fault) {
        return "the score is damaged at line " + line + ": " + fault + AGAIN;
    }

    private static String doctype(String doctype) {
        return score("").replaceFirst("<score-partwise>", doctype + "<score-partwise>");
    }

    /** Seven lines: the fifth begins bar 7, the sixth is the one given. */
    private static String score(String sixth) {
        return DECLARATION
                + "<score-partwise>\n<part-list><score-part id=\"P1\"><part-name>Lead</part-name></score-part></part-list>\n"
                + "<part id=\"P1\">\n<measure number=\"7\">\n"
                + sixth + "\n</measure></part></score-partwise>\n";
    }
}
