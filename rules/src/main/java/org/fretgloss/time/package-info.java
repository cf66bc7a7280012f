/** Musical time as exact fractions. */
@NullMarked
package org.fretgloss.time;

import org.jspecify.annotations.NullMarked;
