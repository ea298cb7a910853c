/**
 * Encounters with the ring state, from entry to outcome.
 *
 * <p>An {@link io.github.ringstate.encounter.Encounter} puts a craft, air, an {@link
 * io.github.ringstate.encounter.Entry} and a pilot's recovery with a delay together, and flies them
 * to an {@link io.github.ringstate.encounter.Outcome}:
 *
 * <pre>
 * entry -&gt; onset -&gt; recognition (delay) -&gt; pilot's action -&gt; arrest, ground, or time out
 * </pre>
 *
 * <p>The delay counts from onset, or from a cue that the pilot may notice. {@link
 * io.github.ringstate.encounter.Disturbances} shake the thrust in the ring state, gust, shear and
 * turn the wind; all are off unless set.
 *
 * <p>Onset is the crossing of the boundary with the descent still building; a craft that climbs in
 * an updraught does not descend, wherever its disc is. Altitude loss is the height at onset less
 * the lowest height. An encounter that never meets the ring state says so, one that is not
 * recovered says so, and one that reaches the ground gives the speed of impact.
 *
 * <p>A descent is arrested for good: from the first zero of the vertical speed on it is flown until
 * the craft is 20 ft above its lowest point, or for 10 s. A later low counts. Where the craft still
 * sinks then, or the rotor's speed is outside its limits from the first zero on, the outcome says
 * that the arrest does not last.
 *
 * <p>An encounter is data. A {@link io.github.ringstate.encounter.Simulator} flies it, precisely or
 * fast; a {@link io.github.ringstate.encounter.Trajectory} takes samples on the way, a {@link
 * io.github.ringstate.encounter.History} keeps all of it.
 *
 * <h2>Parts of one's own</h2>
 *
 * An encounter takes any {@link io.github.ringstate.air.WindField}, {@link
 * io.github.ringstate.inflow.InflowModel}, {@link io.github.ringstate.inflow.BoundaryCriterion},
 * {@link io.github.ringstate.dynamics.ThrustDisturbance}, {@link
 * io.github.ringstate.encounter.Entry}, {@link io.github.ringstate.pilot.Recovery} and {@link
 * io.github.ringstate.pilot.Cue}, and looks for any {@link
 * io.github.ringstate.encounter.FlightEvent}. Each is a continuous function of its arguments alone.
 * What is not a finite number is refused with the name of the part, and {@link
 * io.github.ringstate.encounter.FlightLimits} bound the work of a flight.
 *
 * <h2>Many descents</h2>
 *
 * <p>Encounters that differ in recognition and recovery alone share what comes before, an {@link
 * io.github.ringstate.encounter.Approach}; {@link io.github.ringstate.encounter.BulkFlight} flies
 * many of them from one, for tables, studies and sweeps. {@link
 * io.github.ringstate.encounter.EdgeCheck} says whether next to nothing decides how one ended.
 *
 * <p>Entries are values of their numbers. Those that are built in are registered in {@link
 * io.github.ringstate.encounter.EntryKind#ALL}:
 *
 * <table>
 * <caption>Entries</caption>
 * <tr><th>name</th><th>what happens</th></tr>
 * <tr><td>{@link io.github.ringstate.encounter.TailwindApproach tailwind-approach}</td>
 *     <td>a steep approach with the wind behind and little power; the standard</td></tr>
 * <tr><td>{@link io.github.ringstate.encounter.Settling settling}</td>
 *     <td>from a hover, the collective lowered a little</td></tr>
 * <tr><td>{@link io.github.ringstate.encounter.Steep steep}</td>
 *     <td>a steep approach slowed too much</td></tr>
 * <tr><td>{@link io.github.ringstate.encounter.Downwind downwind}</td>
 *     <td>a run at constant ground speed while the wind comes round behind</td></tr>
 * <tr><td>{@link io.github.ringstate.encounter.QuickStop quick-stop}</td>
 *     <td>a quick stop with the wind behind</td></tr>
 * <tr><td>{@link io.github.ringstate.encounter.ShortHover short-hover}</td>
 *     <td>a hover out of ground effect with too little power</td></tr>
 * <tr><td>{@link io.github.ringstate.encounter.PhotoDrift photo-drift}</td>
 *     <td>a hover for a photograph, let drift with the wind</td></tr>
 * </table>
 *
 * <p>All of it in formulas: <a
 * href="{@docRoot}/io/github/ringstate/dynamics/doc-files/equations.html">Equations of the
 * flight</a>.
 */
@NullMarked
package io.github.ringstate.encounter;

import org.jspecify.annotations.NullMarked;
