package org.fretgloss.annotator.slips;

import java.util.List;
import java.util.Optional;
import java.util.Random;

/** What is written about the notes, wrongly or not at all. */
final class SheetSlips {

    private SheetSlips() {}

    /** Takes a note away, or makes it twice as long. The first bar may be short, and is left out. */
    static Optional<Slip> barLength(CleanScore score, int note, Random random) {
        NoteText written = score.note(note);
        return score.isWrittenOnce()
                        && written.duration().isPresent()
                        && !written.has("chord")
                        && written.fret().isPresent()
                        && !score.bars().get(note).equals(score.bars().get(0))
                ? Optional.of(Slip.at(
                        score,
                        note,
                        random.nextBoolean()
                                ? new NoteText("")
                                : written.withDuration(2 * written.duration().getAsInt())))
                : Optional.empty();
    }

    /** A note of the home scale or of the chord, under another name. */
    static Optional<Slip> spelling(CleanScore score, int note, Random random) {
        NoteText written = score.note(note);
        return score.isPlain(note) && WrittenChords.of(score).isInside(note, written)
                ? written.respelled().map(other -> Slip.at(score, note, other))
                : Optional.empty();
    }

    /** The head of a lead sheet with something missing, or in another key. */
    static Optional<Slip> leadSheet(CleanScore score, int note, Random random) {
        return switch (random.nextInt(6)) {
            case 0 -> without(score, "<(work-title|movement-title)>.*?</\\1>", "title");
            case 1 -> without(score, "<sound [^>]*tempo[^>]*/>|<metronome\\b.*?</metronome>", "tempo");
            case 2 -> without(score, "<staff-tuning\\b.*?</staff-tuning>", "tuned");
            default -> inAnotherKey(score, random);
        };
    }

    private static Optional<Slip> without(CleanScore score, String pattern, String said) {
        String text = score.text().replaceAll("(?s)" + pattern, "");
        return text.equals(score.text())
                ? Optional.empty()
                : Optional.of(Slip.ofSheet(score, text).saying(said));
    }

    /** A signature in which the home's tonic has neither its major nor its minor scale, nor one between them. */
    private static Optional<Slip> inAnotherKey(CleanScore score, Random random) {
        int fifths = random.nextInt(15) - 7;
        int major = tonic(score);
        boolean between = fifths <= major && fifths >= major - 3;
        return between
                ? Optional.empty()
                : Optional.of(Slip.ofSheet(
                                score,
                                score.text().replaceFirst("<fifths>-?\\d</fifths>", "<fifths>" + fifths + "</fifths>"))
                        .saying("signature"));
    }

    /** Sharps of the major key on the home's tonic, flats counted below 0. */
    private static int tonic(CleanScore score) {
        String name = score.expected().getAsJsonObject("home").get("tonic").getAsString();
        return List.of("F", "C", "G", "D", "A", "E", "B").indexOf(name.substring(0, 1))
                - 1
                + 7 * Long.valueOf(name.chars().filter(c -> c == '♯').count()).intValue()
                - 7 * Long.valueOf(name.chars().filter(c -> c == '♭').count()).intValue();
    }
}
