package org.fretgloss.annotator.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The check itself can tell a good output from a bad one. */
class InsertedElementsTest {

    private static final String ORIGINAL = "<score>\n <note>\n  <type>half</type>\n </note>\n</score>\n";

    private static final String LYRIC =
            "\n  <lyric number=\"1\" name=\"fretgloss:box\">\n   <syllabic>single</syllabic>"
                    + "\n   <text>box 1 fr5</text>\n  </lyric>";

    private static String with(String insertion) {
        return ORIGINAL.replace("</type>", "</type>" + insertion);
    }

    @Test
    void namesWhatWasInserted() {
        assertThat(InsertedElements.between(ORIGINAL, with(LYRIC))).containsExactly(LYRIC);
        assertThat(InsertedElements.between(ORIGINAL, with(LYRIC + LYRIC))).containsExactly(LYRIC, LYRIC);
        assertThat(InsertedElements.between(ORIGINAL, ORIGINAL)).isEmpty();
    }

    @Test
    void knowsOurFieldWithAndWithoutItsContainers() {
        String field = "<miscellaneous-field name=\"fretgloss\">{}</miscellaneous-field>";
        String whole = "<identification><miscellaneous>" + field + "</miscellaneous>\n</identification>";

        assertThat(InsertedElements.between("<a/>", "<a/>" + field)).containsExactly(field);
        assertThat(InsertedElements.between("<a/>", "<a/>" + whole)).containsExactly(whole);
    }

    @Test
    void knowsThemWithThePrefixOfTheScore() {
        String lyric =
                LYRIC.replace("</", "</m:").replaceAll("<(?=[a-z])", "<m:").replace("m:m:", "m:");

        assertThat(InsertedElements.between(ORIGINAL, with(lyric))).containsExactly(lyric);
    }

    @Test
    void knowsAnEmptyTagThatWasOpened() {
        String field = "<miscellaneous-field name=\"fretgloss\">{}</miscellaneous-field>";

        assertThat(InsertedElements.between(
                        "<a><miscellaneous /></a>", "<a><miscellaneous >" + field + "</miscellaneous></a>"))
                .hasSize(1);
        assertThatThrownBy(() ->
                        InsertedElements.between("<a><miscellaneous/></a>", "<a><miscellaneous>\n</miscellaneous></a>"))
                .isInstanceOf(AssertionError.class);
    }

    @Test
    void takesWhiteSpaceForTheOriginalsWhereItIs() {
        String lyric = LYRIC.strip();

        assertThat(InsertedElements.between("<b/> </a>", "<b/> " + lyric + "</a>"))
                .containsExactly(lyric);
        assertThat(InsertedElements.between("<b/> </a>", "<b/>" + lyric + " </a>"))
                .containsExactly(lyric);
        assertThatThrownBy(() -> InsertedElements.between("<b/></a>", "<b/>" + lyric + " </a>"))
                .isInstanceOf(AssertionError.class);
    }

    @Test
    void refusesAChangedLetterThatComesAgainInWhatWasInserted() {
        for (int i = 0; i < ORIGINAL.indexOf("</type>"); i++) {
            String changed =
                    new StringBuilder(with(LYRIC)).replace(i, i + 1, "?").toString();

            assertThatThrownBy(() -> InsertedElements.between(ORIGINAL, changed))
                    .isInstanceOf(AssertionError.class);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                " ",
                "<!-- note -->",
                "<lyric number=\"1\"><text>la</text></lyric>",
                "<lyric number=\"1\" name=\"fretgloss:box\"><extend/></lyric>",
                "<lyric number=\"12\" name=\"fretgloss:box\"><syllabic>single</syllabic><text>a</text></lyric>",
                "<miscellaneous-field name=\"other\">{}</miscellaneous-field>"
            })
    void refusesInsertionsThatAreNotOurs(String insertion) {
        assertThatThrownBy(() -> InsertedElements.between(ORIGINAL, with(insertion)))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("⟨here⟩");
    }

    @Test
    void refusesLossesAndChanges() {
        for (int i = 0; i < ORIGINAL.length(); i++) {
            String lacking = new StringBuilder(ORIGINAL).deleteCharAt(i).toString();
            String changed = new StringBuilder(ORIGINAL).replace(i, i + 1, "?").toString();

            assertThatThrownBy(() -> InsertedElements.between(ORIGINAL, lacking))
                    .isInstanceOf(AssertionError.class);
            assertThatThrownBy(() -> InsertedElements.between(ORIGINAL, changed))
                    .isInstanceOf(AssertionError.class);
        }
        assertThatThrownBy(() -> InsertedElements.between(ORIGINAL, ORIGINAL + "\n"))
                .isInstanceOf(AssertionError.class);
    }
}
