/**
 * The steady mean induced velocity of a rotor, its working states and their boundaries.
 *
 * <h2>The problem</h2>
 *
 * <p>A rotor that carries thrust T pushes air downward. In hover the air passes the disc at {@code
 * vh = sqrt(T / (2 rho A))}; with that as the unit of speed, every rotor at every weight and height
 * is the same rotor. What remains is one function: the induced velocity v for an edgewise speed x
 * in the disc plane and an axial speed z along the shaft, positive in climb. The total flow through
 * the disc is w = z + v.
 *
 * <pre>
 *      axial, climb: z &gt; 0        axial, descent: z &lt; 0        edgewise: x &gt; 0
 *
 *      |   |   |   air met        |   |   |   v              air met   |   |   |   v
 *      v   v   v                  v   v   v                  -------&gt;  v   v   v
 *    ================= disc     ================= disc     ================= disc
 *      |   |   |   v added        ^   ^   ^                  -------&gt;
 *      v   v   v                  |   |   |   air met        -------&gt;
 *
 *    z and v both go down       z goes up against v        x lies in the disc; its sign
 *    through the disc           through the disc           plays no part, x &gt;= 0
 *
 *    v and w = z + v are positive down through the disc. z is the speed of the disc
 *    through the air along the shaft, positive upward, so air met in a climb comes down.
 * </pre>
 *
 * <p>In climb, in level flight and in fast descent that function is momentum theory, {@code v
 * sqrt(x^2 + (z + v)^2) = 1}. In slow steep descent momentum theory assumes a slipstream that is
 * not there: the wake gathers at the disc. That is the vortex ring state. Measured mean induced
 * velocity is larger there than any root of the equation, and in flight the rate of descent runs
 * away at constant collective. Whether a model can show the runaway is decided by the sign of one
 * number, the slope dw/dz: positive, the rotor damps vertical motion; negative, it drives it.
 *
 * <h2>The interface</h2>
 *
 * <p>{@link io.github.ringstate.inflow.InflowModel} is all that other packages need: v, w, dw/dz,
 * the range in which the model holds, and the share of the losses of non-uniform inflow that its v
 * already contains. A new model is one class that implements it. Speeds outside the range and NaN
 * are refused with an {@link io.github.ringstate.quantity.OutOfRangeException}; nothing is
 * extrapolated.
 *
 * <table>
 *   <caption>Models. All speeds in hover induced velocities.</caption>
 *   <tr><th>Model</th><th>Range</th><th>Losses in v</th><th>Slope dw/dz</th><th>Source</th></tr>
 *   <tr><td>{@link io.github.ringstate.inflow.MomentumTheory}</td>
 *       <td>z &gt;= 0 or z &lt;= -2 at any x; any z from x = 0.6204 on</td><td>none</td>
 *       <td>positive</td><td>Rankine and Froude, Glauert; any rotorcraft textbook</td></tr>
 *   <tr><td>{@link io.github.ringstate.inflow.SmoothMomentum}</td>
 *       <td>x to 200, z to 200 either way</td><td>none</td>
 *       <td>positive, continuous</td><td>own bridge over the gap of momentum theory</td></tr>
 *   <tr><td>{@link io.github.ringstate.inflow.QuarticFit}</td>
 *       <td>x = 0, -2 &lt;= z &lt;= 0</td><td>all</td>
 *       <td>0.08 at the least, but -0.125 at z = 0</td>
 *       <td>Leishman, Principles of Helicopter Aerodynamics, ch. 2 (from memory)</td></tr>
 *   <tr><td>{@link io.github.ringstate.inflow.TwoSegmentFit}</td>
 *       <td>x = 0, -2 &lt;= z &lt;= 0</td><td>all</td>
 *       <td>1 - k, jumps at z = -1.5</td><td>Young, RAE TR 78125, 1978 (from memory)</td></tr>
 *   <tr><td>{@link io.github.ringstate.inflow.CubicBridge}</td>
 *       <td>x to 200, z to 200 either way</td><td>none</td>
 *       <td>positive; v jumps by up to 0.061 on the edge of the bridge</td>
 *       <td>Johnson, NASA/TP-2005-213477, 2005 (from memory)</td></tr>
 *   <tr><td>{@link io.github.ringstate.inflow.StabilityBoundInflow}</td>
 *       <td>x to 200, z to 200 either way</td><td>none</td>
 *       <td>negative within its boundary, continuous</td>
 *       <td>after Johnson, NASA/TP-2005-213477, 2005 (from memory, unsure, in part chosen)</td></tr>
 *   <tr><td>{@link io.github.ringstate.inflow.RingStateInflow}</td>
 *       <td>x to 200, z to 200 either way</td><td>all within the ring, fading outward</td>
 *       <td>negative within the ring, continuous</td>
 *       <td>own formulation on the idea of NASA/TP-2005-213477; numbers fitted</td></tr>
 * </table>
 *
 * <p>{@link io.github.ringstate.inflow.RingStateInflow} is the model to fly with. Each of its
 * numbers is a {@link io.github.ringstate.quantity.Parameter} that says where it comes from; none
 * is published. Its {@link io.github.ringstate.inflow.VortexRing ring} outlasts the flow that made
 * it, as its {@link io.github.ringstate.inflow.RingMemory} says, and takes losses of its own; the
 * other models have none. {@link io.github.ringstate.inflow.ThreeStateInflow} puts the three-state
 * dynamic inflow of Pitt and Peters over any of them: steady flight stays, and how the inflow comes
 * to it changes with edgewise speed. {@link io.github.ringstate.inflow.InflowCurve} samples any
 * model for a chart or a table; {@link io.github.ringstate.inflow.TabulatedInflow} is a model as a
 * table, for bulk work.
 *
 * <h2>Working states and boundaries</h2>
 *
 * <p>From climb to fast descent a rotor passes the normal working, vortex ring, turbulent wake and
 * windmill brake states. The last two states meet at the {@linkplain
 * io.github.ringstate.inflow.Autorotation autorotation point}, where w = 0. Where the ring begins
 * and ends is a matter of the {@link io.github.ringstate.inflow.BoundaryCriterion}, and of the
 * inflow that the criterion is given:
 *
 * <table>
 *   <caption>Axial band of the vortex ring state by criterion and inflow</caption>
 *   <tr><th>Criterion</th><th>Inflow</th><th>Onset</th><th>Exit</th><th>Reaches x</th></tr>
 *   <tr><td>{@link io.github.ringstate.inflow.HeaveDamping}: dw/dz &lt; 0</td>
 *       <td>ring-state</td><td>-0.50</td><td>-1.45</td><td>0.77</td></tr>
 *   <tr><td>{@link io.github.ringstate.inflow.WakeTransport}: (x/4)^2 + (z + v/2)^2 &lt; 0.2^2</td>
 *       <td>smooth-momentum (standard)</td><td>-0.41</td><td>-0.97</td><td>0.80</td></tr>
 *   <tr><td>the same</td><td>climb root of momentum theory</td><td>-0.41</td><td>-1.01</td>
 *       <td>0.80</td></tr>
 *   <tr><td>the same</td><td>quartic-fit, k = 1</td><td>-0.49</td><td>-1.19</td>
 *       <td>axial only</td></tr>
 *   <tr><td>the same</td><td>ring-state</td><td>-0.50</td><td>-1.55</td><td>0.80</td></tr>
 *   <tr><td>{@link io.github.ringstate.inflow.TipVortex}: 4 z^2 (x^2 + z^2) &gt; 1</td>
 *       <td>its own</td><td>-0.71</td><td>none</td><td>does not close</td></tr>
 * </table>
 *
 * <p>The spread of that table is a fair picture of what is known. {@link
 * io.github.ringstate.inflow.DescentLimits} are none of these but what pilots are taught to keep; a
 * flight with them for its boundary counts delay and loss from there.
 *
 * <p>All of it in formulas: <a
 * href="{@docRoot}/io/github/ringstate/dynamics/doc-files/equations.html">Equations of the
 * flight</a>.
 */
@NullMarked
package io.github.ringstate.inflow;

import org.jspecify.annotations.NullMarked;
