package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.audiveris.proxymusic.MidiInstrument;
import org.audiveris.proxymusic.PartList;
import org.audiveris.proxymusic.PartName;
import org.audiveris.proxymusic.ScorePart;
import org.audiveris.proxymusic.ScorePartwise;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.solo.Part;
import org.jspecify.annotations.Nullable;

/** Brings each part's bars together with its header in the part list. */
final class PartSources {

    /** General MIDI keeps this channel for percussion, counted from 1. */
    private static final int PERCUSSION_CHANNEL = 10;

    /** Parts are compared with each other; the largest orchestra has a third of these. */
    private static final int MOST_PARTS = 200;

    private PartSources() {}

    /**
     * The parts in the document's order. One whose identifier is missing or wrong takes the header at its place.
     *
     * @throws ScoreException if there are more of them than any score has
     */
    static List<PartSource> of(@Nullable PartList list, List<ScorePartwise.Part> parts, Unread unread)
            throws ScoreException {
        if (parts.size() > MOST_PARTS) {
            throw new ScoreException("the score has " + parts.size() + " parts, and at most " + MOST_PARTS
                    + " are read; export the solo's part alone");
        }
        List<ScorePart> headers = list == null
                ? List.of()
                : list.getPartGroupOrScorePart().stream()
                        .filter(ScorePart.class::isInstance)
                        .map(ScorePart.class::cast)
                        .toList();
        List<PartSource> sources = new ArrayList<>();
        for (int place = 0; place < parts.size(); place++) {
            sources.add(source(place, parts.get(place), headers, unread));
        }
        return sources;
    }

    private static PartSource source(int place, ScorePartwise.Part part, List<ScorePart> headers, Unread unread) {
        Optional<ScorePart> header = part.getId() instanceof ScorePart named
                ? Optional.of(named)
                : headers.stream().skip(place).findFirst();
        return new PartSource(
                place,
                new Part(
                        header.map(ScorePart::getId).orElse(""),
                        header.flatMap(PartSources::name).orElse("")),
                header.map(PartSources::programs).orElse(Set.of()),
                header.filter(PartSources::isPercussion).isPresent(),
                part.getMeasure(),
                unread);
    }

    private static Optional<String> name(ScorePart header) {
        return Optional.ofNullable(header.getPartName())
                .map(PartName::getValue)
                .map(name -> name.strip().replaceAll("\\s+", " "));
    }

    private static boolean isPercussion(ScorePart header) {
        return instruments(header)
                .anyMatch(instrument -> Objects.equals(instrument.getMidiChannel(), PERCUSSION_CHANNEL));
    }

    private static Stream<MidiInstrument> instruments(ScorePart header) {
        return header.getMidiDeviceAndMidiInstrument().stream()
                .filter(MidiInstrument.class::isInstance)
                .map(MidiInstrument.class::cast);
    }

    private static Set<Integer> programs(ScorePart header) {
        return instruments(header)
                .flatMap(instrument -> Optional.ofNullable(instrument.getMidiProgram()).stream())
                .collect(Collectors.toSet());
    }
}
