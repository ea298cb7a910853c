/**
 * Equilibria: steady flight and its limits, steady descents and where they fold over.
 *
 * <p>{@link io.github.ringstate.analysis.equilibrium.SteadyFlight} is a trim that is asked whether
 * engine, blades and controls allow it.
 *
 * <h2>Why the sink runs away</h2>
 *
 * At a collective a little below that of the hover there are up to three steady vertical descents:
 * a slow one, one within the ring, and a fast one below it. {@link
 * io.github.ringstate.analysis.equilibrium.EquilibriumCurve} follows them as one curve in
 * collective, airspeed or mass. At its folds two of them meet and cease; beyond the upper fold the
 * nearest steady descent is the fast one, and the sink jumps there. The descents between the folds
 * are unstable: {@link io.github.ringstate.analysis.equilibrium.Equilibrium#growth} is how fast
 * they are left. {@link io.github.ringstate.analysis.equilibrium.HysteresisLoop} flies it,
 * collective down and up again.
 *
 * <p>Airspeed is held, by attitude, and so is the collective; the rotor speed is free, and sags
 * where the engine cannot give the power. So the folds are those of the whole craft, with the drag
 * of its body and what its engine can do, while {@link io.github.ringstate.inflow.HeaveDamping}
 * judges the inflow alone. {@link io.github.ringstate.analysis.equilibrium.FoldBoundary} follows
 * them in airspeed, to lay the one boundary beside the other. A ring takes part in a steady descent
 * as if it had no memory; what the memory does to disturbances is in {@link
 * io.github.ringstate.analysis.linear.RingSide}.
 *
 * <pre>{@code
 * DescentCase hover = DescentCase.of(DemoCraft.UTILITY);
 * EquilibriumCurve curve = EquilibriumCurve.againstCollective(hover);
 * for (Equilibrium fold : curve.folds()) {
 *   fold.collective();
 *   fold.verticalSpeed();
 * }
 * }</pre>
 */
@NullMarked
package io.github.ringstate.analysis.equilibrium;

import org.jspecify.annotations.NullMarked;
