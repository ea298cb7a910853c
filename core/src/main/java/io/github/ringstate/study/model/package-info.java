/**
 * What the model itself does not know, and how far it moves the losses.
 *
 * <p>The numbers of the ring state were never measured. {@link
 * io.github.ringstate.study.model.OpenNumbers} says over which ranges they may lie, evenly and on
 * purpose widely. Most such sets contradict what is published: {@link
 * io.github.ringstate.study.model.PublishedRanges} holds, each with its source, the ranges of
 * onset, exit and reach of the boundary, of the power in vertical descent, of autorotation and of
 * the runaway of the sink. A set that misses one of them is rejected. What is left, {@link
 * io.github.ringstate.study.model.Accepted}, is a sample of the posterior distribution: of about
 * 800 draws one is kept. The standard model is not among them. It has 2 per cent more power at the
 * exit than the greater of the two published fits; the validation report shows it.
 *
 * <p>Two cautions. The standard numbers were chosen with the same published statements in view, so
 * that agreement with them is calibration and no proof. And all ranges are from memory of their
 * sources.
 *
 * <p>{@link io.github.ringstate.study.model.ModelSpread} flies the same pilots with each of the
 * models.
 */
@NullMarked
package io.github.ringstate.study.model;

import org.jspecify.annotations.NullMarked;
