/** Checks of annotated scores that share no code with what they check. */
@NullMarked
package org.fretgloss.annotator.check;

import org.jspecify.annotations.NullMarked;
