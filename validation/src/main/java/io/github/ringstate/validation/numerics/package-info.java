/**
 * Numerical quality of the integrators that the library takes for a yardstick: problems with closed
 * forms, errors against step and tolerance, event times and cost in evaluations of the right-hand
 * side.
 */
@NullMarked
package io.github.ringstate.validation.numerics;

import org.jspecify.annotations.NullMarked;
