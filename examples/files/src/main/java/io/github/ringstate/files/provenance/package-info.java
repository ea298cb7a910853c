/**
 * Provenance: where a file came from, kept in it or beside it, so that it can be made again.
 *
 * <p>A {@link io.github.ringstate.files.provenance.Provenance} holds the build, the command, what
 * the command read, every option and setting as a value, and the units of the columns. It holds no
 * clock, no user, no machine and no folder but those that were typed, and nothing that does not
 * change the result, such as the number of threads; the same command gives the same bytes.
 *
 * <p>JSON has it as a field, HTML as a script of data, SVG as metadata, PNG as a text chunk, PDF as
 * a field of its information, Parquet as key-value metadata; beside text and CSV lies a {@link
 * io.github.ringstate.files.provenance.Sidecar}.
 */
@NullMarked
package io.github.ringstate.files.provenance;

import org.jspecify.annotations.NullMarked;
