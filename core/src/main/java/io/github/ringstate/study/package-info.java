/**
 * Studies: many encounters put together into something to read.
 *
 * <p>{@link io.github.ringstate.study.LossTable} holds altitude loss against delay and recovery for
 * a craft at several masses in several airs. Each {@link io.github.ringstate.study.LossCell} keeps
 * the encounter that was flown and its whole outcome, so that nothing is dropped on the way to a
 * table.
 *
 * <p>{@link io.github.ringstate.study.RunStudy} takes a slow run over the ground, as for
 * photographs, apart by track: airspeed in gusts, power, distance to the ring state, and what is
 * lost if the ground speed is held through a turn downwind. {@link
 * io.github.ringstate.study.RunJudgement} puts that into a verdict.
 */
@NullMarked
package io.github.ringstate.study;

import org.jspecify.annotations.NullMarked;
