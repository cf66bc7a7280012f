package org.fretgloss.solo;

/** How a note is begun. All but {@code PICKED} and {@code TAPPED} are reached from another note of the string. */
public enum Attack {
    PICKED,
    HAMMERED_ON,
    PULLED_OFF,
    SLID,
    TAPPED
}
