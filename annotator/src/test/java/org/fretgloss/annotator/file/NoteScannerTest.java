package org.fretgloss.annotator.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalInt;
import javax.xml.stream.XMLStreamReader;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NoteScannerTest {

    private static final String NOTE =
            "<note><pitch><step>A</step><octave>4</octave></pitch><duration>1</duration></note>";

    @ParameterizedTest
    @DisplayName("a note's offset is that of its <note, whatever stands before it")
    @ValueSource(
            strings = {
                "",
                "\n",
                "\r\n  ",
                "\r  ",
                "<!-- <note/> -->",
                "<?keep <note/> ?>",
                "<direction><direction-type><words>&amp;&lt;&#x266D;&#10;</words></direction-type></direction>",
                "<direction><direction-type><words>\uD834\uDD1E \u266D \u00E9</words></direction-type></direction>",
                "<direction><direction-type><words><![CDATA[<note>\r\n]]></words></direction-type></direction>"
            })
    void offsetsAreRaw(String before) throws ScoreException {
        String text = ScoreTexts.partwise((before + NOTE).repeat(3000));

        ScoreScan scan = ScoreScan.of(text);

        assertThat(scan.notes()).hasSize(3000).allSatisfy(note -> {
            assertThat(text.substring(note.start(), note.start() + NOTE.length()))
                    .isEqualTo(NOTE);
            assertThat(text.startsWith("</note>", note.lyricOffset())).isTrue();
        });
    }

    @Test
    @DisplayName("a lyric goes after the last child, but before play and listen")
    void lyricOffset() throws ScoreException {
        assertThat(lyricGoesAt("<note><rest/>|</note>")).isTrue();
        assertThat(lyricGoesAt("<note>\n <rest/>\n <staff>1</staff>|\n</note>")).isTrue();
        assertThat(lyricGoesAt("<note><rest/><lyric><text>la</text></lyric>|</note>"))
                .isTrue();
        assertThat(lyricGoesAt("<note><rest/>| <play/></note>")).isTrue();
        assertThat(lyricGoesAt("<note><rest/>|<listen/><play/></note>")).isTrue();
        assertThat(lyricGoesAt("<note><rest/>|<!-- after --></note>")).isTrue();
        assertThat(lyricGoesAt("<note><!-- first --><rest/>|<?keep this?> </note>"))
                .isTrue();
        assertThat(lyricGoesAt("<note>|<!-- alone --></note>")).isTrue();
        assertThat(lyricGoesAt("<note>|<play/></note>")).isTrue();
        assertThat(lyricGoesAt("<note/>|")).isTrue();
    }

    /** Whether the lyric's place is where the bar stands. */
    private static boolean lyricGoesAt(String marked) throws ScoreException {
        int expected = ScoreTexts.partwise(marked).indexOf('|');
        String text = ScoreTexts.partwise(marked.replace("|", ""));
        return ScoreScan.of(text).note(1).lyricOffset() == expected;
    }

    @Test
    @DisplayName("only notes of the music count, in every part, in scores by part and by measure")
    void counting() throws ScoreException {
        String partwise = "<score-partwise><part-list><note/></part-list>"
                + "<part id='P1'><measure number='1'><note/><x><note/></x><note><note/></note></measure></part>"
                + "<part id='P2'><measure number='1'><note/></measure><note/></part></score-partwise>";
        String timewise = "<score-timewise><measure number='1'><part id='P1'><note/></part><part id='P2'><note/></part>"
                + "</measure></score-timewise>";

        assertThat(ScoreScan.of(partwise).notes()).extracting(NoteSite::part).containsExactly("P1", "P1", "P2");
        assertThat(ScoreScan.of(partwise).notes()).extracting(NoteSite::ordinal).containsExactly(1, 2, 3);
        assertThat(ScoreScan.of(timewise).notes()).extracting(NoteSite::part).containsExactly("P1", "P2");
    }

    @Test
    @DisplayName("lyrics are remembered with their digit; ours with line and text")
    void lyrics() throws ScoreException {
        String text = ScoreTexts.partwise("<note><rest/><lyric><text>la</text></lyric>"
                + "<lyric number='12'><text>la</text></lyric><lyric number='part2verse1'/>"
                + "<lyric number=' 3 ' name='fretgloss:moves'><syllabic>single</syllabic><text>full&#x20;<![CDATA[4]]>→5</text>"
                + "</lyric></note>");

        assertThat(ScoreScan.of(text).lyrics())
                .extracting(LyricSite::digit)
                .containsExactly(OptionalInt.of(1), OptionalInt.empty(), OptionalInt.empty(), OptionalInt.of(3));
        assertThat(ScoreScan.of(text).ours()).singleElement().satisfies(ours -> {
            assertThat(ours.ourLine()).isEqualTo(Optional.of("moves"));
            assertThat(ours.text()).isEqualTo("full 4→5");
            assertThat(text.substring(ours.start(), ours.end()))
                    .startsWith("<lyric number=' 3 '")
                    .endsWith("</lyric>");
        });
    }

    @Test
    @DisplayName("the ordinal follows the events, names are interned, a namespace is taken off")
    void reader() throws Exception {
        NoteScanner scanner = NoteScanner.over("<m:score-partwise xmlns:m='urn:m' xmlns:o='urn:o'><m:part><m:measure>"
                + "<m:note/><o:note/><m:note/></m:measure></m:part></m:score-partwise>");
        XMLStreamReader reader = scanner.reader();

        int notes = 0;
        while (reader.hasNext()) {
            if (reader.next() == XMLStreamReader.START_ELEMENT
                    && reader.getLocalName().equals("note")) {
                notes += reader.getNamespaceURI().isEmpty() ? 1 : 0;
                assertThat(scanner.ordinal()).isEqualTo(notes);
                assertThat(reader.getLocalName()).isSameAs("note");
            }
        }

        assertThat(scanner.scan().notes()).hasSize(2);
        assertThat(scanner.scan().prefix()).isEqualTo("m:");
    }

    @Test
    @DisplayName("the head: where an identification may go, and what is there")
    void header() throws ScoreException {
        String bare = "<score-partwise><part-list/></score-partwise>";
        String titled = "<score-partwise><work/><movement-title>T</movement-title><part-list/></score-partwise>";
        String full = "<score-partwise><identification><rights/><miscellaneous>"
                + "<miscellaneous-field name='a'>b</miscellaneous-field>"
                + "<miscellaneous-field name='fretgloss'>ours &amp; more</miscellaneous-field>"
                + "</miscellaneous></identification></score-partwise>";

        assertThat(bare.substring(ScoreScan.of(bare).header().identificationOffset()))
                .startsWith("<part-list");
        assertThat(titled.substring(ScoreScan.of(titled).header().identificationOffset()))
                .startsWith("<part-list");
        Header header = ScoreScan.of(full).header();
        assertThat(header.fields()).extracting(Header.Field::text).containsExactly("ours & more");
        ElementSite miscellaneous = header.miscellaneous().orElseThrow();
        assertThat(full.substring(miscellaneous.start(), miscellaneous.end()))
                .startsWith("<miscellaneous>")
                .endsWith("</miscellaneous>");
        assertThat(full.substring(miscellaneous.contentEnd())).startsWith("</miscellaneous></identification>");
    }
}
