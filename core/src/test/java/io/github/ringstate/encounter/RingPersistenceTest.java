package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.Wind;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.AtSeaLevel;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Leg;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.Propagators;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.RingMemory;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.TabulatedInflow;
import io.github.ringstate.integrate.Propagator;
import io.github.ringstate.integrate.Sampler;
import io.github.ringstate.pilot.CollectiveOnly;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.pilot.NoRecovery;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.quantity.Parameter;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What it means in flight that the ring outlasts its flow, and where it means nothing. */
class RingPersistenceTest {

  private static RingStateInflow with(Parameter parameter, double value) {
    return RingStateInflow.standard().with(parameter, value);
  }

  private static RingStateInflow dissolving(double time) {
    return with(RingMemory.DISSOLVING_TIME, time);
  }

  private static Encounter encounter(RingStateInflow inflow) {
    return Encounter.of(DemoCraft.TRAINER)
        .withEntry(new Settling())
        .withInflow(inflow, new HeaveDamping(inflow));
  }

  private static double loss(RingStateInflow inflow, Recovery recovery, double delay) {
    return encounter(inflow)
        .withRecovery(recovery)
        .withDelay(delay)
        .fly()
        .altitudeLoss()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Flights with gusts and manoeuvres of every kind that stay outside the boundary. */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void aFlightThatNeverCrossesTheOnsetIsTheSameToTheLastBit(boolean fast) {
    SplittableRandom random = new SplittableRandom(8);
    int outside = 0;
    for (int i = 0; i < (fast ? 60 : 30); i++) {
      Helicopter craft = DemoCraft.ALL.get(i % 4);
      double lowered = random.nextDouble(-0.6, 0.5);
      double forward = random.nextDouble(0, 25);
      double gusts = random.nextInt(2) * 20;
      long seed = random.nextLong();
      double[] slow = flown(craft, dissolving(11), fast, lowered, forward, gusts, seed);
      if (slow.length == 0) {
        continue;
      }
      outside++;
      double[] none = flown(craft, dissolving(0), fast, lowered, forward, gusts, seed);
      assertArrayEquals(none, slow);
      assertEquals(0, slow[State.RING], 0.0);
    }
    assertTrue(outside > (fast ? 15 : 7), "outside " + outside);
  }

  /** The end of a flight of eight seconds, or nothing if it crossed the boundary. */
  private static double[] flown(
      Helicopter craft,
      RingStateInflow model,
      boolean fast,
      double lowered,
      double forward,
      double gusts,
      long seed) {
    InflowModel inflow = fast ? new TabulatedInflow(model) : model;
    HeaveDamping boundary = new HeaveDamping(model);
    Disturbances disturbances =
        Disturbances.NONE.with(Disturbances.GUST_WIND, gusts).withSeed(seed);
    EquationsOfMotion motion =
        new EquationsOfMotion(
            craft,
            StandardAtmosphere.at(0),
            disturbances.wind(Wind.CALM, OptionalDouble.empty(), craft.rotor()),
            inflow,
            false);
    Trim trim = Trim.find(AtSeaLevel.with(inflow, craft), forward, 0);
    double collective = trim.collective() - Math.toRadians(lowered);
    motion.commandedBy(
        (seen, controls) -> {
          controls.pitch(trim.pitch(), 0.2);
          controls.bank(trim.bank(), 0.2);
          controls.collective(collective, 0.05);
        });
    boolean[] crossed = new boolean[1];
    double[] start = trim.state(motion, forward, 0);
    Propagator<String, Motion> looking = Propagators.dormandPrince(1e-6);
    looking.sample(
        new Sampler<>(
            0.005,
            m -> crossed[0] |= boundary.margin(m.edgewiseOverHover(), m.axialOverHover()) < 0.02));
    Leg.fly(looking, motion, 0, start, 8, List.of());
    if (crossed[0]) {
      return new double[0];
    }
    return Leg.fly(
            fast ? Propagators.fast() : Propagators.dormandPrince(1e-6),
            motion,
            0,
            start,
            8,
            List.of())
        .state();
  }

  /** While the flow deepens the ring is that of the flow. */
  @Test
  void anEntryAndAnUnrecoveredDescentAreThoseOfARingWithoutMemory() {
    for (Helicopter craft : DemoCraft.ALL) {
      List<Double> heights = new ArrayList<>();
      for (RingStateInflow inflow : List.of(dissolving(0), dissolving(11))) {
        Encounter flown =
            encounter(inflow).withCraft(craft).withRecovery(new NoRecovery()).withDelay(0);
        heights.addAll(Samples.of(flown, 0.5, Motion::height).subList(0, 24));
      }
      int half = heights.size() / 2;
      assertTrue(half > 20 && heights.get(half - 1) < -30, craft.name() + " " + half);
      for (int i = 0; i < half; i++) {
        assertEquals(heights.get(i), heights.get(half + i), 1e-6, craft.name());
      }
    }
  }

  /** A steady descent has the ring of its own flow, so it is where it was. */
  @Test
  void theDescentSettlesWhereItDoesWithoutMemory() {
    double[] sinks = new double[2];
    int i = 0;
    for (RingStateInflow inflow : List.of(dissolving(0), dissolving(3.6))) {
      EquationsOfMotion motion = AtSeaLevel.with(inflow, DemoCraft.TRAINER);
      Trim hover = Trim.find(motion, 0, 0);
      motion.commandedBy(
          (seen, controls) -> {
            controls.pitch(hover.pitch() + 0.05 * seen.forwardAirspeed(), 0.2);
            controls.bank(hover.bank() - 0.05 * seen.sidewaysAirspeed(), 0.2);
            controls.collective(hover.collective() - Math.toRadians(0.7), 0.05);
          });
      double[] end = Leg.fly(motion, 0, hover.state(motion, 0, 0), 90).state();
      sinks[i++] = end[State.SPEED_UP];
    }
    assertEquals(sinks[0], sinks[1], 1e-4);
    assertTrue(sinks[0] < -10, "sink " + sinks[0]);
  }

  /** A ring that outlasts the pull takes more of every way out, and the longer the more. */
  @Test
  void aLongerRingCostsMoreHeight() {
    for (Recovery recovery : List.of(new Forward(), new Lateral(), new CollectiveOnly())) {
      double before = 0;
      for (double time : new double[] {0, 1, 3.6, 11}) {
        double lost = loss(dissolving(time), recovery, 2);
        assertTrue(lost > before, recovery.name() + " " + time + ": " + lost);
        before = lost;
      }
    }
  }

  /** Losses that do not vanish leave less power to climb with. */
  @Test
  void theLossesOfTheRingCostHeightAndHardlyMoveTheOnset() {
    double before = 0;
    double onset = encounter(with(RingStateInflow.LOSSES, 0)).fly().onsetTime().orElseThrow();
    for (double losses : new double[] {0, 0.5, 1, 1.5}) {
      RingStateInflow inflow = with(RingStateInflow.LOSSES, losses);
      double lost = loss(inflow, new CollectiveOnly(), 1);
      assertTrue(lost > before, losses + ": " + lost);
      before = lost;
      assertEquals(onset, encounter(inflow).fly().onsetTime().orElseThrow(), 0.1);
    }
  }

  /** The width of the switch is numerical, so a flight hardly depends on it. */
  @Test
  void theWidthOfTheSwitchHardlyMatters() {
    for (Recovery recovery : List.of(new Forward(), new Lateral())) {
      double narrow = loss(with(RingMemory.SWITCH_WIDTH, 0.005), recovery, 2);
      double wide = loss(with(RingMemory.SWITCH_WIDTH, 0.04), recovery, 2);
      assertEquals(narrow, wide, 0.04 * narrow, recovery.name());
    }
  }

  @Test
  void fastAndPreciseFlightsRememberAlike() {
    RingStateInflow inflow = dissolving(6);
    for (Recovery recovery : List.of(new Forward(), new Lateral(), new CollectiveOnly())) {
      for (double delay : new double[] {0, 1, 2}) {
        Encounter precise = encounter(inflow).withRecovery(recovery).withDelay(delay);
        Encounter fast = precise.withInflow(new TabulatedInflow(inflow), precise.boundary());
        double exact = precise.fly().altitudeLoss().orElseThrow();
        Outcome quick = fast.fly(Simulator.fast(), null);
        assertEquals(exact, quick.altitudeLoss().orElseThrow(), 0.03, recovery.name() + delay);
        assertFalse(quick.happened(EventKind.GROUND));
      }
    }
  }
}
