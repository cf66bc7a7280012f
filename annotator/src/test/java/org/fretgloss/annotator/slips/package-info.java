/** Plants the slips that transcribers make into clean scores, and counts how many proof-reading finds. */
@NullMarked
package org.fretgloss.annotator.slips;

import org.jspecify.annotations.NullMarked;
