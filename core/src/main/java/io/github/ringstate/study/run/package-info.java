/**
 * Slow runs over the ground, as for photographs or a survey: what each track takes in the wind, how
 * near it comes to the ring state, and whether to fly it.
 *
 * <p>A {@link io.github.ringstate.study.run.RunPlan} says what is to be flown. A {@link
 * io.github.ringstate.study.run.RunStudy} takes it apart by track: a {@link
 * io.github.ringstate.study.run.RunTrack} holds the airspeeds in gusts and lulls, the power, and
 * the distance to the ring state. A {@link io.github.ringstate.study.run.RunMishap} is a way into
 * the ring state; flown by many pilots, it gives a {@link io.github.ringstate.study.run.RunLoss}.
 * {@link io.github.ringstate.study.run.Escape} is the way out that leaves the ring state soonest.
 *
 * <h2>The verdict</h2>
 *
 * Three things keep the craft off the ground, and each has a check:
 *
 * <table>
 * <caption>The checks of a run</caption>
 * <tr><th>check</th><th>asks</th></tr>
 * <tr><td>{@link io.github.ringstate.study.run.AirspeedCheck}</td><td>Does the airspeed in gusts
 * and lulls stay between the {@link io.github.ringstate.study.run.RunLimits}?</td></tr>
 * <tr><td>{@link io.github.ringstate.study.run.HeightCheck}</td><td>Does the height cover what it
 * costs to meet the ring state all the same?</td></tr>
 * <tr><td>{@link io.github.ringstate.study.run.HoverCheck}</td><td>Is there the power to
 * hover?</td></tr>
 * </table>
 *
 * <p>Each gives a {@link io.github.ringstate.study.run.Finding} and the data of its reason; no
 * check knows the others. {@link io.github.ringstate.study.run.RunJudgement} puts them together.
 */
@NullMarked
package io.github.ringstate.study.run;

import org.jspecify.annotations.NullMarked;
