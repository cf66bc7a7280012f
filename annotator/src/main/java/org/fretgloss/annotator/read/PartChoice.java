package org.fretgloss.annotator.read;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fretgloss.annotator.file.ScoreException;

/** Which part is the solo. */
final class PartChoice {

    private PartChoice() {}

    /**
     * The part that the user names, or else the likeliest. Ties go to the first.
     *
     * @param wanted a part's identifier, its place counted from 1, or its name in any capitals
     * @throws ScoreException if the wanted part is not there or does not sound, or no part sounds
     */
    static PartSource choose(List<PartProfile> parts, Optional<String> wanted, Notices notices) throws ScoreException {
        List<PartProfile> sounding = parts.stream().filter(PartProfile::sounds).toList();
        if (wanted.isPresent()) {
            PartProfile part = find(parts, wanted.get().strip());
            if (!part.sounds()) {
                throw new ScoreException(part.source().label() + " has no notes that sound with a pitch");
            }
            return part.source();
        }
        if (sounding.isEmpty()) {
            throw new ScoreException("the score has no notes that sound with a pitch: there is no solo to read");
        }
        PartProfile likeliest = sounding.stream()
                .max(Comparator.comparingDouble(PartProfile::weight)
                        .thenComparing(part -> -part.source().place()))
                .orElseThrow();
        if (sounding.size() > 1) {
            notices.say(likeliest.source().label() + " is read as the solo; --part chooses another: "
                    + names(sounding.stream()
                            .filter(part ->
                                    part.source().place() != likeliest.source().place())
                            .toList()));
        }
        return likeliest.source();
    }

    private static PartProfile find(List<PartProfile> parts, String wanted) throws ScoreException {
        List<PartProfile> found = parts.stream()
                .filter(part -> part.source().part().id().equals(wanted))
                .toList();
        if (found.isEmpty()) {
            found = parts.stream()
                    .filter(part -> part.source().part().name().equalsIgnoreCase(wanted))
                    .toList();
        }
        if (found.isEmpty()) {
            found = parts.stream()
                    .filter(part -> String.valueOf(part.source().place() + 1).equals(wanted))
                    .toList();
        }
        if (found.isEmpty()) {
            throw new ScoreException("there is no part '" + wanted + "'; the score has " + names(parts));
        }
        if (found.size() > 1) {
            throw new ScoreException(
                    "several parts are called '" + wanted + "'; choose one by its number: " + names(parts));
        }
        return found.get(0);
    }

    private static String names(List<PartProfile> parts) {
        return parts.stream()
                .map(part -> (part.source().place() + 1) + " " + part.source().label())
                .collect(Collectors.joining(", "));
    }
}
