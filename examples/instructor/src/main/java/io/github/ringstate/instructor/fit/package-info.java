/** Fitting a craft to recordings of it: {@code ringstate fit}. */
@NullMarked
package io.github.ringstate.instructor.fit;

import org.jspecify.annotations.NullMarked;
