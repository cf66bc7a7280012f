package org.fretgloss.annotator.slips;

import org.fretgloss.rule.Severity;

/**
 * The slips that are planted: each into any note that it fits. Where two staves or two parts write the same
 * notes, a slip on one of them is no slip for whoever reads the other; those are left out.
 */
enum SlipKind {
    PITCH_AGAINST_FRET("pitch-against-fret", Severity.ERROR, FretSlips::tabOnly),
    OCTAVE_FRET("octave-fret", Severity.WARNING, FretSlips::octave),
    OFF_NECK("off-neck", Severity.ERROR, FretSlips::offNeck),
    SAME_STRING("same-string", Severity.ERROR, HandSlips::sameString),
    BAR_LENGTH("bar-length", Severity.ERROR, SheetSlips::barLength),
    IMPOSSIBLE_BEND("bend-width", Severity.ERROR, SignSlips::impossibleBend),
    BEND_LABEL("bend-width", Severity.WARNING, SignSlips::bendLabel),
    RELEASE_WITHOUT_BEND("bend-width", Severity.WARNING, SignSlips::releaseWithoutBend),
    LEGATO("legato", Severity.ERROR, HandSlips::legato),
    WIDE_LEGATO("legato", Severity.WARNING, HandSlips::wideLegato),
    TIE_TO_ANOTHER_NOTE("tie", Severity.ERROR, SignSlips::tieToAnotherNote),
    TIE_TO_NOWHERE("tie", Severity.WARNING, SignSlips::tieToNowhere),
    STRETCH("reach-and-shift", Severity.WARNING, HandSlips::stretch),
    SHIFT("reach-and-shift", Severity.WARNING, HandSlips::shift),
    WRONG_BOX("wrong-box", Severity.WARNING, FretSlips::oneFret),
    LIKELY_STRING("likely-string", Severity.WARNING, FretSlips::otherString),
    CHORD_SYMBOL("chord-symbol", Severity.WARNING, ChordSlip::plant),
    ODD_ONE_OUT("odd-one-out", Severity.HINT, RepeatSlip::plant),
    SPELLING("spelling", Severity.HINT, SheetSlips::spelling),
    LEAD_SHEET("lead-sheet", Severity.HINT, SheetSlips::leadSheet);

    private final String check;
    private final Severity severity;
    private final Planter planter;

    SlipKind(String check, Severity severity, Planter planter) {
        this.check = check;
        this.severity = severity;
        this.planter = planter;
    }

    /** The check that should find it. */
    String check() {
        return check;
    }

    /** How sure it is to be wrong. */
    Severity severity() {
        return severity;
    }

    Planter planter() {
        return planter;
    }
}
