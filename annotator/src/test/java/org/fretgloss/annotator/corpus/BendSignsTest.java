package org.fretgloss.annotator.corpus;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BendSignsTest {

    @Test
    void countsBySortAndSign() {
        assertThat(BendSigns.of("<bend><bend-alter>2</bend-alter></bend><bend first-beat=\"0\"><bend-alter> -2 "
                        + "</bend-alter><release/></bend><bend><bend-alter>0</bend-alter><release/></bend>"
                        + "<bend><bend-alter>1</bend-alter><pre-bend/></bend><bend/></note>"))
                .isEqualTo("bend + 1, pre-bend + 1, release 0 1, release − 1");
        assertThat(BendSigns.of("<note/>")).isEqualTo("-");
    }
}
