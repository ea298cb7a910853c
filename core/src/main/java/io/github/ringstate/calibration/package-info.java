/**
 * Fits the model to recorded flights: which numbers of the ring state and of the craft explain the
 * encounters that were flown, and what the recordings leave open of them.
 *
 * <p>Prompt recoveries at height are all that can be flown. {@link
 * io.github.ringstate.calibration.Calibration} takes several of them, found by {@link
 * io.github.ringstate.recording.EncounterFinder}, as {@link
 * io.github.ringstate.calibration.Demonstration}s: with the entry and the recovery that were flown.
 * What comes out, {@link io.github.ringstate.calibration.Fit}, makes a craft that knows how well it
 * is known ({@link io.github.ringstate.craft.FittedModel}), and every table of such a craft has
 * that in its bands.
 *
 * <h2>How it fits</h2>
 *
 * It is least squares on the output of the model. The raw readings, from 8 s before the onset to
 * 1.5 s after the arrest, are held against the model's flight: height, vertical speed, the two
 * components of the ground speed and, where they are recorded, pitch, bank and lever. Raw ones,
 * since the errors of smoothed readings hang together. Those of a height do so too: its slow error
 * and its unknown level stand in the covariance of the readings. How uncertain each instrument is,
 * is found again from the residuals, and readings far off count less.
 *
 * <p>How a flight was flown is not known either: when it began, wind, speeds, angle and power of
 * the entry, when the pilot moved, and all numbers of the recovery that vary between people. They
 * are estimated with the others, for each encounter, so that a pilot's haste is not taken for a
 * craft's strength. Attitude and lever, where they are recorded, tell most of them.
 *
 * <p>Every unknown has a prior: numbers of the ring state by the models that meet the published
 * ranges ({@link io.github.ringstate.calibration.Prior}), numbers of the craft about what they are
 * thought to be, numbers of pilots as people vary. What the recordings do not tell stays as wide as
 * it was, and {@link io.github.ringstate.calibration.Told} says so.
 *
 * <p>A number that matters only in part of a flight has a steep slope on one side of the best fit
 * and none on the other. Bands by the slopes at the best fit alone are then too narrow, so slopes
 * are taken across what is left open. Where chi-square is above 1, the readings lose weight in the
 * bands by as much.
 *
 * <p>Squares of flights have several minima: a pilot's haste and a craft's strength may stand in
 * for each other. The search begins with each encounter by itself, and again from the middle of the
 * numbers asked for. Of the first 66 round trips with three numbers and two encounters two still
 * end in a wrong minimum, 7 and 11 deviations off, with a chi-square of 1.2; in one of them the
 * errors leave open whether the boundary was crossed at all. More encounters make it rarer, and
 * {@link io.github.ringstate.calibration.LeftOut} may show it.
 *
 * <h2>What it does not know</h2>
 *
 * <p>The form of the model. A pilot who does something that no technique describes, or a craft that
 * the equations do not describe, may show in chi-square, and beyond 1.5 a fit is refused; it need
 * not. Of fifteen fits of the ring state, each to three prompt recoveries computed with another
 * inflow, some in gusts, three had a chi-square below 1.5:
 *
 * <table>
 * <caption>Losses of the fits over those of the craft that was flown, standard pilot</caption>
 * <tr><th>the craft's inflow</th><th>fits</th><th>chi-square</th><th>forward, 3 s</th><th>lateral,
 *     3 s</th><th>forward, longest delay flown (0.9 to 1.5 s)</th></tr>
 * <tr><td>momentum theory alone</td><td>7</td><td>1.6 to 3.9</td><td>1.27 to 1.35</td><td>1.66 to
 *     1.71</td><td>1.25 to 1.37</td></tr>
 * <tr><td>bounded by heave stability</td><td>8</td><td>1.1 to 2.6</td><td>1.12 to 1.21</td><td>1.13 to
 *     1.20</td><td>1.15 to 1.30</td></tr>
 * </table>
 *
 * <p>They are as far off at the delays that were flown as at late ones: a pilot's haste and a
 * craft's strength look alike, and the fit gave to the pilots what was the craft's. The ratio
 * hardly depends on the delay. So every band of a fitted craft has a factor on the loss for the
 * form of the model, {@link io.github.ringstate.craft.FittedModel#formFactor}: its logarithm is
 * normal with the root mean square of the trials, 0.3, to either side. With it the bands hold what
 * those craft lose at 3 s; {@link io.github.ringstate.calibration.LossBand#ofNumbers} leaves it out
 * and misses.
 *
 * <p>What that costs: fourteen fits to a craft of the right form, drawn from the prior, have bands
 * by the numbers alone of some 6 m about 71 m at 3 s (forward), of which 12 hold the truth (13
 * lateral). With the factor they reach from 39 to 128 m, and all hold it. Bands so wide are what
 * prompt recoveries support while the form is in doubt.
 *
 * <p>Numbers of the craft that are not fitted count as exact.
 *
 * <p>{@link io.github.ringstate.calibration.UnsupportedFitException} says why recordings cannot
 * support a fit.
 */
@NullMarked
package io.github.ringstate.calibration;

import org.jspecify.annotations.NullMarked;
