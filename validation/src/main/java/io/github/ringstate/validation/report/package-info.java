/**
 * The report: one page that opens from disk and prints, and its summary as a file of commas.
 *
 * <p>{@link io.github.ringstate.validation.report.ValidationReport} writes both.
 */
@NullMarked
package io.github.ringstate.validation.report;

import org.jspecify.annotations.NullMarked;
