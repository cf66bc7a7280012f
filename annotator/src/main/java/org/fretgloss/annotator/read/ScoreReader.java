package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.audiveris.proxymusic.Note;
import org.fretgloss.annotator.file.NoteScanner;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.neck.Tuning;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Solo;

/** From the text of a score to the solo in it. */
public final class ScoreReader {

    /** A part as far as it must be read to tell whether it is the solo. */
    private record Candidate(Timeline timeline, List<Bar> bars, List<NoteElement> elements, Notices notices) {

        PartProfile profile() {
            return PartProfile.of(timeline.source(), elements);
        }
    }

    private final ParsedScore score;
    private final List<Timeline> timelines = new ArrayList<>();
    private final List<Notices> noticesByPart = new ArrayList<>();

    private ScoreReader(ParsedScore score) {
        this.score = score;
    }

    /**
     * Reads a score.
     *
     * @param wanted the solo's part by identifier, name or number from 1; none leaves the choice to the reader
     * @throws ScoreException if the text is no score, holds no notes, or has lengths that cannot be understood
     */
    public static Reading read(ScoreFile file, Optional<String> wanted) throws ScoreException {
        return read(NoteScanner.over(file.text()), wanted);
    }

    /**
     * Reads a score in the same pass in which a scanner records where its notes stand.
     *
     * @param scanner at the beginning of the score; read to the end of it afterwards
     * @param wanted the solo's part by identifier, name or number from 1; none leaves the choice to the reader
     * @throws ScoreException if the text is no score, holds no notes, or has lengths that cannot be understood
     */
    public static Reading read(NoteScanner scanner, Optional<String> wanted) throws ScoreException {
        ParsedScore score = ScoreParser.parse(scanner);
        try {
            return new ScoreReader(score).read(wanted);
        } catch (ArithmeticException e) {
            throw new ScoreException("the note lengths are too fine to be counted: export the score again", e);
        }
    }

    private Reading read(Optional<String> wanted) throws ScoreException {
        for (PartSource source : score.parts()) {
            Notices notices = new Notices();
            noticesByPart.add(notices);
            timelines.add(TimelineReader.read(source, notices));
        }
        List<Candidate> candidates = new ArrayList<>();
        for (Timeline timeline : timelines) {
            if (!timeline.measures().isEmpty()) {
                candidates.add(candidate(timeline));
            }
        }
        Notices notices = new Notices();
        PartSource chosen =
                PartChoice.choose(candidates.stream().map(Candidate::profile).toList(), wanted, notices);
        Candidate solo = candidates.stream()
                .filter(candidate -> candidate.timeline().source().place() == chosen.place())
                .findFirst()
                .orElseThrow();
        notices.addAll(solo.notices());
        return reading(solo, notices);
    }

    private Candidate candidate(Timeline timeline) throws ScoreException {
        Notices notices = noticesByPart.get(timeline.source().place());
        List<Bar> bars = BarRuler.bars(timeline, timelines);
        List<NoteElement> elements =
                HarmonicChords.joined(ElementReader.read(timeline, bars, score.ordinals(), notices));
        return new Candidate(timeline, bars, elements, notices);
    }

    private Reading reading(Candidate part, Notices notices) {
        Staves staves = Staves.of(part.timeline());
        List<Stroke> strokes = StaffPairing.pair(TieMerger.merge(part.elements(), staves::isTablature), staves);
        Tuning tuning = TuningReader.read(staves, strokes, notices);
        List<Sounding> sounding = GraceBends.moved(PitchReader.read(strokes, tuning, notices));
        Solo solo = new Solo(
                score.title(),
                part.timeline().source().part(),
                tuning,
                part.bars(),
                NoteAssembler.notes(sounding, notices),
                ChordMarks.read(part.timeline(), timelines, part.bars(), notices),
                Tempos.read(timelines, part.bars()));
        Map<Integer, Integer> carriers = Carriers.of(sounding, part.elements(), staves, notices);
        return new Reading(
                solo,
                carriers,
                ordinals(part.timeline()),
                notices.list(),
                score.parts().stream().map(PartSource::part).toList());
    }

    private Set<Integer> ordinals(Timeline part) {
        return part.notes().stream().map(PlacedNote::note).map(this::ordinal).collect(Collectors.toSet());
    }

    private int ordinal(Note note) {
        return score.ordinals().getOrDefault(note, 0);
    }
}
