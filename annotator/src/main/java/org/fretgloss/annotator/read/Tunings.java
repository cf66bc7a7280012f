package org.fretgloss.annotator.read;

import java.util.Collections;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.fretgloss.neck.Tuning;
import org.fretgloss.time.Fraction;

/**
 * How the strings are tuned from one moment to the next.
 *
 * @param changes the tunings by the moment from which they hold; the first holds from the beginning
 */
record Tunings(NavigableMap<Fraction, Tuning> changes) {

    Tunings {
        changes = Collections.unmodifiableNavigableMap(new TreeMap<>(changes));
    }

    /** One tuning throughout. */
    static Tunings of(Tuning tuning) {
        return new Tunings(new TreeMap<>(Map.of(Fraction.ZERO, tuning)));
    }

    Tuning first() {
        return changes.firstEntry().getValue();
    }

    Tuning at(Fraction moment) {
        return Optional.ofNullable(changes.floorEntry(moment))
                .orElse(changes.firstEntry())
                .getValue();
    }

    boolean stayTheSame() {
        return changes.size() == 1;
    }
}
