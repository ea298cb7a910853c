/**
 * The library against the outside, for whoever has to decide whether to trust it.
 *
 * <p>The {@link io.github.ringstate.validation.catalogue catalogue} holds the models against
 * published values, closed forms and second methods, one small class a subject; each comparison is
 * a {@link io.github.ringstate.validation.check.Check} with its source, how its number was
 * obtained, its tolerance and the reason for it. {@link io.github.ringstate.validation.reference
 * Reference data} are files with their origin and an error budget. {@link
 * io.github.ringstate.validation.numerics} judges the integrators on problems with closed forms.
 * {@link io.github.ringstate.validation.report} writes the page that shows it all, from templates
 * and with the charts of the sheets.
 *
 * <p>The build runs the catalogue as a test, writes {@code target/report/index.html} and {@code
 * summary.csv}, and fails if a check fails. A check that does not agree stays in as a known
 * difference with an explanation and bounds; it fails when the difference leaves them, or vanishes.
 * Another test spoils one coefficient of each model by one per cent and sees the catalogue fail.
 *
 * <p>To add a check: ask it in its subject's class of the {@link
 * io.github.ringstate.validation.check.Source} that knows the answer, with what is expected taken
 * from outside the library. To add a subject: write a {@link
 * io.github.ringstate.validation.catalogue.Topic}, its texts in a file of its name, and list it in
 * {@link io.github.ringstate.validation.catalogue.Catalogue}.
 */
@NullMarked
package io.github.ringstate.validation;

import org.jspecify.annotations.NullMarked;
