/** Runs the tool over folders of scores that other programs wrote, and reports. */
@NullMarked
package org.fretgloss.annotator.corpus;

import org.jspecify.annotations.NullMarked;
