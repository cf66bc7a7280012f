/** What a teacher decided about a score, kept beside it. */
@NullMarked
package org.fretgloss.annotator.config;

import org.jspecify.annotations.NullMarked;
