/** Bytes, containers, text and splices: what keeps a score whole. */
@NullMarked
package org.fretgloss.annotator.file;

import org.jspecify.annotations.NullMarked;
