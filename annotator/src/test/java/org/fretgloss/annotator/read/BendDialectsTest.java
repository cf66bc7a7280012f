package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.bend;
import static org.fretgloss.annotator.read.Scores.fretted;
import static org.fretgloss.annotator.read.Scores.part;
import static org.fretgloss.annotator.read.Scores.release;
import static org.fretgloss.annotator.read.Scores.score;
import static org.fretgloss.annotator.read.Scores.tablature;

import org.fretgloss.annotator.file.ScoreException;
import org.junit.jupiter.api.Test;

class BendDialectsTest {

    private static final String MOVEMENTS = fretted(2, 8, QUARTER, bend("2"), release("-2"));
    private static final String HEIGHTS = fretted(2, 8, QUARTER, bend("2"), release("0"));

    @Test
    void areToldForEachStaffThatBends() throws ScoreException {
        assertThat(BendDialects.of(tablature(MOVEMENTS))).isEqualTo("P1 staff 1 movements");
        assertThat(BendDialects.of(tablature(HEIGHTS))).isEqualTo("P1 staff 1 heights");
        assertThat(BendDialects.of(score(part("A", "", MOVEMENTS), part("B", "", HEIGHTS))))
                .isEqualTo("P1 staff 1 movements, P2 staff 1 heights");
    }

    @Test
    void areNoneWhereNothingIsBent() throws ScoreException {
        assertThat(BendDialects.of(tablature(fretted(2, 8, QUARTER)))).isEqualTo("-");
    }
}
