/**
 * The main rotor: thrust, power, inflow lag and ground effect.
 *
 * <p>{@link io.github.ringstate.rotor.Rotor} turns the blades' pitch and the flow through the disc
 * into thrust (blade element theory), and thrust and flow into power. The flow itself has two
 * parts: the craft's own motion through the air, and the induced velocity, whose steady value comes
 * from an {@link io.github.ringstate.inflow.InflowModel} and which follows it with the lag of the
 * air's apparent mass.
 *
 * <table>
 * <caption>What is modelled, and from where</caption>
 * <tr><th>part</th><th>form</th><th>source</th></tr>
 * <tr><td>thrust</td><td>blade element, uniform inflow, linear twist, tip loss, root cut-out</td>
 *     <td>Gessow and Myers; Leishman ch. 3</td></tr>
 * <tr><td>stall</td><td>smooth limit on CT/s</td><td>assumed</td></tr>
 * <tr><td>power</td><td>T (Vaxial + k v) + profile power, losses of a vortex ring counted apart</td>
 *     <td>Leishman ch. 5</td></tr>
 * <tr><td>profile drag</td><td>a polar of second degree in the angle of attack</td>
 *     <td>NACA TR 716; Gessow and Myers</td></tr>
 * <tr><td>inflow lag</td><td>apparent mass, mass flow bounded from below</td>
 *     <td>NACA TN 3044; Vertica 5, 1981</td></tr>
 * <tr><td>{@link io.github.ringstate.rotor.GroundEffect ground effect}</td><td>image source</td>
 *     <td>ARC R&amp;M 3021</td></tr>
 * </table>
 *
 * <p>Left out: flapping and the tilt of the disc against the shaft, non-uniform inflow as states,
 * blade stall in detail, compressibility.
 *
 * <p>All of it in formulas: <a
 * href="{@docRoot}/io/github/ringstate/dynamics/doc-files/equations.html">Equations of the
 * flight</a>.
 */
@NullMarked
package io.github.ringstate.rotor;

import org.jspecify.annotations.NullMarked;
