package io.github.ringstate.pilot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.chance.IndependentStream;
import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.quantity.ParameterSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class LimitedTest {

  /** Asks for what it is told to ask for. */
  private record Asking(double pitch, double bank, double rate, double collective)
      implements Recovery {

    @Override
    public String name() {
      return "asking";
    }

    @Override
    public List<Phase> phases() {
      return List.of(Phase.last("asking", this::command));
    }

    private void command(Cockpit seen, Controls controls) {
      controls.pitch(Math.toRadians(pitch), Math.toRadians(rate));
      controls.bank(Math.toRadians(bank), Math.toRadians(rate));
      controls.collective(collective, 0.1);
    }
  }

  private static final Map<String, Double> HOVER = Map.of("loadFactor", 1.0, "collective", 0.2);

  private static Phase first(Recovery recovery) {
    return recovery.phases().get(0);
  }

  private static Controls flown(Recovery recovery, Map<String, Double> shown) {
    Controls controls = new Controls();
    first(new Limited(recovery)).command(Seen.of(shown), controls);
    return controls;
  }

  private static boolean binds(Recovery recovery, Map<String, Double> shown) {
    return first(new Limited(recovery)).limitMargin(Seen.of(shown)) < 0;
  }

  @Test
  void attitudeStaysWithinItsLimits() {
    Controls flown = flown(new Asking(-40, 50, 10, 0.2), HOVER);
    assertEquals(Math.toRadians(-25), flown.pitch(), 1e-12);
    assertEquals(Math.toRadians(30), flown.bank(), 1e-12);
    assertTrue(binds(new Asking(-40, 0, 10, 0.2), HOVER));
    assertTrue(binds(new Asking(0, -31, 10, 0.2), HOVER));
    assertTrue(!binds(new Asking(-20, 20, 10, 0.2), HOVER));
  }

  @Test
  void ratesStayWithinTheirLimitWhereAnAttitudeIsAskedFor() {
    assertEquals(Math.toRadians(25), flown(new Asking(-20, 0, 60, 0.2), HOVER).pitchRate(), 1e-12);
    assertTrue(binds(new Asking(-20, 0, 60, 0.2), HOVER));
    assertTrue(!binds(new Asking(0, 0, 60, 0.2), HOVER), "no movement, nothing held back");
  }

  /** Two fatal training flights ended in an abrupt reversal of the cyclic: common practice. */
  @Test
  void theWayBackIsSlowerThanTheWayOut() {
    Asking level = new Asking(0, 0, 20, 0.2);
    Map<String, Double> banked =
        Map.of("loadFactor", 1.0, "collective", 0.2, "bank", Math.toRadians(20));
    assertEquals(Math.toRadians(12), flown(level, banked).bankRate(), 1e-12);
    assertTrue(binds(level, banked));
    Asking further = new Asking(0, 28, 20, 0.2);
    assertEquals(Math.toRadians(20), flown(further, banked).bankRate(), 1e-12);
    assertTrue(!binds(further, banked));
  }

  /** Where the hover itself has that attitude, leaving it is the way out and not back. */
  @Test
  void theWayBackLeadsToTheAttitudeOfTheHover() {
    Asking level = new Asking(0, 0, 20, 0.2);
    double angle = Math.toRadians(20);
    Map<String, Double> away =
        Map.of("loadFactor", 1.0, "collective", 0.2, "pitch", angle, "bank", -angle);
    Map<String, Double> hovering = new HashMap<>(away);
    hovering.putAll(Map.of("hoverPitch", angle, "hoverBank", -angle));
    assertEquals(Math.toRadians(12), flown(level, away).pitchRate(), 1e-12);
    assertEquals(Math.toRadians(12), flown(level, away).bankRate(), 1e-12);
    assertEquals(angle, flown(level, hovering).pitchRate(), 1e-12);
    assertEquals(angle, flown(level, hovering).bankRate(), 1e-12);
  }

  @Test
  void aMovementAgainstTheRateThatIsThereIsAReversal() {
    Map<String, Double> rolling =
        Map.of("loadFactor", 1.0, "collective", 0.2, "pitchRate", Math.toRadians(15));
    Asking down = new Asking(-20, 0, 20, 0.2);
    assertEquals(Math.toRadians(12), flown(down, rolling).pitchRate(), 1e-12);
    assertTrue(binds(down, rolling));
    assertTrue(!binds(new Asking(20, 0, 20, 0.2), rolling));
  }

  @Test
  void collectiveIsNotLoweredWhereThrustIsAtItsFloor() {
    Asking lower = new Asking(0, 0, 10, 0.05);
    assertEquals(0.05, flown(lower, HOVER).collective(), 1e-12);
    Map<String, Double> light = Map.of("loadFactor", 0.6, "collective", 0.2);
    assertEquals(0.2, flown(lower, light).collective(), 1e-12);
    assertTrue(binds(lower, light));
    assertTrue(!binds(lower, HOVER));
    assertTrue(!binds(new Asking(0, 0, 10, 0.25), light), "raising it is free");
    assertEquals(0.25, flown(new Asking(0, 0, 10, 0.25), light).collective(), 1e-12);
  }

  /** Continuous commands keep the right-hand side of the equations of motion continuous. */
  @Test
  void theLimitsComeInWithoutAJump() {
    SplittableRandom random = new SplittableRandom(4);
    for (int i = 0; i < 2000; i++) {
      double bank = random.nextDouble(-0.5, 0.5);
      double rate = random.nextDouble(-0.5, 0.5);
      double load = random.nextDouble(0.4, 1.2);
      Asking asking = new Asking(random.nextDouble(-40, 40), random.nextDouble(-50, 50), 40, 0.1);
      Controls here = flown(asking, shown(bank, rate, load));
      Controls beside = flown(asking, shown(bank + 1e-7, rate + 1e-7, load + 1e-7));
      assertEquals(here.bankRate(), beside.bankRate(), 1e-3);
      assertEquals(here.collective(), beside.collective(), 1e-5);
    }
  }

  private static Map<String, Double> shown(double bank, double rate, double load) {
    return Map.of(
        "bank",
        bank,
        "bankRate",
        rate,
        "pitch",
        bank,
        "pitchRate",
        rate,
        "loadFactor",
        load,
        "collective",
        0.2);
  }

  @Test
  void limitsMayBePutOnLimits() {
    ParameterSet narrow = ParameterSet.standard(Limited.PARAMETERS).with(Limited.BANK, 10);
    Recovery waiting =
        new FirstToFire(
            List.of(new FirstToFire.Branch(Cues.of("never", seen -> -1), new Lateral())));
    Recovery twice = new Limited(new Limited(waiting), narrow);
    assertTrue(first(twice).limitMargin(Seen.of(HOVER)) > 0);
    Recovery both = new Limited(new Limited(new Asking(0, 20, 10, 0.2)), narrow);
    assertTrue(first(both).limitMargin(Seen.of(HOVER)) < 0);
    Controls controls = new Controls();
    first(both).command(Seen.of(HOVER), controls);
    assertEquals(Math.toRadians(10), controls.bank(), 1e-12);
  }

  @Test
  void aLimitedRecoveryKeepsNameAndPhases() {
    Limited limited = new Limited(new Forward());
    assertEquals("forward", limited.name());
    assertEquals(
        new Forward().phases().stream().map(Phase::name).toList(),
        limited.phases().stream().map(Phase::name).toList());
    assertFalse(limited.phases().get(2).ends());
    assertInstanceOf(
        Limited.class,
        PilotGroups.within(Technique.FORWARD, ParameterSet.standard(Limited.PARAMETERS))
            .draw(new IndependentStream(1, 1)));
  }
}
