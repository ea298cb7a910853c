/**
 * Quantities: names, units and valid ranges of the numbers that the library takes.
 *
 * <p>Everything that a user may set is a {@link io.github.ringstate.quantity.Parameter}: a {@link
 * io.github.ringstate.quantity.Quantity} (name, unit, range) with a standard value and a sentence
 * that says where the value comes from. A {@link io.github.ringstate.quantity.ParameterSet} holds
 * values for a list of them. One mechanism thereby serves range checks, messages, craft files,
 * sweep axes and samples over pilots.
 *
 * <p>Values in a set are kept in the parameter's own {@link io.github.ringstate.quantity.Unit}, so
 * that what a user writes is read back to the last digit; {@link
 * io.github.ringstate.quantity.ParameterSet#si} converts once, where a model is built. Everywhere
 * else the library computes in SI units. {@link io.github.ringstate.quantity.SoftLimit} bends a
 * limit in, where a corner would cost an integrator its order.
 */
@NullMarked
package io.github.ringstate.quantity;

import org.jspecify.annotations.NullMarked;
