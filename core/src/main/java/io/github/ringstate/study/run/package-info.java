/**
 * Slow runs over the ground, as for photographs or a survey: what each track takes in the wind, how
 * near it comes to the ring state, and whether to fly it.
 *
 * <p>A {@link io.github.ringstate.study.run.RunPlan} says what is to be flown. A {@link
 * io.github.ringstate.study.run.RunStudy} takes it apart by track: a {@link
 * io.github.ringstate.study.run.RunTrack} holds the airspeeds in gusts and lulls, the power, and
 * the distance to the ring state. A {@link io.github.ringstate.study.run.RunMishap} is a way into
 * the ring state; flown by many pilots, it gives a {@link io.github.ringstate.study.run.RunLoss}.
 * From track to track that loss goes up and down: a craft that is slow already holds more power and
 * has less speed to lose in the turn than one that is fast, and the slowest meet the ring state
 * without a turn. All tracks are therefore judged by the worst of them.
 *
 * <h2>The verdict</h2>
 *
 * Four things keep the craft off the ground. Each is judged whether or not the run meets the ring
 * state, in calm air too, where {@link io.github.ringstate.study.run.RunWind} still allows for
 * lulls and drift:
 *
 * <table>
 * <caption>The checks of a run</caption>
 * <tr><th>check</th><th>asks</th></tr>
 * <tr><td>{@link io.github.ringstate.study.run.AirspeedCheck}</td><td>Does the airspeed in gusts
 * and lulls stay between the {@link io.github.ringstate.study.run.RunLimits}, which the ring state,
 * the height-velocity curve and the power set?</td></tr>
 * <tr><td>{@link io.github.ringstate.study.run.TurnCheck}</td><td>Does it through a turn downwind
 * with the ground speed held?</td></tr>
 * <tr><td>{@link io.github.ringstate.study.run.HeightCheck}</td><td>Is the height not below the
 * lowest of runs, and does it cover what it costs to meet the ring state all the same?</td></tr>
 * <tr><td>{@link io.github.ringstate.study.run.HoverCheck}</td><td>Is there the power to
 * hover?</td></tr>
 * </table>
 *
 * <p>Each gives a {@link io.github.ringstate.study.run.Finding} and the data of its reason; no
 * check knows the others. {@link io.github.ringstate.study.run.RunJudgement} puts them together. A
 * limit is one that the run as planned keeps; where only another ground speed would do, the run is
 * not as planned.
 */
@NullMarked
package io.github.ringstate.study.run;

import org.jspecify.annotations.NullMarked;
