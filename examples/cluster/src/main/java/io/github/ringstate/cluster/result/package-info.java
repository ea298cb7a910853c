/**
 * The folder that a run fills, on whatever file system Hadoop reaches.
 *
 * <pre>
 * OUTPUT/sweep.manifest                        what is flown: version, points, portion, digest
 * OUTPUT/rows/portion-00000-1f0c9a3e.parquet   a portion that is whole
 * OUTPUT/rows/.portion-00001-1f0c9a3e....      the draft of one that is not
 * OUTPUT/summary.csv                           written last
 * </pre>
 *
 * <p>Every file is written as a draft, under a name that nobody else uses and readers of folders
 * pass over, forced to the disk, and moved to its place in one step. Only the place counts. The
 * name of a portion carries the fingerprint of the {@link
 * io.github.ringstate.cluster.result.Manifest}, so that a task which outlived its run cannot fill a
 * place of another.
 */
@NullMarked
package io.github.ringstate.cluster.result;

import org.jspecify.annotations.NullMarked;
