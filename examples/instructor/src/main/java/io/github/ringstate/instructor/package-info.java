/** The command-line tool {@code ringstate}. */
@NullMarked
package io.github.ringstate.instructor;

import org.jspecify.annotations.NullMarked;
