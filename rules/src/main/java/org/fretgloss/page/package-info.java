/** Rule pages and the runner of their examples. */
@NullMarked
package org.fretgloss.page;

import org.jspecify.annotations.NullMarked;
