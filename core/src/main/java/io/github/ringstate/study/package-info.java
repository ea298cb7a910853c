/**
 * Studies: many encounters put together into something to read.
 *
 * <p>{@link io.github.ringstate.study.LossTable} holds altitude loss against delay and recovery for
 * a craft at several masses in several airs. Each {@link io.github.ringstate.study.LossCell} keeps
 * the encounter that was flown and its whole outcome, so that nothing is dropped on the way to a
 * table. It says which outcomes are sensitive, see {@link io.github.ringstate.encounter.EdgeCheck}.
 *
 * <h2>Many pilots</h2>
 *
 * {@link io.github.ringstate.study.PilotStudy} flies one encounter with many people and gives a
 * {@link io.github.ringstate.study.LossSpread}: its {@link io.github.ringstate.study.Quantile}s and
 * {@link io.github.ringstate.study.Share}s have confidence intervals that assume no distribution. A
 * descent that was not arrested counts as an infinite loss. The pilots are spread evenly over all
 * in which they differ, in eight sets, and it is how the sets differ that the intervals are made
 * of; as {@link io.github.ringstate.chance.Drawing} may be asked for, each is drawn by itself.
 * {@link io.github.ringstate.study.Sampling} says how many pilots are enough, {@link
 * io.github.ringstate.study.Progress} hears how far it is and may end it. {@link
 * io.github.ringstate.study.Briefing} turns spreads into what a briefing needs.
 *
 * <p>What the interval of a quantile holds is chance in the sample alone. What is assumed about
 * people is not in it; what is fitted in the model is in {@link io.github.ringstate.study.model},
 * kept apart, so that two bands stand side by side: people alone, and people and model.
 *
 * <h2>Slow runs</h2>
 *
 * {@link io.github.ringstate.study.run} takes a slow run over the ground, as for photographs, apart
 * by track, and judges it.
 *
 * <h2>Sweeps</h2>
 *
 * {@link io.github.ringstate.study.sweep} flies any number of settings against each other, row by
 * row.
 */
@NullMarked
package io.github.ringstate.study;

import org.jspecify.annotations.NullMarked;
