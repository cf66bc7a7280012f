package org.fretgloss.annotator.config;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Helps where a name was misspelt: the nearest of those there are. */
public final class Nearest {

    private Nearest() {}

    /** "did you mean 'dorian'?", or all the names where none is near. */
    public static String hint(String given, Collection<String> known) {
        return of(given, known)
                .map(name -> "did you mean '" + name + "'?")
                .orElse("there are: " + String.join(", ", known));
    }

    /** The name that was probably meant; none where none is near. */
    public static Optional<String> of(String given, Collection<String> known) {
        String wanted = given.toLowerCase(Locale.ROOT).trim();
        LevenshteinDistance distance = LevenshteinDistance.getDefaultInstance();
        return known.stream()
                .min(Comparator.comparingInt(name -> distance.apply(wanted, name.toLowerCase(Locale.ROOT))))
                .filter(name ->
                        distance.apply(wanted, name.toLowerCase(Locale.ROOT)) <= Math.max(2, name.length() / 2));
    }
}
