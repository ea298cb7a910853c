/**
 * Short programs that use the library, each run by a test.
 *
 * <p>{@link io.github.ringstate.embedding.FitRecordings} goes the way from readings to a fitted
 * number: it smooths recordings ({@link io.github.ringstate.recording.VerticalMotion}), finds the
 * encounters in them ({@link io.github.ringstate.recording.EncounterFinder}) and fits ({@link
 * io.github.ringstate.calibration.Calibration}). Its recordings are invented, written down by
 * {@link io.github.ringstate.recording.Instruments} five times a second with assumed errors and
 * with attitude and lever. What other instruments and rates tell of an encounter stands on the page
 * of {@link io.github.ringstate.recording}. What they are worth to a fit was not tried; the
 * standard deviations that come with a fit say it for the readings at hand.
 */
@NullMarked
package io.github.ringstate.embedding;

import org.jspecify.annotations.NullMarked;
