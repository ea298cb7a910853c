/**
 * Studies: many encounters put together into something to read.
 *
 * <p>{@link io.github.ringstate.study.LossTable} holds altitude loss against delay and recovery for
 * a craft at several masses in several airs. Each {@link io.github.ringstate.study.LossCell} keeps
 * the encounter that was flown and its whole outcome, so that nothing is dropped on the way to a
 * table.
 *
 * <p>{@link io.github.ringstate.study.sweep} flies any number of settings against each other, row
 * by row.
 */
@NullMarked
package io.github.ringstate.study;

import org.jspecify.annotations.NullMarked;
