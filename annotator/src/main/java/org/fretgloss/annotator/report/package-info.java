/** What people and programs are told: summaries and findings files. */
@NullMarked
package org.fretgloss.annotator.report;

import org.jspecify.annotations.NullMarked;
