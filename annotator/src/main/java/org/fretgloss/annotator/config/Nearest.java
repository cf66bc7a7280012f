package org.fretgloss.annotator.config;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Helps where a name was misspelt: the nearest of those there are. */
public final class Nearest {

    /** A letter or two are a part of many names. */
    private static final int ENOUGH_LETTERS = 3;

    private Nearest() {}

    /** "did you mean 'dorian'?", or all the names where none is near. */
    public static String hint(String given, Collection<String> known) {
        return of(given, known)
                .map(name -> "did you mean '" + name + "'?")
                .orElse("there are: " + String.join(", ", known));
    }

    /** The name that was probably meant: the only one that it is a part of, or else the nearest; none where none is near. */
    public static Optional<String> of(String given, Collection<String> known) {
        String wanted = given.toLowerCase(Locale.ROOT).trim();
        List<String> longer = known.stream()
                .filter(name -> wanted.length() >= ENOUGH_LETTERS
                        && name.toLowerCase(Locale.ROOT).contains(wanted))
                .toList();
        return longer.size() == 1 ? Optional.of(longer.get(0)) : nearest(wanted, known);
    }

    private static Optional<String> nearest(String wanted, Collection<String> known) {
        LevenshteinDistance distance = LevenshteinDistance.getDefaultInstance();
        return known.stream()
                .min(Comparator.comparingInt(name -> distance.apply(wanted, name.toLowerCase(Locale.ROOT))))
                .filter(name ->
                        distance.apply(wanted, name.toLowerCase(Locale.ROOT)) <= Math.max(2, name.length() / 2));
    }
}
