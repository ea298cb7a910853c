package io.github.ringstate.analysis.best;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.Soak;
import io.github.ringstate.analysis.best.ControlHistory.Knot;
import io.github.ringstate.analysis.best.ControlHistory.Rates;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Settling;
import io.github.ringstate.pilot.Limited;
import io.github.ringstate.pilot.PowerSetting;
import io.github.ringstate.pilot.Seen;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class BestRecoveryTest {

  private static final Encounter ENCOUNTER = Encounter.of(DemoCraft.TRAINER).withDelay(1);

  private static final int STARTS = Soak.isWhole() ? 20 : 3;

  private static double[] start(long seed) {
    return new Random(seed).doubles(3L * BestRecovery.TIMES.size(), -1, 1).toArray();
  }

  /**
   * From random starts the searches end within a foot, and no technique does better. This craft has
   * a second optimum, banked to the other side, 2 ft higher.
   */
  @Test
  @Tag("soak")
  void searchesFromRandomStartsMeetAndNoTechniqueDoesBetter() {
    BestRecovery best =
        BestRecovery.find(
            ENCOUNTER,
            BestRecovery.ALL_POWER,
            1,
            LongStream.rangeClosed(1, STARTS).mapToObj(BestRecoveryTest::start).toList());
    double foot = Unit.FOOT.toSi(1);
    assertEquals(STARTS, best.ends().size());
    assertEquals(best.ends().get(0), best.ends().get(STARTS - 1), foot);
    double loss = best.loss();
    // fast flights are within 0.1 ft of precise ones
    assertEquals(best.ends().get(0), loss, 0.15 * foot);
    assertEquals(ENCOUNTER.withRecovery(new Limited(best.history())).fly(), best.outcome());
    for (Technique technique : Technique.ALL) {
      OptionalDouble excess = best.excess(technique);
      assertTrue(excess.isEmpty() || excess.getAsDouble() > 0, technique.name());
    }
    assertTrue(best.excess(Technique.LATERAL).isPresent());
  }

  /** A search of a few hundred flights. */
  private static BestRecovery shortSearch() {
    double[] start = new double[3 * BestRecovery.TIMES.size()];
    for (int i = 0; i < start.length; i += 3) {
      start[i] = i == 0 ? -0.5 : 0;
      start[i + 1] = 0.2;
      start[i + 2] = 0.6;
    }
    return BestRecovery.find(ENCOUNTER, 1, new DirectSearch(100, 1), List.of(start));
  }

  /**
   * What is known of a search however short: it ends no higher than it began, each end is a flight
   * that can be flown again, and the commands are parts of 25 and 30 deg of lean (the limits of
   * {@link Limited}) and of 6 deg of collective.
   */
  @Test
  void aShortSearchEndsAtAFlightNoWorseThanItsStart() {
    BestRecovery best = shortSearch();
    List<Knot> start = new ArrayList<>();
    for (double time : BestRecovery.TIMES) {
      start.add(
          new Knot(
              time,
              time == 0 ? -0.5 * Unit.DEGREE.toSi(25) : 0,
              0.2 * Unit.DEGREE.toSi(30),
              0.6 * Unit.DEGREE.toSi(6)));
    }
    ControlHistory begun = new ControlHistory(start, 1, best.history().rates());
    double before = ENCOUNTER.withRecovery(new Limited(begun)).fly().altitudeLoss().orElseThrow();
    // fast flights are within 0.1 ft of precise ones
    double near = 0.15 * Unit.FOOT.toSi(1);
    assertTrue(best.loss() < before + near, best.loss() + " from " + before);
    assertEquals(best.ends().get(0), best.loss(), near);
    assertEquals(ENCOUNTER.withRecovery(new Limited(best.history())).fly(), best.outcome());
    assertEquals(BestRecovery.TIMES.size(), best.history().knots().size());
    for (int i = 0; i < start.size(); i++) {
      Knot knot = best.history().knots().get(i);
      assertEquals(BestRecovery.TIMES.get(i), knot.time());
      assertTrue(Math.abs(knot.pitch()) <= Unit.DEGREE.toSi(25) + 1e-12);
      assertTrue(Math.abs(knot.bank()) <= Unit.DEGREE.toSi(30) + 1e-12);
      assertTrue(Math.abs(knot.collective()) <= Unit.DEGREE.toSi(6) + 1e-12);
    }
    Outcome lateral = ENCOUNTER.withRecovery(new Limited(Technique.LATERAL.standard())).fly();
    double its = lateral.altitudeLoss().orElseThrow();
    assertEquals(its, best.loss(Technique.LATERAL).orElseThrow());
    assertEquals(its - best.loss(), best.excess(Technique.LATERAL).orElseThrow(), 1e-12);
    assertTrue(best.loss(Technique.NONE).isEmpty());
    assertTrue(best.excess(Technique.NONE).isEmpty());
  }

  @Test
  void anEncounterThatDoesNotMeetTheRingStateHasNoBestRecovery() {
    Encounter cruise = ENCOUNTER.withEntry(EntryKind.SETTLING.with(Settling.WIND, 30));
    List<double[]> hover = List.of(new double[3 * BestRecovery.TIMES.size()]);
    DirectSearch search = new DirectSearch(100, 1);
    assertThrows(IllegalArgumentException.class, () -> BestRecovery.find(cruise, 1, search, hover));
  }

  /**
   * By hand: half way between knots, from the hover's attitude and collective; the lever no farther
   * than the gain of {@link PowerSetting} times the power that is left below the cap takes it.
   */
  @Test
  void theCommandsCountFromTheHoverAndTheLeverEndsAtTheCap() {
    ControlHistory history =
        new ControlHistory(
            List.of(new Knot(0, -0.2, 0.1, 0.02), new Knot(2, 0, 0.3, 0.04)),
            0.9,
            new Rates(0.5, 0.7, 0.3));
    Map<String, Double> shown = new HashMap<>();
    shown.put("sinceTechniqueBegan", 1.0);
    shown.put("hoverPitch", 0.03);
    shown.put("hoverBank", -0.04);
    shown.put("hoverCollective", 0.15);
    shown.put("collective", 0.14);
    shown.put("takeOffPower", 1.2);
    shown.put("power", 0.3);
    Controls controls = new Controls();
    history.phases().get(0).command(Seen.of(shown), controls);
    assertEquals(0.03 - 0.1, controls.pitch(), 1e-15);
    assertEquals(0.5, controls.pitchRate());
    assertEquals(-0.04 + 0.2, controls.bank(), 1e-15);
    assertEquals(0.7, controls.bankRate());
    assertEquals(0.15 + 0.03, controls.collective(), 1e-15);
    assertEquals(0.3, controls.collectiveRate());
    shown.put("power", 0.8);
    history.phases().get(0).command(Seen.of(shown), controls);
    double gain = PowerSetting.GAIN.standard();
    assertEquals(0.14 + gain * (0.9 - 0.8), controls.collective(), 1e-15);
  }
}
