package io.github.ringstate.calibration;

import io.github.ringstate.craft.FittedModel;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.RecordedFlight;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.encounter.UnfinishedFlightException;
import io.github.ringstate.quantity.IncompatibleValuesException;
import io.github.ringstate.quantity.OutOfRangeException;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;

/** A demonstration flown by the model, with any numbers, and held against its readings. */
final class FlownDemonstration implements Observed {

  /** In place of the residuals of a flight that cannot be flown. */
  private static final double FAR_OFF = 1000;

  private static final double LOSS_STEP = 0.05;

  private final Demonstration demonstration;
  private final FittedModel model;
  private final Readings readings;
  private final PilotNumbers pilot;
  private final double start;

  /**
   * Prepares flights.
   *
   * @param demonstration the demonstration
   * @param model takes the numbers that are asked for
   * @param heightsToTheEnd whether heights and vertical speeds count after the onset too
   * @throws UnsupportedFitException if the model does not meet the ring state in this flight
   */
  FlownDemonstration(Demonstration demonstration, FittedModel model, boolean heightsToTheEnd) {
    this.demonstration = demonstration;
    this.model = model;
    readings = new Readings(demonstration, heightsToTheEnd);
    pilot = new PilotNumbers(demonstration);
    start = demonstration.found().onsetTime().value() - onset();
  }

  /** When the model meets the ring state with all numbers at their middle, s. */
  private double onset() {
    Approach approach;
    try {
      approach =
          Approach.fly(
              pilot.encounter(demonstration.flown().craft(), new double[pilot.size()], 0),
              Simulator.fast());
    } catch (NoSteadyFlightException unflown) {
      throw noOnset();
    }
    if (!approach.onset()) {
      throw noOnset();
    }
    return approach.time();
  }

  private UnsupportedFitException noOnset() {
    return new UnsupportedFitException(
        UnsupportedFitException.Reason.NO_ONSET, demonstration.name());
  }

  Demonstration demonstration() {
    return demonstration;
  }

  /** Whether another demonstration is of the same readings. */
  boolean isSameAs(FlownDemonstration other) {
    return readings.isSameAs(other.readings);
  }

  @Override
  public int numbers() {
    return pilot.size();
  }

  @Override
  public int size() {
    return readings.size();
  }

  @Override
  public Series[] series() {
    return readings.series();
  }

  @Override
  public Map<Series, Double> deviations() {
    return readings.deviations();
  }

  @Override
  public Map<Series, Whitening> whitenings(Map<Series, Double> deviations) {
    return readings.whitenings(deviations);
  }

  @Override
  public double[] residuals(
      double[] values, double[] normals, int from, Map<Series, Whitening> whitenings) {
    Optional<FlownTimes> flown = flown(values, normals, from, readings.times());
    if (flown.isPresent()) {
      return readings.residuals(flown.get(), whitenings);
    }
    double[] off = new double[readings.size()];
    Arrays.fill(off, FAR_OFF);
    return off;
  }

  private Optional<FlownTimes> flown(double[] values, double[] normals, int from, double... times) {
    double begun = start + pilot.later(normals, from);
    Simulator simulator = Simulator.fast();
    try {
      Helicopter craft = model.with(demonstration.flown().craft(), values);
      Encounter encounter = pilot.encounter(craft, normals, from);
      Approach approach = Approach.fly(encounter, simulator);
      double delay = pilot.delay(normals, from, begun + approach.time());
      RecordedFlight flight = encounter.withDelay(delay).record(approach, simulator);
      return Optional.of(new FlownTimes(flight.history(), craft, begun, times));
    } catch (OutOfRangeException
        | IncompatibleValuesException
        | NoSteadyFlightException
        | UnfinishedFlightException unflown) {
      return Optional.empty();
    }
  }

  /**
   * What the model loses from the time of the recorded onset, to be compared with what is recorded.
   *
   * @return height then less the lowest height up to some time after the recorded arrest, m; NaN if
   *     it cannot be flown
   */
  double loss(double[] values, double[] normals, int from) {
    double onset = demonstration.found().onsetTime().value();
    double arrest = demonstration.found().arrestTime().orElseThrow().value();
    double[] times = new double[1 + (int) ((2 * (arrest - onset) + 5) / LOSS_STEP)];
    for (int k = 0; k < times.length; k++) {
      times[k] = onset + k * LOSS_STEP;
    }
    return flown(values, normals, from, times).map(FlownTimes::loss).orElse(Double.NaN);
  }
}
