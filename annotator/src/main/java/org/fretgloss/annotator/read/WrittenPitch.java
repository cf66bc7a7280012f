package org.fretgloss.annotator.read;

import java.util.Optional;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.pitch.Step;
import org.jspecify.annotations.Nullable;

/** Pitches as the file spells them. */
final class WrittenPitch {

    static final int HIGHEST_OCTAVE = 9;

    private WrittenPitch() {}

    /** The pitch of a note element; none if it is absent or unreadable. */
    static Optional<Pitch> of(org.audiveris.proxymusic.@Nullable Pitch written, Unread unread) {
        return written == null || unread.of(written, "octave").isPresent()
                ? Optional.empty()
                : name(written.getStep(), Numbers.alteration(written.getAlter()))
                        .flatMap(name -> inOctave(name, written.getOctave()));
    }

    /** A note name; none if its step is absent or unreadable. */
    static Optional<PitchClass> name(org.audiveris.proxymusic.@Nullable Step step, int alteration) {
        return step == null ? Optional.empty() : Optional.of(new PitchClass(Step.valueOf(step.value()), alteration));
    }

    /** The pitch in an octave; none if the octave is beyond the schema's 0 to 9. */
    static Optional<Pitch> inOctave(PitchClass name, int octave) {
        return octave < 0 || octave > HIGHEST_OCTAVE ? Optional.empty() : Optional.of(new Pitch(name, octave));
    }
}
