/** The interface for rule authors: rules, options, settings, findings. */
@NullMarked
package org.fretgloss.rule;

import org.jspecify.annotations.NullMarked;
