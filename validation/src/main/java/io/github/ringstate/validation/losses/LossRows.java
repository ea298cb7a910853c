package io.github.ringstate.validation.losses;

import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.BulkFlight;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Technique;
import java.util.List;

/**
 * Altitude losses by one technique at each delay, by the physics of the release and by that of
 * today.
 *
 * @param technique the technique, with its standard numbers
 * @param release losses, m, in the order of {@link #DELAYS}; NaN where the descent was not arrested
 *     for good or the ring state not met
 * @param today the same by the physics of today
 */
@SuppressWarnings("ArrayRecordComponent") // filled once, and read by the page
public record LossRows(Technique technique, double[] release, double[] today) {

  /** From onset to the pilot's action, s. */
  public static final List<Double> DELAYS = List.of(0.0, 1.0, 2.0, 3.0, 4.0);

  /**
   * Flies all techniques but doing nothing.
   *
   * @param base the encounter as it is flown today; its recovery and delay play no part
   * @return a row for each technique
   */
  public static List<LossRows> of(Encounter base) {
    Encounter release = Physics.RELEASE.applied(base);
    Encounter today = Physics.TODAY.applied(base);
    BulkFlight before = new BulkFlight(Approach.fly(release, Simulator.fast()));
    BulkFlight now = new BulkFlight(Approach.fly(today, Simulator.fast()));
    return Technique.ALL.stream()
        .filter(technique -> technique.purpose() != Technique.Purpose.NOTHING)
        .map(
            technique ->
                new LossRows(
                    technique,
                    losses(before, technique, release.recognition()),
                    losses(now, technique, today.recognition())))
        .toList();
  }

  private static double[] losses(BulkFlight flight, Technique technique, Recognition recognition) {
    return DELAYS.stream()
        .mapToDouble(
            delay ->
                flight.fly(technique.standard(), recognition.withDelay(delay)) == Ending.ARRESTED
                    ? flight.altitudeLoss()
                    : Double.NaN)
        .toArray();
  }
}
