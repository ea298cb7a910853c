/**
 * The air that the helicopter flies in: how dense it is, where it moves to, and how it gusts.
 *
 * <p>Air matters to a descent in two ways. Density sets the induced velocity of the rotor, and with
 * it the rates of descent at which the vortex ring state begins: thin air raises them all in
 * proportion to one over the square root of density. Wind shifts the airspeed against the ground: a
 * steep approach with a tailwind has little airspeed left when the ground speed still looks right.
 * The air knows nothing of the forces; whoever needs a density or a velocity asks for it.
 *
 * <h2>Still air</h2>
 *
 * {@link io.github.ringstate.air.StandardAtmosphere} gives {@link io.github.ringstate.air.Air} at a
 * pressure altitude, on a standard day, on a warmer or colder one, or at a temperature read off a
 * thermometer. Density altitude is its inverse.
 *
 * <h2>Moving air</h2>
 *
 * {@link io.github.ringstate.air.WindField} is the interface to write for another wind. All of them
 * give the velocity of the air over the ground: north, east, up, in m/s, positive where the air
 * goes to. Reports name a wind after where it comes from; {@link io.github.ringstate.air.Wind#from}
 * converts. {@link io.github.ringstate.air.WindTriangle} gives the airspeed and the relative wind
 * on a track that is held at a ground speed.
 *
 * <table>
 *   <caption>Models of the air, their range and their source</caption>
 *   <tr><th>model</th><th>range</th><th>source</th></tr>
 *   <tr><td>{@link io.github.ringstate.air.StandardAtmosphere}</td>
 *       <td>-1000 m to 11 km pressure altitude, 60 K either side of standard, dry</td>
 *       <td>U.S. Standard Atmosphere, 1976, NOAA-S/T 76-1562; molar mass of ISO 2533:1975
 *       (constants and equation numbers from memory)</td></tr>
 *   <tr><td>{@link io.github.ringstate.air.Wind}</td>
 *       <td>uniform, steady, level, to 100 m/s</td>
 *       <td>definition</td></tr>
 *   <tr><td>{@link io.github.ringstate.air.PowerLawWind}</td>
 *       <td>neutral air, flat ground, about 2 m to 275 m; held constant beyond</td>
 *       <td>empirical law of wind engineering; exponents from memory</td></tr>
 *   <tr><td>{@link io.github.ringstate.air.TurningWind}</td>
 *       <td>another wind that comes round by up to a turn</td>
 *       <td>definition; the course of the angle assumed</td></tr>
 *   <tr><td>{@link io.github.ringstate.air.LowAltitudeGusts}</td>
 *       <td>10 ft to 1000 ft above ground</td>
 *       <td>MIL-F-8785C, Flying Qualities of Piloted Airplanes, 1980, with the Dryden spectra
 *       (from memory)</td></tr>
 *   <tr><td>{@link io.github.ringstate.air.Gusts}, {@link io.github.ringstate.air.GustyWind}</td>
 *       <td>one height and one convection speed; the same gust everywhere at a time</td>
 *       <td>sum of sinusoids: Rice, 1944; Shinozuka and Jan, 1972 (from memory)</td></tr>
 * </table>
 *
 * <h2>What the gusts are not</h2>
 *
 * The specification was written for airplanes that cross a frozen pattern fast, and says nothing of
 * a hover in calm air, of gusts that differ across the rotor disc, or of the wakes of buildings and
 * ridges. A gust is a function of time alone here, smooth and without state, so that an integrator
 * may ask for any time in any order and a seed gives the same flight again. Waves shorter than the
 * rotor's diameter should be dropped by {@link
 * io.github.ringstate.air.Gusts#withoutWavesShorterThan} before a flight.
 */
@NullMarked
package io.github.ringstate.air;

import org.jspecify.annotations.NullMarked;
