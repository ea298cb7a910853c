package io.github.ringstate.calibration;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.Fitted;
import io.github.ringstate.craft.FittedModel;
import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.FlightQuantity;
import io.github.ringstate.encounter.History;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.UncertainNumbers;
import io.github.ringstate.recording.Channel;
import io.github.ringstate.recording.Estimate;
import io.github.ringstate.recording.FoundEncounter;
import io.github.ringstate.recording.Movement;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The flight of a demonstration, put together once more from its parts. */
class FlownDemonstrationTest {

  private static final List<Parameter> TWO =
      List.of(RingStateInflow.EXIT_TOTAL, RingStateInflow.LOSSES);

  private static final FittedModel MODEL =
      Fitted.of(new UncertainNumbers(TWO, new double[2], new double[][] {{1, 0}, {0, 1}}), 1, 0.3);

  /** Those of the craft, so that its flight is the one by which the onsets are laid together. */
  private static final double[] VALUES =
      TWO.stream().mapToDouble(Flights.CRAFT.inflow().numbers()::get).toArray();

  private static Demonstration demonstration(Technique technique, long seed) {
    Encounter flown =
        Flights.encounter(Flights.CRAFT).withRecovery(technique.standard()).withDelay(1.2);
    return Flights.demonstration(flown, technique, Flights.SLOW, seed).orElseThrow();
  }

  private static final Demonstration ONE = demonstration(Technique.FORWARD, 5);
  private static final FlownDemonstration FLOWN = new FlownDemonstration(ONE, MODEL, true);
  private static final PilotNumbers PILOT = new PilotNumbers(ONE);
  private static final double ONSET = ONE.found().onsetTime().value();

  /** Its approach meets the ring state at the recorded onset, or so much later than that. */
  private static final Approach APPROACH =
      Approach.fly(PILOT.encounter(Flights.CRAFT, new double[PILOT.size()], 0), Simulator.fast());

  private static double[] normals(double later) {
    double[] normals = new double[3 + PILOT.size()];
    normals[3] = later / PILOT.later(new double[] {1}, 0);
    return normals;
  }

  private static History history(double[] normals, double later) {
    return PILOT
        .encounter(Flights.CRAFT, normals, 3)
        .withDelay(PILOT.delay(normals, 3, ONSET + later))
        .record(Simulator.fast())
        .history();
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.8, 0, 1.5})
  void theLossIsFromTheRecordedOnsetToTheLowestHeight(double later) {
    double[] normals = normals(later);
    History history = history(normals, later);
    double low =
        history.sampled(0.01).stream()
            .mapToDouble(instant -> instant.get(FlightQuantity.HEIGHT))
            .min()
            .orElseThrow();
    double high = history.at(APPROACH.time() - later).get(FlightQuantity.HEIGHT);
    assertEquals(high - low, FLOWN.loss(VALUES, normals, 3), 0.01);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.8, 0, 1.5})
  void theResidualsAreThoseOfItsReadings(double later) {
    double[] normals = normals(later);
    Readings readings = new Readings(ONE, true);
    FlownTimes times =
        new FlownTimes(
            history(normals, later),
            Flights.CRAFT,
            ONSET - APPROACH.time() + later,
            readings.times());
    Map<Series, Whitening> whitenings = FLOWN.whitenings(FLOWN.deviations());
    double[] white = FLOWN.residuals(VALUES, normals, 3, whitenings);
    assertArrayEquals(readings.residuals(times, whitenings), white, 1e-6);
    assertEquals(readings.size(), white.length);
    assertEquals(readings.size(), FLOWN.size());
    assertArrayEquals(readings.series(), FLOWN.series());
    assertEquals(readings.deviations(), FLOWN.deviations());
    assertEquals(readings.deviations().keySet(), whitenings.keySet());
    assertEquals(PILOT.size(), FLOWN.numbers());
  }

  /** Numbers of which no craft can be made. */
  @Test
  void whatCannotBeFlownIsFarOff() {
    double[] impossible = {VALUES[0], 99};
    double[] residuals = FLOWN.residuals(impossible, normals(0), 3, Map.of());
    double[] far = new double[FLOWN.size()];
    Arrays.fill(far, 1000);
    assertArrayEquals(far, residuals);
    assertTrue(Double.isNaN(FLOWN.loss(impossible, normals(0), 3)));
  }

  @Test
  void anotherRecordingIsNotTheSame() {
    FlownDemonstration other =
        new FlownDemonstration(demonstration(Technique.FORWARD, 6), MODEL, true);
    assertFalse(FLOWN.isSameAs(other));
    assertTrue(FLOWN.isSameAs(new FlownDemonstration(ONE, MODEL, true)));
  }

  /** A bank of more than the nose goes down is a lateral recovery. */
  @Test
  void aRecoveryIsTakenForWhatItLooksLike() {
    assertEquals(Technique.LATERAL, recovery(-0.2, 0.21));
    assertEquals(Technique.LATERAL, recovery(-0.2, -0.21));
    assertEquals(Technique.FORWARD, recovery(-0.2, 0.19));
    assertEquals(Technique.LATERAL, recovery(0.1, 0));
    FoundEncounter unseen = Flights.with(ONE.found(), Optional.empty(), ONE.found().arrestTime());
    assertEquals(Technique.FORWARD, Demonstration.recoveryOf(unseen));
  }

  private static Technique recovery(double pitch, double bank) {
    Movement moved = new Movement(Channel.PITCH, new Estimate(ONSET + 1, 0.2), pitch, bank, 0);
    return Demonstration.recoveryOf(
        Flights.with(ONE.found(), Optional.of(moved), ONE.found().arrestTime()));
  }
}
