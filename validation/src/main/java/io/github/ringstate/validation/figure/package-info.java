/**
 * Figures: charts drawn as vector graphics, in a style that survives print and grey.
 *
 * <p>A {@link io.github.ringstate.validation.figure.Plot} puts lines, points, shaded regions and
 * labels on axes; lines differ by {@link io.github.ringstate.validation.figure.Line dash pattern}
 * first and by colour second. A {@link io.github.ringstate.validation.figure.Figure} adds a title
 * and a caption, which {@link io.github.ringstate.validation.figure.SvgDrawing} also writes into
 * the drawing for those who cannot see it.
 */
@NullMarked
package io.github.ringstate.validation.figure;

import org.jspecify.annotations.NullMarked;
