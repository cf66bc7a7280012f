package org.fretgloss.annotator.cli;

import java.util.List;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.fretgloss.neck.StringFret;
import org.fretgloss.neck.Tuning;
import org.fretgloss.pitch.Pitch;

/**
 * Scores in 4/4 whose music is unlike a solo, with string and fret or without.
 *
 * @param tuning how the guitar is tuned
 * @param frets whether the score says where the notes are played
 */
record OddScore(Tuning tuning, boolean frets) {

    private static final int DIVISIONS = 4;
    private static final int BAR = 4 * DIVISIONS;
    private static final int TOP = 5;

    /** Frets up and down a string. */
    private static final List<Integer> WAVE = List.of(5, 8, 5, 7);

    String oneNote() {
        return bars(List.of(note(3, 7, BAR)));
    }

    String restsOnly() {
        return bars(List.of(rest(BAR), rest(BAR)));
    }

    String oneNoteOverAndOver() {
        return bars(
                IntStream.range(0, 8).mapToObj(bar -> note(3, 7, 2).repeat(8)).toList());
    }

    /** Each voice a whole bar behind the others' backs. */
    String voices(int count) {
        StringJoiner voices = new StringJoiner("<backup><duration>" + BAR + "</duration></backup>");
        for (int voice = 0; voice < count; voice++) {
            String note = note(1 + voice % tuning.size(), TOP + voice, BAR);
            voices.add(note.replace("</duration>", "</duration><voice>" + (voice + 1) + "</voice>"));
        }
        return bars(List.of(voices.toString()));
    }

    String notesInOneBar(int count) {
        return bars(List.of(IntStream.range(0, count)
                .mapToObj(i -> note(1 + i / 3 % 4, WAVE.get(i % WAVE.size()), 1))
                .collect(Collectors.joining())));
    }

    /** Twelve frets of a string one after the other, each struck with a neighbouring semitone. */
    String chromaticClusters() {
        String bar = IntStream.range(0, 4)
                .mapToObj(i ->
                        note(3, 5 + i, DIVISIONS) + note(2, 2 + i, DIVISIONS).replaceFirst("<note>", "<note><chord/>"))
                .collect(Collectors.joining());
        String further =
                IntStream.range(4, 12).mapToObj(i -> note(3, i, DIVISIONS / 2)).collect(Collectors.joining());
        return bars(List.of(bar, further, bar, further));
    }

    String chordOnEveryNote() {
        List<String> roots = List.of("A", "D", "E", "G");
        return bars(IntStream.range(0, 4)
                .mapToObj(bar -> IntStream.range(0, 4)
                        .mapToObj(i -> "<harmony><root><root-step>" + roots.get((bar + i) % 4)
                                + "</root-step></root><kind>dominant</kind></harmony>"
                                + note(2, 5 + bar + i, DIVISIONS))
                        .collect(Collectors.joining()))
                .toList());
    }

    /** Four bars of box 1 in A. */
    String plainSolo() {
        return bars(IntStream.range(0, 4)
                .mapToObj(bar -> note(3, 5, 4) + note(3, 7, 4) + note(2, 5, 4) + note(2, 8, 4))
                .toList());
    }

    private String note(int string, int fret, int duration) {
        Pitch pitch = Pitch.ofMidi(tuning.midi(new StringFret(string, fret)));
        String place = frets
                ? "<notations><technical><string>" + string + "</string><fret>" + fret
                        + "</fret></technical></notations>"
                : "";
        return "<note><pitch><step>" + pitch.name().step() + "</step><alter>"
                + pitch.name().alteration() + "</alter><octave>" + pitch.octave() + "</octave></pitch><duration>"
                + duration + "</duration>" + place + "</note>";
    }

    private static String rest(int duration) {
        return "<note><rest/><duration>" + duration + "</duration></note>";
    }

    private String bars(List<String> contents) {
        StringBuilder bars = new StringBuilder();
        for (int i = 0; i < contents.size(); i++) {
            bars.append("<measure number=\"").append(i + 1).append("\">");
            bars.append(i == 0 ? attributes() : "").append(contents.get(i)).append("</measure>");
        }
        return "<score-partwise version=\"4.0\"><part-list><score-part id=\"P1\"><part-name>Guitar</part-name>"
                + "</score-part></part-list><part id=\"P1\">" + bars + "</part></score-partwise>";
    }

    private String attributes() {
        StringBuilder lines = new StringBuilder();
        for (int line = 1; line <= tuning.size(); line++) {
            Pitch open = Pitch.ofMidi(tuning.openMidi(tuning.size() + 1 - line));
            lines.append("<staff-tuning line=\"").append(line).append("\"><tuning-step>");
            lines.append(open.name().step()).append("</tuning-step><tuning-alter>");
            lines.append(open.name().alteration()).append("</tuning-alter><tuning-octave>");
            lines.append(open.octave()).append("</tuning-octave></staff-tuning>");
        }
        return "<attributes><divisions>" + DIVISIONS
                + "</divisions><time><beats>4</beats><beat-type>4</beat-type></time>"
                + (frets ? "<clef><sign>TAB</sign><line>5</line></clef>" : "")
                + "<staff-details><staff-lines>" + (frets ? tuning.size() : 5) + "</staff-lines>" + lines
                + "</staff-details></attributes>";
    }
}
