/** Scores made up from seeds: music from a small grammar, laid out, encoded and packed in every way that programs have. */
@NullMarked
package org.fretgloss.annotator.generated;

import org.jspecify.annotations.NullMarked;
