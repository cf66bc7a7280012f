/** Help with names that somebody wrote: of parts, lines, checks, keys. */
@NullMarked
package org.fretgloss.annotator.names;

import org.jspecify.annotations.NullMarked;
