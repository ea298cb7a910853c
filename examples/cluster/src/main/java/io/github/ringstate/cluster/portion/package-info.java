/**
 * Portions: the range of a sweep's indices cut into pieces, each flown by one task into one file.
 *
 * <p>A {@link io.github.ringstate.cluster.portion.Cut} says where the cuts are. A task gets a
 * {@link io.github.ringstate.cluster.portion.Portion} and the text of the sweep, which {@link
 * io.github.ringstate.cluster.portion.CarriedSweep} reads once in each process; {@link
 * io.github.ringstate.cluster.portion.PortionRows} flies the points and encodes the rows with the
 * local tool's writer of Parquet, so that the schema is one and the same.
 */
@NullMarked
package io.github.ringstate.cluster.portion;

import org.jspecify.annotations.NullMarked;
