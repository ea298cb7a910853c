/**
 * Sheets for paper and screen: one look for all of them.
 *
 * <p>A report that is {@link io.github.ringstate.instructor.sheet.Printable} gives a {@link
 * io.github.ringstate.instructor.sheet.Page}: the name of a template and what it fills in. {@link
 * io.github.ringstate.instructor.sheet.HtmlWriter} fills it, and everything that users typed is
 * escaped there; {@link io.github.ringstate.instructor.sheet.PdfWriter} prints the same page. The
 * look is {@code sheet.css}: black on white first, so that it survives a copier, with patterns and
 * words beside every shade.
 */
@NullMarked
package io.github.ringstate.instructor.sheet;

import org.jspecify.annotations.NullMarked;
