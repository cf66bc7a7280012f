/** How good the analysis is, told by data from outside. */
@NullMarked
package org.fretgloss.evaluation;

import org.jspecify.annotations.NullMarked;
