/**
 * What a pilot does about the ring state.
 *
 * <p>{@link io.github.ringstate.pilot.Recovery} is the one interface to write: given what a pilot
 * could know (a {@link io.github.ringstate.flight.Cockpit}), command the controls. The delay until
 * a pilot acts is no part of it. Built in, under the trade's descriptive words:
 *
 * <table>
 * <caption>Recoveries</caption>
 * <tr><th>name</th><th>what is done</th></tr>
 * <tr><td>{@link io.github.ringstate.pilot.Forward forward}</td>
 *     <td>nose down, collective reduced, power back with airspeed</td></tr>
 * <tr><td>{@link io.github.ringstate.pilot.Lateral lateral}</td>
 *     <td>climb power, bank to the side the tail rotor pushes to, level once out</td></tr>
 * <tr><td>{@link io.github.ringstate.pilot.Autorotation autorotation}</td>
 *     <td>collective down, nose down, flare into powered flight</td></tr>
 * <tr><td>{@link io.github.ringstate.pilot.CollectiveOnly collective}</td>
 *     <td>power alone, the wrong instinct</td></tr>
 * <tr><td>{@link io.github.ringstate.pilot.NoRecovery none}</td><td>nothing</td></tr>
 * </table>
 *
 * <p>Their numbers are parameters with ranges. Few are published, and each says where it comes
 * from.
 */
@NullMarked
package io.github.ringstate.pilot;

import org.jspecify.annotations.NullMarked;
