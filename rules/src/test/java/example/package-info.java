/** The rule that the contributor's guide writes in ten minutes. */
@NullMarked
package example;

import org.jspecify.annotations.NullMarked;
