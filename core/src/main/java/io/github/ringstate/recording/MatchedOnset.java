package io.github.ringstate.recording;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.FlightQuantity;
import io.github.ringstate.encounter.History;

/**
 * A {@link RecordedOnset} that agrees with the descent up to the pilot's first movement. An
 * acceleration is known to half a metre per second squared from the readings around one moment; the
 * speed and the height a second or two later tell it better, for the controls are held so long.
 *
 * <p>The vertical acceleration at the onset is changed by least squares: what it was smoothed to,
 * and vertical speed and height lost at the movement, each by its deviation.
 */
public final class MatchedOnset {

  /** A movement sooner after the onset than this tells no more than the onset does, s. */
  private static final double SOONEST = 0.3;

  /** Step by which the slope of the flight is found, m/s2. */
  private static final double STEP = 0.1;

  /** The flight is nearly straight in the acceleration: so many steps of Gauss and Newton do. */
  private static final int STEPS = 3;

  private final Encounter encounter;
  private final RecordedOnset onset;
  private final double until;
  private final Estimate acceleration;
  private final Estimate speed;
  private final Estimate descended;

  private MatchedOnset(
      Encounter encounter, RecordedOnset onset, VerticalMotion motion, FoundEncounter found) {
    this.encounter = encounter;
    this.onset = onset;
    Recording recording = motion.recording();
    double begin = found.onsetTime().value();
    double moved = found.movement().orElseThrow().time().value();
    until = moved - begin;
    int first = Math.min(recording.size() - 1, recording.indexAt(begin));
    int last = Math.min(recording.size() - 1, recording.indexAt(moved));
    double early = moved - recording.time(last);
    double scale = motion.scale(first, last);
    acceleration = new Estimate(onset.up(), motion.accelerationDeviation(first));
    speed =
        new Estimate(
            motion.verticalSpeed(last) + early * motion.acceleration(last),
            scale * motion.verticalSpeedDeviation(last));
    descended =
        new Estimate(
            found.onsetHeight() - motion.height(last) - early * motion.verticalSpeed(last),
            scale * motion.heightDifferenceDeviation(first, last));
  }

  /**
   * Matches an onset.
   *
   * @param encounter craft, air, inflow and boundary; its entry, recovery and delay play no part
   * @param onset what was recorded at the onset
   * @param motion the smoothed recording
   * @param found the encounter in it
   * @return the onset with the vertical acceleration that agrees best; the same where no movement
   *     is seen, or it comes within 0.3 s
   * @throws io.github.ringstate.dynamics.NoSteadyFlightException if the craft cannot accelerate so
   */
  public static RecordedOnset of(
      Encounter encounter, RecordedOnset onset, VerticalMotion motion, FoundEncounter found) {
    if (!(found.delay().map(Estimate::value).orElse(0.0) >= SOONEST)) {
      return onset;
    }
    MatchedOnset match = new MatchedOnset(encounter, onset, motion, found);
    double up = onset.up();
    for (int i = 0; i < STEPS; i++) {
      double[] here = match.residuals(up);
      double[] there = match.residuals(up + STEP);
      double slopes = 0;
      double product = 0;
      for (int j = 0; j < here.length; j++) {
        double slope = (there[j] - here[j]) / STEP;
        slopes += slope * slope;
        product += slope * here[j];
      }
      up -= product / slopes;
    }
    return onset.withUp(up);
  }

  private double[] residuals(double up) {
    History flown = encounter.withEntry(onset.withUp(up)).withDelay(until).record().history();
    double low =
        flown.at(0).get(FlightQuantity.HEIGHT) - flown.at(until).get(FlightQuantity.HEIGHT);
    double sink = flown.at(until).get(FlightQuantity.VERTICAL_SPEED);
    return new double[] {
      (up - acceleration.value()) / acceleration.deviation(),
      (sink - speed.value()) / speed.deviation(),
      (low - descended.value()) / descended.deviation()
    };
  }
}
