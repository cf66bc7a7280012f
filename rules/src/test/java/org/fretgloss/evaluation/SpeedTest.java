package org.fretgloss.evaluation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** That the table has its rows, and that what is timed is what the table says; no time is judged. */
class SpeedTest {

    @Test
    void eachLengthHasARowWithRestsAndOneWithout() {
        List<String> rows = new Speed().table(List.of(40, 80)).toList();
        assertThat(rows)
                .hasSize(6)
                .allSatisfy(row -> assertThat(row.chars().filter(c -> c == '|')).hasSize(9));
        assertThat(rows.subList(2, 6)).element(3).asString().startsWith("| 80, no rest | ");
    }

    @ParameterizedTest
    @CsvSource({"100, true", "100, false", "1000, true"})
    void aLongSoloHasAboutSoManyNotesAllFrettedAndRestsOnlyWhereAsked(int notes, boolean rests) {
        Solo solo = LongSolo.of(notes, rests);
        assertThat(solo.notes()).hasSizeBetween(notes, notes * 11 / 10);
        assertThat(solo.notes()).allMatch(note -> note.at().isPresent());
        boolean anyRest = solo.notes().stream()
                .skip(1)
                .anyMatch(note ->
                        note.onset().isMoreThan(solo.before(note).map(Note::end).orElseThrow()));
        assertThat(anyRest).isEqualTo(rests);
    }
}
