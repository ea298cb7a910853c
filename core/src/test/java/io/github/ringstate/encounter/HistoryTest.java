package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.OutOfRangeException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A flight that is kept: dense, at any time, and safe to keep. */
class HistoryTest {

  private static final Encounter ENCOUNTER =
      Encounter.of(DemoCraft.TRAINER).withDelay(1.5).withHeight(120);

  /** Samples of the streaming trajectory, by time. */
  private static Map<Double, double[]> streamed(Encounter encounter, Simulator simulator) {
    Map<Double, double[]> samples = new TreeMap<>();
    Trajectory trajectory =
        new Trajectory(
            0.25,
            (phase, motion) ->
                samples.put(
                    motion.time(),
                    new double[] {
                      motion.height(),
                      motion.verticalSpeed(),
                      motion.pitch(),
                      motion.inducedOverHover(),
                      motion.loadFactor(),
                      motion.power()
                    }));
    encounter.fly(simulator, trajectory);
    return samples;
  }

  private static void assertKept(Map<Double, double[]> samples, History history, double within) {
    samples.forEach(
        (time, sample) ->
            assertArrayEquals(sample, same(history.at(time)), within, "at " + time + " s"));
  }

  private static double[] same(Instant instant) {
    return new double[] {
      instant.get(FlightQuantity.HEIGHT),
      instant.get(FlightQuantity.VERTICAL_SPEED),
      instant.get(FlightQuantity.PITCH),
      instant.get(FlightQuantity.INDUCED_OVER_HOVER),
      instant.get(FlightQuantity.LOAD_FACTOR),
      instant.get(FlightQuantity.POWER)
    };
  }

  /** Second method: samples by the integrator's own interpolation, of order 7. */
  @Test
  void theHistoryOfAPreciseFlightIsThatOfItsIntegrator() {
    RecordedFlight flight = ENCOUNTER.record();
    assertEquals(ENCOUNTER.fly(), flight.outcome());
    Map<Double, double[]> samples = streamed(ENCOUNTER, Simulator.precise());
    assertTrue(samples.size() > 40, samples.size() + " samples");
    assertKept(samples, flight.history(), 1e-5);
  }

  /** The cubic is the method's own; a step that an event cuts short is stepped anew. */
  @Test
  void theHistoryOfAFastFlightIsItsDenseOutput() {
    RecordedFlight flight = ENCOUNTER.record(Simulator.fast());
    assertKept(streamed(ENCOUNTER, Simulator.fast()), flight.history(), 1e-4);
  }

  @Test
  void theHistoryEndsWhereTheFlightDoesAndNamesItsPhases() {
    RecordedFlight flight = ENCOUNTER.record();
    History history = flight.history();
    double onset = flight.outcome().onsetTime().orElseThrow();
    assertEquals(0, history.start());
    assertTrue(history.toString().startsWith("history of " + history.end() + " s in "));
    assertEquals(onset + flight.outcome().timeToArrest().orElseThrow(), history.end(), 1e-12);
    Instant last = history.at(history.end());
    assertEquals(0, last.get(FlightQuantity.VERTICAL_SPEED), 1e-6);
    assertEquals(
        flight.outcome().altitudeLoss().orElseThrow(), 120 - last.get(FlightQuantity.HEIGHT), 1e-6);
    assertEquals(120, history.at(onset).get(FlightQuantity.HEIGHT), 1e-9);
    List<String> phases = new ArrayList<>();
    for (Instant instant : history.steps()) {
      if (phases.isEmpty() || !phases.get(phases.size() - 1).equals(instant.phase())) {
        phases.add(instant.phase());
      }
    }
    assertEquals(List.of("entry", "unrecognised", "nose down", "power back", "climb away"), phases);
    assertThrows(OutOfRangeException.class, () -> history.at(history.end() + 0.1));
    assertThrows(OutOfRangeException.class, () -> history.at(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> history.sampled(0));
  }

  @Test
  void samplesAreEquallySpacedAndStepsAreInOrder() {
    History history = ENCOUNTER.record(Simulator.fast()).history();
    List<Instant> samples = history.sampled(0.5);
    for (int i = 0; i < samples.size() - 1; i++) {
      assertEquals(0.5 * i, samples.get(i).time(), 1e-12);
    }
    assertEquals(history.end(), samples.get(samples.size() - 1).time());
    List<Instant> steps = history.steps();
    for (int i = 1; i < steps.size(); i++) {
      assertTrue(steps.get(i).time() > steps.get(i - 1).time());
    }
    assertEquals(0, steps.get(0).time());
    assertEquals(history.end(), steps.get(steps.size() - 1).time());
  }

  @Test
  void aHistoryIsAValueAndAnotherFlightLeavesItAsItIs() {
    Simulator simulator = Simulator.fast();
    RecordedFlight first = ENCOUNTER.record(simulator);
    String before = first.history().at(3).toString();
    ENCOUNTER.withDelay(3).record(simulator);
    assertEquals(before, first.history().at(3).toString());
    assertEquals(first, ENCOUNTER.record(simulator));
    assertTrue(before.contains("height_m = ") && before.contains("pitch_rate_rad_per_s = "));
    assertFalse(first.toString().contains("@"), first.toString());
  }

  /** A trajectory is used again from the start of the next flight. */
  @Test
  void aTrajectoryThatIsUsedAgainBeginsAgain() {
    List<Double> times = new ArrayList<>();
    Trajectory trajectory = new Trajectory(0.5, (phase, motion) -> times.add(motion.time()));
    ENCOUNTER.fly(Simulator.fast(), trajectory);
    List<Double> first = List.copyOf(times);
    times.clear();
    ENCOUNTER.fly(Simulator.fast(), trajectory);
    assertEquals(first, times);
  }

  @Test
  void anEncounterThatNeverMeetsTheRingStateHasAHistoryToo() {
    RecordedFlight flight =
        ENCOUNTER.withEntry(EntryKind.SETTLING.with(Settling.WIND, 30)).record(Simulator.fast());
    assertEquals(Ending.NO_ONSET, flight.outcome().ending());
    assertEquals(60, flight.history().end(), 1e-9);
    assertEquals("entry", flight.history().at(59).phase());
  }

  /** What is told of one instant hangs together, and rates are the slopes of what they change. */
  @Test
  void quantitiesOfAnInstantHangTogether() {
    Encounter aside = ENCOUNTER.withRecovery(Technique.LATERAL.standard());
    RecordedFlight flight = aside.record();
    History history = flight.history();
    double time = flight.outcome().onsetTime().orElseThrow() + aside.delay() + 0.5;
    Instant at = history.at(time);
    double heading = at.get(FlightQuantity.HEADING);
    double north = at.get(FlightQuantity.SPEED_NORTH);
    double east = at.get(FlightQuantity.SPEED_EAST);
    assertTrue(Math.abs(north) > 0.1 && Math.abs(east) > 0.1, north + " " + east);
    assertEquals(
        north * Math.cos(heading) + east * Math.sin(heading),
        at.get(FlightQuantity.GROUND_SPEED),
        1e-9);
    assertSlope(history, time, FlightQuantity.NORTH, north);
    assertSlope(history, time, FlightQuantity.EAST, east);
    assertSlope(history, time, FlightQuantity.PITCH, at.get(FlightQuantity.PITCH_RATE));
    assertSlope(history, time, FlightQuantity.BANK, at.get(FlightQuantity.BANK_RATE));
    assertTrue(Math.abs(at.get(FlightQuantity.BANK_RATE)) > 0.01);
    // a ring at the onset is as deep as the descent, of some half a hover induced velocity
    assertTrue(at.get(FlightQuantity.RING) < -0.3, "ring " + at.get(FlightQuantity.RING));
    double hover = aside.craft().hoverInducedVelocity(aside.air());
    assertEquals(
        at.get(FlightQuantity.INDUCED) / hover, at.get(FlightQuantity.INDUCED_OVER_HOVER), 1e-12);
    double continuous = aside.craft().continuousPower(aside.air());
    double shaft = at.get(FlightQuantity.SHAFT_POWER);
    assertEquals(shaft / continuous, at.get(FlightQuantity.POWER), 1e-12);
    // the rotor's inertia takes up a part of what the engine gives
    assertEquals(shaft, at.get(FlightQuantity.ENGINE_POWER), 0.3 * shaft);
    // drag and a lean of some degrees are small beside the thrust
    double weight = aside.craft().weight();
    assertEquals(at.get(FlightQuantity.LOAD_FACTOR), at.get(FlightQuantity.THRUST) / weight, 0.1);
    // an indicator lags behind a sink that grows
    double indicated = at.get(FlightQuantity.INDICATED_VERTICAL_SPEED);
    assertTrue(indicated < -0.5 && indicated > at.get(FlightQuantity.VERTICAL_SPEED) - 3);
  }

  private static void assertSlope(
      History history, double time, FlightQuantity quantity, double slope) {
    double step = 0.01;
    double change = history.at(time + step).get(quantity) - history.at(time - step).get(quantity);
    assertEquals(slope, change / (2 * step), 0.01 + 0.02 * Math.abs(slope), quantity.label());
  }
}
