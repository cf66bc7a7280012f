package org.fretgloss.annotator.slips;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;

/** A chord symbol with another root or of another kind, against which every note of two of its bars stands. */
final class ChordSlip {

    private static final List<String> KINDS = List.of("major", "minor", "dominant", "minor-seventh", "major-seventh");
    private static final List<String> STEPS = List.of("C", "D", "E", "F", "G", "A", "B");

    /** Over fewer notes the ear has no reason to doubt the chord. */
    private static final int ENOUGH_NOTES = 5;

    private ChordSlip() {}

    /** At the symbol in force at a note. */
    static Optional<Slip> plant(CleanScore score, int note, Random random) {
        List<ScoreTimes.Symbol> symbols = score.times().symbols();
        long onset = score.times().onsets().get(note);
        int place =
                (int) symbols.stream().filter(symbol -> symbol.onset() <= onset).count() - 1;
        if (place < 0
                || !score.isWrittenOnce()
                || score.text().indexOf("<part id") != score.text().lastIndexOf("<part id")) {
            return Optional.empty();
        }
        String step = STEPS.get(random.nextInt(STEPS.size()));
        int alter = random.nextInt(3) - 1;
        String kind = KINDS.get(random.nextInt(KINDS.size()));
        Set<Integer> tones = WrittenChords.tones(NoteText.chroma(step) + alter, kind);
        long from = symbols.get(place).onset();
        long to = place + 1 < symbols.size() ? symbols.get(place + 1).onset() : Long.MAX_VALUE;
        return isFought(score, from, to, tones)
                ? Optional.of(written(score, symbols.get(place), step, alter, kind))
                : Optional.empty();
    }

    private static Slip written(CleanScore score, ScoreTimes.Symbol symbol, String step, int alter, String kind) {
        String other = symbol.at()
                .group()
                .replaceFirst(
                        "(?s)<root>.*</root>",
                        "<root><root-step>" + step + "</root-step><root-alter>" + alter + "</root-alter></root>")
                .replaceFirst("<kind[^>]*>[^<]*</kind>", "<kind>" + kind + "</kind>");
        String text = score.text().substring(0, symbol.at().start())
                + other
                + score.text().substring(symbol.at().end());
        return Slip.ofSheet(score, text).saying("looks like a slip");
    }

    /** Whether the notes of two whole bars between the moments all stand against the chord. */
    private static boolean isFought(CleanScore score, long from, long to, Set<Integer> tones) {
        List<ScoreTimes.Bar> bars = score.times().bars();
        return IntStream.range(0, Math.max(0, bars.size() - 2))
                .filter(bar ->
                        bars.get(bar).start() >= from && bars.get(bar + 2).start() <= to)
                .anyMatch(bar ->
                        fights(score, bars.get(bar).start(), bars.get(bar + 2).start(), tones));
    }

    private static boolean fights(CleanScore score, long from, long to, Set<Integer> tones) {
        List<NoteText> notes = IntStream.range(0, score.notes().size())
                .filter(note -> score.times().onsets().get(note) >= from
                        && score.times().onsets().get(note) < to)
                .mapToObj(score::note)
                .filter(note -> note.heard().isPresent() && !note.has("grace") && !note.has("tie type=\"stop\""))
                .toList();
        return notes.size() >= ENOUGH_NOTES
                && notes.stream()
                        .noneMatch(note ->
                                tones.contains(Math.floorMod(note.heard().getAsInt(), 12)));
    }
}
