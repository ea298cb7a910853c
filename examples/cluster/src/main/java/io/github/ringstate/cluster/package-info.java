/**
 * Sweeps on a cluster: the sweep file of the local tool, flown by Apache Spark.
 *
 * <p>{@link io.github.ringstate.cluster.SweepJob} is the program that {@code spark-submit} starts.
 * It reads the sweep file where it is started, cuts the range of indices into numbered {@link
 * io.github.ringstate.cluster.portion portions}, and sends the text of the file and the number of a
 * portion to whoever has a core free. What is flown follows from these two alone, so nothing else
 * travels, and a portion comes out the same to the last bit whoever flies it and how often.
 *
 * <p>Everything that makes a run safe rests on that. A portion is a file of its own, written under
 * another name and moved to its place in one step; what stands in its place is whole. An executor
 * that is killed leaves a draft, and the portion is flown again elsewhere. A slow executor is
 * overtaken by a second attempt; whichever comes second finds the place taken by the same bits.
 * When the program itself was killed, the next run lists the places that are filled and flies the
 * others. Spark's own committers of output are not used: they decide on a whole job, and a job that
 * lost its driver would begin anew.
 *
 * <p>Beside the rows stand a manifest, which says what is being flown and is held against every
 * later run into the same {@link io.github.ringstate.cluster.result folder}, and at the end a
 * {@link io.github.ringstate.cluster.summary summary} of altitude losses by quantiles, worked out
 * by Spark from the rows.
 *
 * <p>What comes out is a training aid computed from a simplified model, not flight guidance. The
 * aircraft's flight manual, the operator's procedures, local regulations and a licensed instructor
 * come first.
 */
@NullMarked
package io.github.ringstate.cluster;

import org.jspecify.annotations.NullMarked;
