/** The proof-reading rules: what looks wrong in a transcription, and what was probably meant. */
@NullMarked
package org.fretgloss.checks;

import org.jspecify.annotations.NullMarked;
