package org.fretgloss.annotator.read;

import java.util.List;
import java.util.Optional;
import org.fretgloss.annotator.file.NoteScanner;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.neck.StringFret;
import org.fretgloss.neck.Tuning;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Note;

/** Small scores for tests. Durations are in twelfths of a quarter note: 6 is an eighth, 4 a triplet eighth. */
final class Scores {

    static final int DIVISIONS = 12;

    /** A quarter note. */
    static final int QUARTER = DIVISIONS;

    /** Strings in the order in which the schema counts lines: the lowest first. */
    static final String STANDARD_TUNING = tuning("E2", "A2", "D3", "G3", "B3", "E4");

    static final String FOUR_FOUR = "<time><beats>4</beats><beat-type>4</beat-type></time>";

    private Scores() {}

    /** One guitar part on a tablature staff in 4/4; the bars are numbered from 1. */
    static String tablature(String... bars) {
        return partwise(attributes(FOUR_FOUR + tabClef(1) + details("", STANDARD_TUNING)), bars);
    }

    /** One guitar part on a notation staff in 4/4; the bars are numbered from 1. */
    static String notation(String... bars) {
        return partwise(attributes(FOUR_FOUR), bars);
    }

    /** One part; what is given first stands at the start of its first bar. */
    static String partwise(String beginning, String... bars) {
        return score(part("Lead Guitar", beginning, bars));
    }

    /** What stands between the tags of one part, and its name. */
    record PartText(String name, String header, String bars) {}

    static PartText part(String name, String beginning, String... bars) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < bars.length; i++) {
            String content = (i == 0 ? beginning : "") + bars[i];
            text.append(content.contains("<measure") ? content : bar(i + 1, content));
        }
        return new PartText(name, "", text.toString());
    }

    static PartText part(String name, int program, String beginning, String... bars) {
        String header =
                "<score-instrument id=\"I-%s\"><instrument-name/></score-instrument><midi-instrument id=\"I-%s\">"
                                .formatted(name.hashCode(), name.hashCode())
                        + "<midi-program>%d</midi-program></midi-instrument>".formatted(program);
        return new PartText(name, header, part(name, beginning, bars).bars());
    }

    /** A score of parts P1, P2 ... */
    static String score(PartText... parts) {
        StringBuilder list = new StringBuilder();
        StringBuilder bodies = new StringBuilder();
        for (int i = 0; i < parts.length; i++) {
            list.append("<score-part id=\"P%d\"><part-name>%s</part-name>%s</score-part>"
                    .formatted(i + 1, parts[i].name(), parts[i].header()));
            bodies.append("<part id=\"P%d\">%s</part>".formatted(i + 1, parts[i].bars()));
        }
        return "<score-partwise version=\"4.0\"><part-list>" + list + "</part-list>" + bodies + "</score-partwise>";
    }

    static String bar(Object number, String content) {
        return "<measure number=\"%s\">%s</measure>".formatted(number, content);
    }

    static String implicitBar(String number, String content) {
        return "<measure number=\"%s\" implicit=\"yes\">%s</measure>".formatted(number, content);
    }

    static String attributes(String content) {
        return "<attributes><divisions>" + DIVISIONS + "</divisions>" + content + "</attributes>";
    }

    static String tabClef(int staff) {
        return "<clef number=\"%d\"><sign>TAB</sign><line>5</line></clef>".formatted(staff);
    }

    /** Staff details with an attribute such as {@code number="2"}. */
    static String details(String attribute, String content) {
        return "<staff-details " + attribute + ">" + content + "</staff-details>";
    }

    /** Tunings of the staff lines from line 1 on. */
    static String tuning(String... lines) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < lines.length; i++) {
            Pitch open = Pitch.parse(lines[i]);
            text.append(("<staff-tuning line=\"%d\"><tuning-step>%s</tuning-step><tuning-alter>%d</tuning-alter>"
                            + "<tuning-octave>%d</tuning-octave></staff-tuning>")
                    .formatted(i + 1, open.name().step(), open.name().alteration(), open.octave()));
        }
        return text.toString();
    }

    /** A note; the marks are elements that stand inside {@code technical}. */
    static String fretted(int string, int fret, int duration, String... marks) {
        Pitch pitch = Pitch.ofMidi(Tuning.STANDARD.midi(new StringFret(string, fret)));
        return element(pitch(pitch) + length(duration), place(string, fret) + String.join("", marks), "");
    }

    /** A note without string and fret; the marks are elements that stand inside {@code notations}. */
    static String note(String pitch, int duration, String... marks) {
        return element(pitch(Pitch.parse(pitch)) + length(duration), "", String.join("", marks));
    }

    static String grace(int string, int fret, String... marks) {
        Pitch pitch = Pitch.ofMidi(Tuning.STANDARD.midi(new StringFret(string, fret)));
        return element("<grace/>" + pitch(pitch), place(string, fret) + String.join("", marks), "");
    }

    static String rest(int duration) {
        return "<note><rest/>" + length(duration) + "</note>";
    }

    static String wholeBarRest(int duration) {
        return "<note><rest measure=\"yes\"/>" + length(duration) + "</note>";
    }

    static String backup(int duration) {
        return "<backup>" + length(duration) + "</backup>";
    }

    static String forward(int duration) {
        return "<forward>" + length(duration) + "</forward>";
    }

    /** A note element from what stands before its notations, in its technical marks and in its other notations. */
    static String element(String beginning, String technical, String notations) {
        String marks = technical.isEmpty() ? notations : "<technical>" + technical + "</technical>" + notations;
        return "<note>" + beginning + (marks.isEmpty() ? "" : "<notations>" + marks + "</notations>") + "</note>";
    }

    static String pitch(Pitch pitch) {
        return "<pitch><step>%s</step><alter>%d</alter><octave>%d</octave></pitch>"
                .formatted(pitch.name().step(), pitch.name().alteration(), pitch.octave());
    }

    static String length(int duration) {
        return "<duration>" + duration + "</duration>";
    }

    static String place(int string, int fret) {
        return "<string>%d</string><fret>%d</fret>".formatted(string, fret);
    }

    static String bend(String semitones) {
        return "<bend><bend-alter>" + semitones + "</bend-alter></bend>";
    }

    static String preBend(String semitones) {
        return "<bend><bend-alter>" + semitones + "</bend-alter><pre-bend/></bend>";
    }

    static String release(String semitones) {
        return "<bend><bend-alter>" + semitones + "</bend-alter><release/></bend>";
    }

    /** The note as it is, in another staff and voice, tied, or a chord member: by what stands before its notations. */
    static String with(String addition, String note) {
        return note.replaceFirst("(</duration>|(?<=<grace/>)(?=<pitch>))", "$1" + addition);
    }

    /** The note as a further one of a chord. */
    static String inChord(String note) {
        return note.replaceFirst("<note>(<grace/>)?", "<note>$1<chord/>");
    }

    static Reading read(String text) throws ScoreException {
        return ScoreReader.read(NoteScanner.over(text), Optional.empty());
    }

    static Reading read(String text, String part) throws ScoreException {
        return ScoreReader.read(NoteScanner.over(text), Optional.of(part));
    }

    static List<Note> notes(String text) throws ScoreException {
        return read(text).solo().notes();
    }

    /** The only note of a score. */
    static Note only(String text) throws ScoreException {
        List<Note> notes = notes(text);
        if (notes.size() != 1) {
            throw new AssertionError("one note was expected, not " + notes);
        }
        return notes.get(0);
    }

    static List<String> notices(String text) throws ScoreException {
        return read(text).notices().stream().map(Notice::text).toList();
    }
}
