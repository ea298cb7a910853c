/**
 * What a pilot does about the ring state.
 *
 * <p>{@link io.github.ringstate.pilot.Recovery} is the one interface to write: a list of phases,
 * each with a name, a command and an end. A {@link io.github.ringstate.pilot.Phase} commands the
 * controls, given what a pilot could know (a {@link io.github.ringstate.pilot.Cockpit}), and keeps
 * no memory; its end is located exactly. The delay until a pilot acts is no part of a recovery.
 * Built in, and registered in {@link io.github.ringstate.pilot.Technique#ALL}, under the trade's
 * descriptive words:
 *
 * <table>
 * <caption>Recoveries</caption>
 * <tr><th>name</th><th>what is done</th></tr>
 * <tr><td>{@link io.github.ringstate.pilot.Forward forward}</td>
 *     <td>nose down, collective reduced, power back with airspeed</td></tr>
 * <tr><td>{@link io.github.ringstate.pilot.Lateral lateral}</td>
 *     <td>climb power, power pedal to hold the heading, bank to the side the tail rotor pushes to,
 *     level once out</td></tr>
 * <tr><td>{@link io.github.ringstate.pilot.Autorotation autorotation}</td>
 *     <td>collective down, nose down, flare into powered flight</td></tr>
 * <tr><td>{@link io.github.ringstate.pilot.CollectiveOnly collective}</td>
 *     <td>power alone, the rotor speed kept: the wrong instinct</td></tr>
 * <tr><td>{@link io.github.ringstate.pilot.CollectiveRaised collective-raised}</td>
 *     <td>the lever raised, whatever the rotor speed does</td></tr>
 * <tr><td>{@link io.github.ringstate.pilot.NoRecovery none}</td><td>nothing</td></tr>
 * </table>
 *
 * <p>Their numbers are parameters with ranges. Few are published, and each says where it comes
 * from. A {@link io.github.ringstate.pilot.Technique} says whether it is a way out; what is not may
 * never be presented as a recovery to choose.
 *
 * <h2>When a pilot acts</h2>
 *
 * {@link io.github.ringstate.pilot.Recognition} is a delay on a clock. The clock starts at the
 * crossing of the boundary, as in tables that compare, or at a {@link
 * io.github.ringstate.pilot.Cue}: what the indicator shows, the body feels or the view tells. A
 * table says which, by {@link io.github.ringstate.pilot.Recognition#clock}. A cue that never fires
 * is a descent that nobody arrests.
 *
 * <h2>Techniques of techniques</h2>
 *
 * {@link io.github.ringstate.pilot.Switched} flies one recovery after another, {@link
 * io.github.ringstate.pilot.FirstToFire} the one whose cue fires first, {@link
 * io.github.ringstate.pilot.Limited} any of them within limits of attitude, rate, thrust and
 * reversal, and the flight reports where a limit begins to bind. They work on the phases: a phase
 * is wrapped, or leads to the phases of another recovery by {@link
 * io.github.ringstate.pilot.Phase#instead}.
 *
 * <h2>People</h2>
 *
 * {@link io.github.ringstate.pilot.Pilots} draw a recovery for one person from the {@link
 * io.github.ringstate.chance.RandomStream} of a sample: a {@link
 * io.github.ringstate.pilot.Technique} whose numbers have a {@link
 * io.github.ringstate.pilot.Spread} each, some of the people perhaps after a wrong first instinct.
 * Their delays follow {@link io.github.ringstate.pilot.Delays}, log-normal or gamma; {@link
 * io.github.ringstate.pilot.PilotState} has four sets of them. The spreads are assumed throughout,
 * and so is most of the delays: no source gives a distribution for helicopter pilots.
 *
 * <p>All of it in formulas: <a
 * href="{@docRoot}/io/github/ringstate/dynamics/doc-files/equations.html">Equations of the
 * flight</a>.
 */
@NullMarked
package io.github.ringstate.pilot;

import org.jspecify.annotations.NullMarked;
