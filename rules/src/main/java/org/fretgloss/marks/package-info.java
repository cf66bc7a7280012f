/** The built-in marks, one class and one page each. */
@NullMarked
package org.fretgloss.marks;

import org.jspecify.annotations.NullMarked;
