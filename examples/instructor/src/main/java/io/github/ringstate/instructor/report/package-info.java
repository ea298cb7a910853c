/**
 * Reports: what a command found, and how it is written down.
 *
 * <p>A command makes a {@link io.github.ringstate.instructor.report.Report}. It holds the same
 * findings twice: as {@link io.github.ringstate.instructor.report.Table tables} of named columns
 * for machines, and as a {@link io.github.ringstate.instructor.report.Sheet} for people. A {@link
 * io.github.ringstate.instructor.report.ReportWriter} prints one of them; {@link
 * io.github.ringstate.instructor.report.Format} names the formats. A new format is a new writer, a
 * new finding is a new column.
 */
@NullMarked
package io.github.ringstate.instructor.report;

import org.jspecify.annotations.NullMarked;
