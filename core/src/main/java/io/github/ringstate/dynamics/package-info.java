/**
 * Dynamics: the equations of motion of a point-mass helicopter as a sum of terms, and trim.
 *
 * <p>The way of data is state, terms, rates. {@link io.github.ringstate.dynamics.EquationsOfMotion}
 * gives a time and a {@link io.github.ringstate.dynamics.State} vector to its terms one after the
 * other; each leaves forces and powers in the {@link io.github.ringstate.dynamics.Loads} for those
 * after it, and sets the rates of the quantities that are its own. {@link
 * io.github.ringstate.dynamics.Motion} is the view of an instant; loads and rates in it are worked
 * out when one of them is asked for.
 *
 * <table>
 * <caption>Terms, in their order</caption>
 * <tr><th>term</th><th>leaves</th><th>rates of</th></tr>
 * <tr><td>rotor</td><td>thrust, power of the rotor</td><td>induced velocity, level of the ring</td></tr>
 * <tr><td>engine</td><td>power of shaft and engine, push of the tail rotor</td>
 *     <td>rotor speed, power of the engine</td></tr>
 * <tr><td>body</td><td>drag</td><td>position and velocity</td></tr>
 * <tr><td>indicator</td><td></td><td>indicated vertical speed</td></tr>
 * <tr><td>controls</td><td></td><td>attitude, heading and collective</td></tr>
 * </table>
 *
 * <p><a href="doc-files/equations.html">Equations of the flight</a> has every equation and every
 * constant on one page, from the craft to the outcome.
 *
 * <p>To add a quantity of state: a place and a scale in {@code State}, a term that adds to its
 * rate, its value in {@link io.github.ringstate.dynamics.Trim}. To add a force or a power: a term,
 * and a line in the equations of motion at its place.
 *
 * <p>Frame: north, east, up over flat ground. Attitude: heading, pitch, bank. Axial speed through
 * the disc is positive in climb. Everything in SI units and radians.
 *
 * <p>A {@link io.github.ringstate.dynamics.Commander} sets {@link
 * io.github.ringstate.dynamics.Controls}; what it remembers is its own. A {@link
 * io.github.ringstate.dynamics.ThrustDisturbance} shakes the thrust, as {@link
 * io.github.ringstate.dynamics.RingStateShaking} does in the ring state. {@link
 * io.github.ringstate.dynamics.Propagators} has what is needed to fly.
 *
 * <p>Left out: flapping and control inputs below the attitude, so a commanded attitude is reached
 * at limited rates whatever the rotor does; yaw dynamics beyond a rate; sloping ground; change of
 * density with height.
 */
@NullMarked
package io.github.ringstate.dynamics;

import org.jspecify.annotations.NullMarked;
