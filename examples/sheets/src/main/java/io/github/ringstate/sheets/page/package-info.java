/**
 * Sheets for paper and screen: one look for all of them.
 *
 * <p>A report that is {@link io.github.ringstate.sheets.page.Printable} gives a {@link
 * io.github.ringstate.sheets.page.Page}: the name of a template and what it fills in. {@link
 * io.github.ringstate.sheets.page.HtmlWriter} fills it, and everything that users typed is escaped
 * there; {@link io.github.ringstate.sheets.page.PdfWriter} prints the same page. The look is {@code
 * sheet.css}: black on white first, so that it survives a copier, with patterns and words beside
 * every shade.
 */
@NullMarked
package io.github.ringstate.sheets.page;

import org.jspecify.annotations.NullMarked;
