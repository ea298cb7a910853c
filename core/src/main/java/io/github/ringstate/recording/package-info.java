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
 * <p>Thirty computed flights of the demo craft, recovered forward or sideways after 0.5 to 2.5 s,
 * written down by different instruments (a receiver's noise as in {@link
 * io.github.ringstate.recording.Instruments#receiver}; all invented). The wind is known, except in
 * the last line. Errors are root mean squares over the flights in which the encounter was found;
 * the deviation that is stated, the middle one, stands in brackets.
 *
 * <table>
 * <caption>What instruments tell of thirty flights</caption>
 * <tr><th>instruments</th><th>found of 30</th><th>onset, s</th><th>loss, ft</th><th>delay
 *     said</th></tr>
 * <tr><td>receiver 1 Hz</td><td>24</td><td>0.28 (0.21)</td><td>5.8 (6.1)</td><td>never</td></tr>
 * <tr><td>receiver 1 Hz, vertical speed</td><td>26</td><td>0.09 (0.12)</td><td>2.4 (2.4)</td><td>never</td></tr>
 * <tr><td>receiver 5 Hz</td><td>28</td><td>0.19 (0.16)</td><td>4.4 (4.4)</td><td>never</td></tr>
 * <tr><td>receiver 5 Hz, vertical speed</td><td>30</td><td>0.06 (0.07)</td><td>1.4 (1.4)</td><td>never</td></tr>
 * <tr><td>receiver 10 Hz, vertical speed</td><td>30</td><td>0.06 (0.07)</td><td>1.3 (1.3)</td><td>never</td></tr>
 * <tr><td>barometer 5 Hz, ground speed</td><td>28</td><td>0.12 (0.13)</td><td>2.3 (3.3)</td><td>never</td></tr>
 * <tr><td>receiver 1 Hz, attitude, lever</td><td>26</td><td>0.09 (0.12)</td><td>2.4 (2.4)</td><td>26, 0.60 s</td></tr>
 * <tr><td>receiver 5 Hz, attitude</td><td>30</td><td>0.06 (0.07)</td><td>1.4 (1.4)</td><td>30, 0.13 s</td></tr>
 * <tr><td>receiver 5 Hz, attitude, lever</td><td>30</td><td>0.06 (0.07)</td><td>1.4 (1.4)</td><td>30, 0.10 s</td></tr>
 * <tr><td>receiver 10 Hz, attitude, lever</td><td>30</td><td>0.06 (0.07)</td><td>1.3 (1.3)</td><td>30, 0.08 s</td></tr>
 * <tr><td>receiver 5 Hz, attitude, lever; wind off by 2 kt</td><td>29</td><td>0.29 (0.42)</td><td>5.2 (7.1)</td><td>29, 0.27 s</td></tr>
 * </table>
 *
 * <p>Without a velocity over the ground nothing can be said of the airspeed: such a recording is
 * refused. Five readings a second with a vertical speed are enough; ten tell hardly more. One
 * reading a second misses short descents, and gives the delay only to half a second or worse. A
 * barometer tells the loss as well as a receiver without vertical speed. Only attitude tells the
 * delay; the lever beside it adds little where the cyclic moves first. A wind that is off by two
 * knots costs more than any of the faster instruments does.
 *
 * <p>{@link io.github.ringstate.recording.RecordedOnset} flies the model on from the speeds and
 * accelerations that were recorded at an onset, with the controls held until the pilot acts: what
 * another delay would have cost from there. {@link io.github.ringstate.recording.MatchedOnset}
 * makes it agree with the descent up to the pilot's movement, where one is seen. For the demo
 * trainer, recorded five times a second and recovered 1.5 s after onset, it then comes within 20 ft
 * of what was lost, and within 30 ft where the wind still changes after the onset, for one wind is
 * taken throughout; of all demo craft, nine of ten come within 25 ft.
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
