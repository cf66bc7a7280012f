package org.fretgloss.annotator.read;

/** Which of a harmonic's pitches a note element writes, in rising order of what it tells about the sound. */
enum HarmonicTone {
    /** Where the string is touched: no pitch of its own. */
    TOUCHED,
    /** A natural harmonic, its place on the string written as a fret. */
    NATURAL,
    /** An artificial harmonic whose fretted pitch is written, or nothing is said. */
    FRETTED,
    /** The pitch that is heard. */
    HEARD
}
