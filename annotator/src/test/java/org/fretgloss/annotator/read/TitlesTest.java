package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.notation;
import static org.fretgloss.annotator.read.Scores.note;
import static org.fretgloss.annotator.read.Scores.read;

import org.fretgloss.annotator.file.ScoreException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TitlesTest {

    @ParameterizedTest
    @CsvSource({
        "<work><work-title> Slow Tram </work-title></work>, Slow Tram",
        "<movement-title>Second Chorus</movement-title>, Second Chorus",
        "<work><work-title>Slow Tram</work-title></work><movement-title>Second Chorus</movement-title>, Slow Tram",
        "<work><work-title/></work><movement-title>Second Chorus</movement-title>, Second Chorus",
        "<work/>, ''",
        "'', ''"
    })
    void areTheWorksOrElseTheMovements(String header, String title) throws ScoreException {
        String score = notation(note("A4", QUARTER)).replace("<part-list>", header + "<part-list>");
        assertThat(read(score).solo().title()).isEqualTo(title);
    }
}
