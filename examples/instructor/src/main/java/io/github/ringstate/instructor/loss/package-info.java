/** The command {@code loss}: altitude loss against delay. */
@NullMarked
package io.github.ringstate.instructor.loss;

import org.jspecify.annotations.NullMarked;
