/**
 * Summaries: altitude losses of a sweep by craft, entry, recovery and delay, worked out by Spark.
 *
 * <p>A quantile here is what it is in the library ({@link io.github.ringstate.study.Quantile}): the
 * least of the losses that at least so many of the sample do not exceed, a value that was flown and
 * not one in between. In SQL that is {@code percentile_disc}. As in {@link
 * io.github.ringstate.study.LossSpread}, a descent that was not arrested above the ground counts
 * with an infinite loss, and one that did not meet the ring state is not in the sample. It is
 * exact: losses are rounded to a thousandth of a foot, so a group has no more than a few million
 * different ones however many points it has, and these can be counted.
 */
@NullMarked
package io.github.ringstate.cluster.summary;

import org.jspecify.annotations.NullMarked;
