/** Where on the neck a solo is most likely played, as far as the score does not say it. */
@NullMarked
package org.fretgloss.fingering;

import org.jspecify.annotations.NullMarked;
