/**
 * What a recorded flight shows: how high it was and how fast it sank, whether it was in the vortex
 * ring state, when the pilot acted, and what it cost.
 *
 * <p>Nobody may fly the late recoveries, but prompt ones are flown every day, and a satellite
 * receiver writes them down. This package takes a {@link io.github.ringstate.recording.Recording}:
 * times, and at each time what the instruments gave of height, vertical speed, ground speed and
 * track, attitude and controls. How it came out of a file is not its business.
 *
 * <h2>From readings to motion</h2>
 *
 * A height by satellite wavers by a metre from reading to reading, is off by some metres for
 * minutes, and steps when a satellite comes or goes; a pressure altitude has another level. {@link
 * io.github.ringstate.recording.VerticalMotion} makes one motion of all of them by a Kalman filter
 * forwards and a smoother backwards: height, vertical speed and acceleration at each time, each
 * with its standard deviation. The difference of two heights is known better than either, for the
 * slow error is in both; {@link
 * io.github.ringstate.recording.VerticalMotion#heightDifferenceDeviation} says how well. How much
 * the instruments waver is taken from the readings themselves by maximum likelihood ({@link
 * io.github.ringstate.recording.NoiseEstimate}); the slow error cannot be and is assumed ({@link
 * io.github.ringstate.recording.Noise#DRIFT}).
 *
 * <h2>From motion to encounters</h2>
 *
 * {@link io.github.ringstate.recording.EncounterFinder} needs the craft, the air and the wind: from
 * them follow the airspeed along and across the rotor's thrust, in hover induced velocities, and a
 * {@link io.github.ringstate.inflow.BoundaryCriterion} says whether that is in the ring state. A
 * {@link io.github.ringstate.recording.FoundEncounter} has the onset, the first movement of
 * attitude or lever, the arrest and the altitude lost, with what the errors of the data make of
 * each. The wind matters most: two knots are a quarter of the speed at which the ring state ends.
 * Where nobody wrote it down, {@link io.github.ringstate.recording.WindEstimate} takes it from the
 * flight, or says that it is unknown.
 *
 * <p>What can be found depends on the instruments. At five readings a second onset comes out within
 * half a second and the loss within 10 ft, unless the descent creeps along the boundary, which the
 * deviation of the onset says. Without attitude or controls nothing is said of the pilot's delay.
 * Where the nose or the lever still moves at the onset, as in a quick stop, it moves for the entry,
 * and the pilot's movement is the way back; a recovery that goes on the same way is not seen.
 *
 * <h2>Which instruments are enough</h2>
 *
 * Thirty invented flights of the trainer from the standard entry, with a delay of 0.5 to 2 s and a
 * wind known to a knot. Satellite heights waver by 1 m, barometric ones by 0.4 m, both are off by
 * 1.5 m for a minute; vertical speeds waver by 0.2 m/s. Errors are roots of mean squares.
 *
 * <table>
 * <caption>Errors by instruments and rate</caption>
 * <tr><th>written down<th>found<th>onset, s<th>loss, ft<th>loss as said, ft<th>delay, s
 * <tr><td>satellite, 1 a second<td>25 of 30<td>0.14<td>3.8<td>182.7<td>not known
 * <tr><td>satellite, 5 a second<td>30 of 30<td>0.10<td>2.8<td>5.6<td>not known
 * <tr><td>satellite, 10 a second<td>30 of 30<td>0.09<td>2.5<td>7.1<td>not known
 * <tr><td>barometer and ground speed, 5 a second<td>30 of 30<td>0.08<td>2.5<td>5.3<td>not known
 * <tr><td>satellite, 5 a second, and vertical speed<td>30 of 30<td>0.05<td>1.2<td>4.9<td>not known
 * <tr><td>satellite, 1 a second, and attitude<td>25 of 30<td>0.14<td>3.8<td>182.7<td>0.56 (25)
 * <tr><td>satellite, 5 a second, and attitude<td>30 of 30<td>0.10<td>2.8<td>5.6<td>0.12 (30)
 * <tr><td>the same with attitude, collective<td>30 of 30<td>0.05<td>1.2<td>4.9<td>0.11 (30)
 * </table>
 *
 * <p>Five readings a second of place and height are enough for onset and loss. At one a second some
 * encounters are missed and the time of onset is not always bounded, which the said deviation of
 * the loss then shows. A vertical speed of its own halves the errors. The delay takes attitude, at
 * five readings a second. A barometer alone is not enough: without a velocity over the ground
 * nothing can be said of the airspeed, and such a recording is refused.
 *
 * <h2>Recordings for trials</h2>
 *
 * {@link io.github.ringstate.recording.Instruments} writes down a computed flight with errors such
 * as receivers have. It is invented and must say so wherever it is shown.
 *
 * <pre>{@code
 * Encounter encounter = Encounter.of(DemoCraft.TRAINER).withDelay(1);
 * Recording invented = Instruments.receiver().record(encounter, 1);
 * VerticalMotion motion = VerticalMotion.of(invented);
 * EncounterFinder finder =
 *     new EncounterFinder(
 *         encounter.craft(), encounter.air(), encounter.entry().wind(), 0.5, 0.1, encounter.boundary());
 * for (FoundEncounter found : finder.find(motion)) {
 *   found.altitudeLoss();
 * }
 * }</pre>
 */
@NullMarked
package io.github.ringstate.recording;

import org.jspecify.annotations.NullMarked;
