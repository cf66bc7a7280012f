package org.fretgloss.annotator.cli;

/** A command on a score, as far as an error message needs to know it. */
interface ScoreCommand {

    /** The score as it was named. */
    String score();

    /** Whether the user wants to see where in the program an error arose. */
    boolean isTraced();
}
