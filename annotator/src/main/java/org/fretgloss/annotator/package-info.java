/** The facade: annotate, strip and examine scores from Java. */
@NullMarked
package org.fretgloss.annotator;

import org.jspecify.annotations.NullMarked;
