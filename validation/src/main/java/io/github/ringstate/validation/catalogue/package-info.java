/**
 * The catalogue of checks: one small class a {@link
 * io.github.ringstate.validation.catalogue.Topic}, each giving one section of the report.
 *
 * <p>A topic asks everything of a {@link io.github.ringstate.validation.catalogue.Models}: the
 * library's inflow models, boundaries, atmosphere, rotor, engine and craft, or spoilt ones in their
 * place. That is how it is shown that the checks can fail. What a check expects comes from the
 * sources in {@link io.github.ringstate.validation.catalogue.Sources}, from formulas written out
 * here a second time, from reference files, or from Hipparchus and EJML; never from the models
 * under test.
 */
@NullMarked
package io.github.ringstate.validation.catalogue;

import org.jspecify.annotations.NullMarked;
