package io.github.ringstate.validation.losses;

import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.BulkFlight;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.pilot.Technique;
import java.util.Arrays;
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
    List<Technique> techniques =
        Technique.ALL.stream()
            .filter(technique -> technique.purpose() != Technique.Purpose.NOTHING)
            .toList();
    double[][] release = losses(Physics.RELEASE.applied(base), techniques);
    double[][] today = losses(Physics.TODAY.applied(base), techniques);
    return techniques.stream()
        .map(
            technique ->
                new LossRows(
                    technique,
                    release[techniques.indexOf(technique)],
                    today[techniques.indexOf(technique)]))
        .toList();
  }

  private static double[][] losses(Encounter encounter, List<Technique> techniques) {
    double[][] losses = new double[techniques.size()][DELAYS.size()];
    for (double[] row : losses) {
      Arrays.fill(row, Double.NaN);
    }
    Approach approach = Approach.fly(encounter, Simulator.fast());
    BulkFlight flight = new BulkFlight(approach);
    for (int i = 0; i < losses.length; i++) {
      for (int j = 0; j < DELAYS.size(); j++) {
        Ending ending =
            flight.fly(
                techniques.get(i).standard(), encounter.recognition().withDelay(DELAYS.get(j)));
        if (ending == Ending.ARRESTED) {
          losses[i][j] = flight.altitudeLoss();
        }
      }
    }
    return losses;
  }
}
