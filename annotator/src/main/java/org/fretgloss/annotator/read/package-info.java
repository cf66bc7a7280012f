/** From the text of a score to a Solo; proxymusic ends here. */
@NullMarked
package org.fretgloss.annotator.read;

import org.jspecify.annotations.NullMarked;
