package org.fretgloss.page;

/**
 * An example on a rule's page.
 *
 * @param line the line of the page on which its block begins, from 1
 * @param fires whether the rule must find exactly what the example expects; otherwise it must stay silent
 * @param text a solo in the notation of {@link SoloText}
 */
public record PageExample(int line, boolean fires, String text) {

    /** "line 12, fires". */
    @Override
    public String toString() {
        return "line " + line + ", " + (fires ? "fires" : "silent");
    }
}
