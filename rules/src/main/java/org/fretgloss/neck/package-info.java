/** The fretboard: tuning, capo, string and fret, boxes. */
@NullMarked
package org.fretgloss.neck;

import org.jspecify.annotations.NullMarked;
