package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.audiveris.proxymusic.MidiInstrument;
import org.audiveris.proxymusic.PartList;
import org.audiveris.proxymusic.PartName;
import org.audiveris.proxymusic.ScorePart;
import org.audiveris.proxymusic.ScorePartwise;
import org.fretgloss.solo.Part;
import org.jspecify.annotations.Nullable;

/** Brings each part's bars together with its header in the part list. */
final class PartSources {

    private PartSources() {}

    /** The parts in the document's order. One whose identifier is missing or wrong takes the header at its place. */
    static List<PartSource> of(@Nullable PartList list, List<ScorePartwise.Part> parts) {
        List<ScorePart> headers = list == null
                ? List.of()
                : list.getPartGroupOrScorePart().stream()
                        .filter(ScorePart.class::isInstance)
                        .map(ScorePart.class::cast)
                        .toList();
        List<PartSource> sources = new ArrayList<>();
        for (int place = 0; place < parts.size(); place++) {
            sources.add(source(place, parts.get(place), headers));
        }
        return sources;
    }

    private static PartSource source(int place, ScorePartwise.Part part, List<ScorePart> headers) {
        Optional<ScorePart> header = part.getId() instanceof ScorePart named
                ? Optional.of(named)
                : headers.stream().skip(place).findFirst();
        return new PartSource(
                place,
                new Part(
                        header.map(ScorePart::getId).orElse(""),
                        header.flatMap(PartSources::name).orElse("")),
                header.map(PartSources::programs).orElse(Set.of()),
                part.getMeasure());
    }

    private static Optional<String> name(ScorePart header) {
        return Optional.ofNullable(header.getPartName())
                .map(PartName::getValue)
                .map(name -> name.strip().replaceAll("\\s+", " "));
    }

    private static Set<Integer> programs(ScorePart header) {
        return header.getMidiDeviceAndMidiInstrument().stream()
                .filter(MidiInstrument.class::isInstance)
                .map(MidiInstrument.class::cast)
                .flatMap(instrument -> Optional.ofNullable(instrument.getMidiProgram()).stream())
                .collect(Collectors.toSet());
    }
}
