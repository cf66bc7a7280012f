package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.fretgloss.neck.Tuning;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.pitch.PitchClass;

/**
 * A tuning as players call it.
 *
 * @param name such as "drop D"
 * @param tuning its strings
 */
record NamedTuning(String name, Tuning tuning) {

    static NamedTuning of(String name, String strings) {
        return new NamedTuning(name, Tuning.of(strings));
    }

    /** The strings' names, lowest string first, as players say them. */
    static String strings(Tuning tuning) {
        List<Pitch> strings = new ArrayList<>(tuning.strings());
        Collections.reverse(strings);
        return String.join(
                " ", strings.stream().map(Pitch::name).map(PitchClass::toString).toList());
    }
}
