package org.fretgloss.annotator.slips;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * One note element as text. It knows nothing of the project's reader: what it changes, it changes as a transcriber's
 * program would write it.
 *
 * @param text the element
 */
record NoteText(String text) {

    private static final String STEPS = "C D EF G A B";
    private static final String LETTERS = "CDEFGAB";
    private static final int[] OPEN = {64, 59, 55, 50, 45, 40};
    private static final Pattern PITCH = Pattern.compile(
            "<pitch>\\s*<step>([A-G])</step>\\s*(?:<alter>(-?\\d)</alter>\\s*)?<octave>(\\d)</octave>\\s*</pitch>");
    private static final Pattern STRING = Pattern.compile("<string>(\\d+)</string>");
    private static final Pattern FRET = Pattern.compile("<fret>(\\d+)</fret>");
    private static final Pattern BEND = Pattern.compile("<bend-alter>(-?\\d+)</bend-alter>");
    private static final Pattern DURATION = Pattern.compile("<duration>(\\d+)</duration>");

    boolean has(String element) {
        return text.contains("<" + element);
    }

    /** Struck by itself, without any sign of playing: neither tied, bent, slurred, grace, chord nor harmonic. */
    boolean isPlain() {
        return fret().isPresent()
                && midi().isPresent()
                && !text.matches("(?s).*<(grace|chord|tie|bend|hammer-on|pull-off|slide|glissando|harmonic|tap|notehead"
                        + "|cue|slur|play|wavy-line|release)\\b.*");
    }

    OptionalInt string() {
        return number(STRING);
    }

    OptionalInt fret() {
        return number(FRET);
    }

    OptionalInt duration() {
        return number(DURATION);
    }

    private OptionalInt number(Pattern pattern) {
        Matcher matcher = pattern.matcher(text);
        return matcher.find() ? OptionalInt.of(Integer.parseInt(matcher.group(1))) : OptionalInt.empty();
    }

    OptionalInt midi() {
        Matcher matcher = PITCH.matcher(text);
        if (!matcher.find()) {
            return OptionalInt.empty();
        }
        int alter = Optional.ofNullable(matcher.group(2)).map(Integer::parseInt).orElse(0);
        return OptionalInt.of(12 * (Integer.parseInt(matcher.group(3)) + 1) + STEPS.indexOf(matcher.group(1)) + alter);
    }

    /** What is heard: the peak of a bend, as a MIDI number; none of a dead note. */
    OptionalInt heard() {
        int bend = BEND.matcher(text)
                .results()
                .mapToInt(height -> Integer.parseInt(height.group(1)))
                .max()
                .orElse(0);
        return has("notehead") || midi().isEmpty()
                ? OptionalInt.empty()
                : OptionalInt.of(midi().getAsInt() + Math.max(0, bend));
    }

    /** Semitones of a natural above C. */
    static int chroma(String step) {
        return STEPS.indexOf(step);
    }

    /** The same sound named after the next letter, up or down; none where that takes a double accidental. */
    Optional<NoteText> respelled() {
        Matcher pitch = PITCH.matcher(text);
        if (!pitch.find()) {
            return Optional.empty();
        }
        int place = LETTERS.indexOf(pitch.group(1)) + 7 * Integer.parseInt(pitch.group(3));
        int midi = midi().orElseThrow();
        return Stream.of(place + 1, place - 1)
                .filter(other -> Math.abs(midi - natural(other)) <= 1)
                .map(other -> new NoteText(PITCH.matcher(text)
                        .replaceFirst(pitch(LETTERS.charAt(other % 7), midi - natural(other), other / 7))))
                .findFirst();
    }

    private static int natural(int place) {
        return 12 * (place / 7 + 1) + STEPS.indexOf(LETTERS.charAt(place % 7));
    }

    private static String pitch(char step, int alter, int octave) {
        return "<pitch><step>" + step + "</step>" + (alter == 0 ? "" : "<alter>" + alter + "</alter>") + "<octave>"
                + octave + "</octave></pitch>";
    }

    NoteText withFret(int fret) {
        return new NoteText(FRET.matcher(text).replaceFirst("<fret>" + fret + "</fret>"));
    }

    NoteText withString(int string) {
        return new NoteText(STRING.matcher(text).replaceFirst("<string>" + string + "</string>"));
    }

    NoteText withDuration(int duration) {
        return new NoteText(DURATION.matcher(text).replaceFirst("<duration>" + duration + "</duration>"));
    }

    /** Moved by semitones, written with a sharp where one is needed. */
    NoteText transposed(int semitones) {
        int midi = midi().orElseThrow() + semitones;
        int chroma = Math.floorMod(midi, 12);
        boolean black = STEPS.charAt(chroma) == ' ';
        return new NoteText(PITCH.matcher(text)
                .replaceFirst(pitch(STEPS.charAt(black ? chroma - 1 : chroma), black ? 1 : 0, midi / 12 - 1)));
    }

    /** A sign among those of playing, after string and fret. */
    NoteText withTechnical(String sign) {
        return new NoteText(text.replaceFirst("</technical>", sign + "</technical>"));
    }

    NoteText withTie(String type) {
        return new NoteText(DURATION.matcher(text).replaceFirst("$0<tie type=\"" + type + "\"/>"));
    }

    NoteText withoutTies() {
        return new NoteText(text.replaceAll("<tied? [^>]*/>", ""));
    }

    /** The same note as a further one of its chord. */
    NoteText asChordMember() {
        return new NoteText(text.replaceFirst("<pitch>", "<chord/><pitch>"));
    }

    /** The fret at which another string of a guitar in standard tuning sounds the same. */
    OptionalInt fretOnString(int other) {
        if (other < 1 || other > OPEN.length || string().isEmpty() || string().getAsInt() > OPEN.length) {
            return OptionalInt.empty();
        }
        int fret = fret().orElseThrow() + OPEN[string().getAsInt() - 1] - OPEN[other - 1];
        return fret >= 1 && fret <= 22 ? OptionalInt.of(fret) : OptionalInt.empty();
    }
}
