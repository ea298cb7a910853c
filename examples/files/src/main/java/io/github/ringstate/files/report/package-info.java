/**
 * Reports: what a command found, and how it is written down.
 *
 * <p>A command makes a {@link io.github.ringstate.files.report.Report}. It holds the same findings
 * twice: as {@link io.github.ringstate.files.report.Table tables} of named columns for machines,
 * and as a {@link io.github.ringstate.files.report.Sheet} for people. A {@link
 * io.github.ringstate.files.report.ReportWriter} prints one of them; {@link
 * io.github.ringstate.files.report.Format} names the formats. A new format is a new writer, a new
 * finding is a new column.
 */
@NullMarked
package io.github.ringstate.files.report;

import org.jspecify.annotations.NullMarked;
