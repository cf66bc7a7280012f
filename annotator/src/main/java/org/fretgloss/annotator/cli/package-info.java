/** The command line. */
@NullMarked
package org.fretgloss.annotator.cli;

import org.jspecify.annotations.NullMarked;
