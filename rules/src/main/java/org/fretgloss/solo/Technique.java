package org.fretgloss.solo;

/** What the transcriber wrote about the sound of a note besides its pitch. */
public enum Technique {
    /** A muted note without pitch, printed as an x. */
    DEAD,
    HARMONIC,
    VIBRATO,
    PALM_MUTE,
    LET_RING,
    /** A slide that begins nowhere in particular. */
    SLIDE_IN,
    /** A slide that ends nowhere in particular. */
    SLIDE_OUT,
    STACCATO,
    /** Bent with the vibrato bar, not by a finger. */
    WITH_BAR
}
