/** What the solo means, computed once: home, harmony, form, boxes, build. */
@NullMarked
package org.fretgloss.analysis;

import org.jspecify.annotations.NullMarked;
