/** The command {@code craft}: the demo craft, and one of them as a file. */
@NullMarked
package io.github.ringstate.instructor.craftlist;

import org.jspecify.annotations.NullMarked;
