/** Pitch, interval, degree, scale and chord symbol, spelled, as tables of data. */
@NullMarked
package org.fretgloss.pitch;

import org.jspecify.annotations.NullMarked;
