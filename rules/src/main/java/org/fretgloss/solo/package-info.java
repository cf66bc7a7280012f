/** The solo as it was transcribed: notes, bars, bends, chord symbols, and what was written. */
@NullMarked
package org.fretgloss.solo;

import org.jspecify.annotations.NullMarked;
