/**
 * Row files: rows of a sweep as CSV or Parquet, written chunk by chunk so that a run which is
 * killed at any instant can go on.
 *
 * <p>Beside the file {@code out.csv} that is asked for, a run keeps two others: {@code
 * out.csv.part} with the rows so far, and {@code out.csv.journal} with what was asked for and one
 * line for each chunk that is whole. A chunk is appended to the rows and forced to the disk; then
 * its line is appended to the journal and forced to the disk. Whatever stands in the rows behind
 * the last line of the journal is cut off when the run goes on. At the end the rows are moved to
 * their place in one step and the journal goes.
 *
 * <p>A journal holds the digest of the sweep's text, the version of the tool, the format and the
 * number of points; a run that differs in any of them does not go on from it. Every line ends in a
 * checksum, and each chunk's checksum is held against the rows before anything is appended.
 *
 * <p>{@link io.github.ringstate.files.row.RowFormat} is all that a format has to do. Parquet is
 * written here and not by a library: those on hand for Java 17 bring much of Hadoop along and
 * cannot go on with a file that was left unfinished, while the part of the format that plain
 * columns need is small.
 */
@NullMarked
package io.github.ringstate.files.row;

import org.jspecify.annotations.NullMarked;
