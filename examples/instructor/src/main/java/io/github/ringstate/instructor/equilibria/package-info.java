/** The command {@code equilibria}: steady descents, their folds, and the loop between them. */
@NullMarked
package io.github.ringstate.instructor.equilibria;

import org.jspecify.annotations.NullMarked;
