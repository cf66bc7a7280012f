package org.fretgloss.annotator.read;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.names.Nearest;

/** Which part is the solo. */
final class PartChoice {

    private PartChoice() {}

    /**
     * The part that the user names, or else the likeliest. Ties go to the first.
     *
     * @param wanted a part's identifier, its place counted from 1, or its name in any capitals
     * @throws ScoreException if the wanted part is not there or does not sound, or no part sounds
     */
    static PartReading choose(List<PartProfile> parts, Optional<String> wanted, Notices notices) throws ScoreException {
        List<PartProfile> sounding = parts.stream().filter(PartProfile::sounds).toList();
        if (wanted.isPresent()) {
            PartProfile part = find(parts, wanted.get().strip());
            if (!part.sounds()) {
                throw new ScoreException(
                        part.part().source().label() + " has no notes that sound with a pitch and for a time");
            }
            return part.part();
        }
        if (sounding.isEmpty()) {
            throw new ScoreException(
                    "the score has no notes that sound with a pitch and for a time: there is no solo to read");
        }
        PartProfile likeliest = sounding.stream()
                .max(Comparator.comparingDouble(PartProfile::weight)
                        .thenComparing(profile -> -profile.part().source().place()))
                .orElseThrow();
        if (sounding.size() > 1) {
            notices.say(likeliest.part().source().label() + " is read as the solo; --part chooses another: "
                    + names(sounding.stream()
                            .filter(profile -> !profile.equals(likeliest))
                            .toList()));
        }
        return likeliest.part();
    }

    private static PartProfile find(List<PartProfile> parts, String wanted) throws ScoreException {
        List<PartProfile> found = having(parts, source -> source.part().id().equals(wanted));
        if (found.isEmpty()) {
            found = having(parts, source -> source.part().name().equalsIgnoreCase(wanted));
        }
        if (found.isEmpty()) {
            found = having(parts, source -> String.valueOf(source.place() + 1).equals(wanted));
        }
        if (found.isEmpty()) {
            throw new ScoreException("there is no part '" + wanted + "'; " + hint(parts, wanted));
        }
        if (found.size() > 1) {
            throw new ScoreException(
                    "several parts are called '" + wanted + "'; choose one by its number: " + names(parts));
        }
        return found.get(0);
    }

    private static String hint(List<PartProfile> parts, String wanted) {
        List<String> names = sources(parts)
                .map(source -> source.part().name())
                .filter(name -> !name.isBlank())
                .toList();
        return Nearest.of(wanted, names)
                        .map(name -> "did you mean '" + name + "'? The score has ")
                        .orElse("the score has ")
                + names(parts);
    }

    /** Either part of a pair stands for both. */
    private static List<PartProfile> having(List<PartProfile> parts, Predicate<PartSource> wanted) {
        return parts.stream()
                .filter(profile -> profile.part().sources().stream().anyMatch(wanted))
                .toList();
    }

    private static String names(List<PartProfile> parts) {
        return sources(parts)
                .map(source -> (source.place() + 1) + " " + source.label())
                .collect(Collectors.joining(", "));
    }

    private static Stream<PartSource> sources(List<PartProfile> parts) {
        return parts.stream()
                .flatMap(profile -> profile.part().sources().stream())
                .sorted(Comparator.comparing(PartSource::place));
    }
}
