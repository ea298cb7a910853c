/**
 * Linear models: how a flight answers to a small disturbance.
 *
 * <p>{@link io.github.ringstate.analysis.linear.LinearModel} takes the derivatives of the equations
 * of motion about any state, in balance or not, with their errors: dx/dt = A x + B u for small
 * changes x of the {@link io.github.ringstate.analysis.linear.Coordinate}s that are asked for and u
 * of those that are commanded; what is neither stays. A {@link
 * io.github.ringstate.analysis.linear.Mode} is an eigenvalue of A with the name of the coordinate
 * that takes part in it most (participation factors: Perez-Arriaga, Verghese and Schweppe, IEEE
 * Transactions on Power Apparatus and Systems 101, 1982; from memory).
 *
 * <p>Where the ring has a memory there are two linear models about a state within it, since a ring
 * deepens at once and dissolves slowly; {@link io.github.ringstate.analysis.linear.RingSide} picks
 * one.
 *
 * <pre>{@code
 * EquationsOfMotion equations = ...
 * double[] hover = Trim.find(equations, 0, 0).state(equations, 0, 0);
 * LinearModel model =
 *     LinearModel.about(equations, hover, List.of(HEAVE, INFLOW), List.of(COLLECTIVE));
 * for (Mode mode : model.modes()) {
 *   mode.name();
 *   mode.doubleTime();
 * }
 * }</pre>
 */
@NullMarked
package io.github.ringstate.analysis.linear;

import org.jspecify.annotations.NullMarked;
