package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.fretted;
import static org.fretgloss.annotator.read.Scores.grace;
import static org.fretgloss.annotator.read.Scores.inChord;
import static org.fretgloss.annotator.read.Scores.notation;
import static org.fretgloss.annotator.read.Scores.note;
import static org.fretgloss.annotator.read.Scores.notes;
import static org.fretgloss.annotator.read.Scores.only;
import static org.fretgloss.annotator.read.Scores.rest;
import static org.fretgloss.annotator.read.Scores.tablature;

import java.util.List;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.solo.Attack;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Technique;
import org.junit.jupiter.api.Test;

/** How notes are begun: that the direction of pitch tells a hammer-on from a pull-off is common practice, no source. */
class AttacksTest {

    private static final String HAMMER = "<hammer-on type=\"start\">H</hammer-on>";
    private static final String HAMMERED = "<hammer-on type=\"stop\"/>";
    private static final String PULL = "<pull-off type=\"start\">P</pull-off>";
    private static final String PULLED = "<pull-off type=\"stop\"/>";

    @Test
    void hammersUpAndPullsDown() throws ScoreException {
        assertThat(attacks(tablature(fretted(2, 5, QUARTER, HAMMER)
                        + fretted(2, 8, QUARTER, HAMMERED, PULL)
                        + fretted(2, 5, QUARTER, PULLED))))
                .containsExactly(Attack.PICKED, Attack.HAMMERED_ON, Attack.PULLED_OFF);
    }

    @Test
    void believesThePitchAndNotTheName() throws ScoreException {
        assertThat(attacks(tablature(fretted(2, 8, QUARTER, HAMMER) + fretted(2, 5, QUARTER, HAMMERED))))
                .containsExactly(Attack.PICKED, Attack.PULLED_OFF);
    }

    @Test
    void pairsByStringAndNotByNumber() throws ScoreException {
        String bar = fretted(2, 5, QUARTER, HAMMER)
                + inChord(fretted(3, 7, QUARTER, PULL))
                + fretted(3, 5, QUARTER, HAMMERED)
                + inChord(fretted(2, 8, QUARTER, HAMMERED))
                + fretted(1, 5, QUARTER);
        assertThat(notes(tablature(bar)))
                .extracting(note -> note.at().orElseThrow() + " " + note.attack())
                .containsExactly("3/7 PICKED", "2/5 PICKED", "3/5 PULLED_OFF", "2/8 HAMMERED_ON", "1/5 PICKED");
    }

    @Test
    void needsNoStopOnANoteThatFollowsAtOnce() throws ScoreException {
        assertThat(attacks(tablature(fretted(2, 5, QUARTER, HAMMER) + fretted(2, 8, QUARTER))))
                .containsExactly(Attack.PICKED, Attack.HAMMERED_ON);
        assertThat(attacks(tablature(fretted(2, 5, QUARTER, HAMMER) + rest(QUARTER) + fretted(2, 8, QUARTER))))
                .containsExactly(Attack.PICKED, Attack.PICKED);
    }

    @Test
    void leadsFromAGraceNote() throws ScoreException {
        assertThat(attacks(tablature(grace(2, 5, HAMMER) + fretted(2, 8, QUARTER, HAMMERED))))
                .containsExactly(Attack.PICKED, Attack.HAMMERED_ON);
    }

    @Test
    void followsTheVoiceWhereNoFretsStand() throws ScoreException {
        String bar = technical("A4", HAMMER) + technical("C5", HAMMERED + PULL) + technical("A4", PULLED);
        assertThat(attacks(notation(bar))).containsExactly(Attack.PICKED, Attack.HAMMERED_ON, Attack.PULLED_OFF);
    }

    @Test
    void slidesAlongAString() throws ScoreException {
        List<Note> notes =
                notes(tablature(slide("start", fretted(3, 5, QUARTER)) + slide("stop", fretted(3, 7, QUARTER))));
        assertThat(notes).extracting(Note::attack).containsExactly(Attack.PICKED, Attack.SLID);
        assertThat(notes).allMatch(note -> note.techniques().isEmpty());
    }

    @Test
    void slidesDoubleStopsToneByTone() throws ScoreException {
        String start = "<slide type=\"start\"/>";
        String stop = "<slide type=\"stop\"/>";
        String bar = note("A4", QUARTER, start)
                + inChord(note("C5", QUARTER, start))
                + note("B4", QUARTER, stop)
                + inChord(note("D5", QUARTER, stop));
        assertThat(attacks(notation(bar))).containsExactly(Attack.PICKED, Attack.PICKED, Attack.SLID, Attack.SLID);
        assertThat(notes(notation(bar))).allMatch(note -> note.techniques().isEmpty());
    }

    @Test
    void readsGlissandiAsSlides() throws ScoreException {
        String from = note("A4", QUARTER, "<glissando type=\"start\" number=\"1\"/>");
        String to = note("C5", QUARTER, "<glissando type=\"stop\" number=\"1\"/>");
        assertThat(attacks(notation(from + to))).containsExactly(Attack.PICKED, Attack.SLID);
    }

    @Test
    void readsALoneSlideAsComingFromOrGoingNowhere() throws ScoreException {
        Note in = only(tablature(slide("stop", fretted(3, 7, QUARTER))));
        assertThat(in.techniques()).containsExactly(Technique.SLIDE_IN);
        assertThat(in.attack()).isEqualTo(Attack.PICKED);
        List<Note> across =
                notes(tablature(slide("start", fretted(3, 5, QUARTER)) + slide("stop", fretted(2, 7, QUARTER))));
        assertThat(across.get(0).techniques()).containsExactly(Technique.SLIDE_OUT);
        assertThat(across.get(1).techniques()).containsExactly(Technique.SLIDE_IN);
        List<Note> out = notes(tablature(slide("start", fretted(3, 5, QUARTER)) + fretted(3, 7, QUARTER)));
        assertThat(out.get(0).techniques()).containsExactly(Technique.SLIDE_OUT);
        assertThat(out.get(1).attack()).isEqualTo(Attack.PICKED);
    }

    @Test
    void knowsTaps() throws ScoreException {
        assertThat(only(tablature(fretted(1, 12, QUARTER, "<tap/>"))).attack()).isEqualTo(Attack.TAPPED);
        assertThat(only(tablature(fretted(1, 12, QUARTER, "<other-technical>T</other-technical>")))
                        .attack())
                .isEqualTo(Attack.TAPPED);
    }

    private static List<Attack> attacks(String score) throws ScoreException {
        return notes(score).stream().map(Note::attack).toList();
    }

    private static String technical(String pitch, String marks) {
        return note(pitch, QUARTER, "<technical>" + marks + "</technical>");
    }

    private static String slide(String type, String note) {
        return note.replace("</notations>", "<slide type=\"" + type + "\"/></notations>");
    }
}
