package org.fretgloss.annotator.generated;

/** What a made-up score may have; each score has some of them. */
public enum Feature {
    TIMEWISE,
    TWO_STAVES,
    TWO_PARTS,
    CHORDS_IN_ANOTHER_PART,
    OTHER_VERSION,
    NAMESPACE_PREFIX(false),

    PICK_UP,
    METER_CHANGE,
    DIVISIONS_CHANGE,
    DIVISIONS_MISSING,
    MULTI_BAR_REST,
    BAR_REST,
    HIDDEN_REST,
    FORWARD,
    REPEAT,
    ENDINGS,

    TUNING,
    CAPO,
    TRANSPOSITION,
    OCTAVE_CLEF,

    VOICE_MISSING,
    TYPE_MISSING,
    DURATION_MISSING(false),
    CUE,
    UNPITCHED,
    DEAD_NOTE,
    TAP,
    TIE_OVER_BAR_LINE,
    TIE_WITHOUT_END,
    LYRICS,

    NARROW_BEND,
    WIDE_BEND,
    SEVERAL_BENDS,
    PRE_BEND,
    BAR_DIP,
    RELEASES_AS_HEIGHTS,
    POSITIVE_RELEASES,
    BENDS_RESTATED_ON_TIES,

    FRAME,
    KIND_OTHER,
    CHORD_DEGREE,
    CHORD_BASS,
    CHORD_OFFSET,

    STRANGE_ELEMENT(false),
    STRANGE_ATTRIBUTE(false),
    STRANGE_VALUE(false);

    private final boolean isInSchema;

    Feature() {
        this(true);
    }

    Feature(boolean isInSchema) {
        this.isInSchema = isInSchema;
    }

    /** Whether MusicXML's schema knows it. */
    public boolean isInSchema() {
        return isInSchema;
    }
}
