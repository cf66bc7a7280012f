package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.fretgloss.annotator.file.NoteScanner;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.solo.Solo;

/** From the text of a score to the solo in it. */
public final class ScoreReader {

    private ScoreReader() {}

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
            return read(score, wanted);
        } catch (ArithmeticException e) {
            throw new ScoreException("the note lengths are too fine to be counted; export the score again", e);
        }
    }

    private static Reading read(ParsedScore score, Optional<String> wanted) throws ScoreException {
        List<Notices> noticesByPart =
                score.parts().stream().map(part -> new Notices()).toList();
        List<Timeline> timelines = new ArrayList<>();
        for (PartSource source : score.parts()) {
            timelines.add(TimelineReader.read(source, noticesByPart.get(source.place())));
        }
        SharedBars shared = SharedBars.of(timelines);
        List<PartReading> parts = new ArrayList<>();
        for (Timeline timeline : timelines) {
            Notices notices = noticesByPart.get(timeline.source().place());
            parts.add(PartReading.of(timeline, shared, score, notices));
        }
        Notices notices = new Notices();
        List<PartProfile> profiles = profiles(PartPairing.joined(parts));
        PartReading chosen = PartChoice.choose(profiles, wanted, notices);
        if (chosen.sources().size() > 1) {
            notices.say(chosen.sources().stream().map(PartSource::label).collect(Collectors.joining(" and "))
                    + " show the same notes and are read as one solo");
        }
        notices.addAll(score.strangers());
        chosen.sources().forEach(source -> notices.addAll(noticesByPart.get(source.place())));
        List<PartProfile> others = profiles.stream()
                .filter(other ->
                        other.part().source().place() != chosen.source().place())
                .toList();
        return reading(score, chosen, others, timelines, notices);
    }

    private static List<PartProfile> profiles(List<PartReading> parts) {
        return parts.stream().map(PartProfile::of).toList();
    }

    private static Reading reading(
            ParsedScore score, PartReading part, List<PartProfile> others, List<Timeline> timelines, Notices notices)
            throws ScoreException {
        Tunings tunings = TuningReader.read(
                part.staves(), part.bars(), part.strokes(), part.source().unread(), notices);
        List<Sounding> struck = WordedBends.read(
                PitchReader.read(part.strokes(), part.staves(), tunings, notices), part.timeline(), part.bars());
        List<Sounding> sounding = SplitBends.joined(GraceBends.moved(struck));
        Solo solo = Crowd.checked(new Solo(
                score.title(),
                part.source().part(),
                tunings.first(),
                part.staves().declareATuning(),
                part.bars(),
                NoteAssembler.notes(sounding, notices),
                ChordMarks.read(part.timeline(), timelines, part.bars(), tunings.first(), notices),
                Tempos.read(timelines, part.bars(), notices)));
        if (solo.notes().isEmpty()) {
            throw new ScoreException("the score has no notes whose pitch or fret can be read: there is no solo in it");
        }
        Map<Integer, Integer> carriers = Carriers.of(sounding, part.elements(), part.staves(), notices);
        return new Reading(
                solo,
                carriers,
                ordinals(score, part.timeline()),
                namesChords(solo) ? Backing.NONE : BackingReader.read(part.bars(), others),
                notices.list(),
                score.parts().stream().map(PartSource::part).toList());
    }

    private static boolean namesChords(Solo solo) {
        return solo.chords().stream().anyMatch(mark -> mark.chord().isPresent());
    }

    private static Set<Integer> ordinals(ParsedScore score, Timeline part) {
        return part.notes().stream().map(PlacedNote::note).map(score::ordinal).collect(Collectors.toSet());
    }
}
