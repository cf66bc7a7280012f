/** Annotation lines, where they may stand, and their splices. */
@NullMarked
package org.fretgloss.annotator.write;

import org.jspecify.annotations.NullMarked;
