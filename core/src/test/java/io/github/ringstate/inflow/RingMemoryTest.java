package io.github.ringstate.inflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.quantity.ParameterSet;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RingMemoryTest {

  private static final double ONSET = -0.5;
  private static final ParameterSet STANDARD = ParameterSet.standard(RingMemory.PARAMETERS);

  private final RingMemory memory = new RingMemory(STANDARD, ONSET);
  private final VortexRing ring = RingStateInflow.standard().ring();

  /** The level after some time at one axial speed, by Runge and Kutta's method of order four. */
  private static double after(RingMemory memory, double axial, double level, double time) {
    int steps = 4000;
    double h = time / steps;
    double s = level;
    for (int i = 0; i < steps; i++) {
      double k1 = memory.rate(axial, s, 1);
      double k2 = memory.rate(axial, s + h / 2 * k1, 1);
      double k3 = memory.rate(axial, s + h / 2 * k2, 1);
      double k4 = memory.rate(axial, s + h * k3, 1);
      s += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
    }
    return s;
  }

  private static double remembered(RingMemory memory, double axial, double level) {
    return axial - memory.excess(axial, level);
  }

  /** Source: the exact solution of dq/dt = (z - q) / tau. */
  @ParameterizedTest
  @CsvSource({"3.6, 1", "3.6, 4", "11, 5", "0.5, 0.8"})
  void aRingDissolvesExponentially(double tau, double time) {
    RingMemory slow = new RingMemory(STANDARD.with(RingMemory.DISSOLVING_TIME, tau), ONSET);
    double start = -1.2;
    double axial = -0.3;
    double first = remembered(slow, axial, start);
    double expected = axial + (first - axial) * Math.exp(-time / tau);
    double last = after(slow, axial, start, time);
    assertEquals(expected, remembered(slow, axial, last), 1e-9);
  }

  /** Source: the exact solution of ds/dt = (z + b - s) / t. */
  @ParameterizedTest
  @CsvSource({"0.2, 0.4", "0.05, 0.1", "1, 1.5"})
  void aRingIsRememberedExponentially(double deepening, double time) {
    RingMemory quick = new RingMemory(STANDARD.with(RingMemory.DEEPENING_TIME, deepening), ONSET);
    double start = -0.55;
    double axial = -1.2;
    double aim = axial + 0.02;
    double expected = aim + (start - aim) * Math.exp(-time / deepening);
    assertEquals(expected, after(quick, axial, start, time), 1e-9);
  }

  @Test
  void whileTheFlowDeepensTheRingIsThatOfTheFlow() {
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < 10_000; i++) {
      double level = -2 * random.nextDouble();
      double axial = level - random.nextDouble();
      assertEquals(axial, remembered(memory, axial, level));
      assertTrue(memory.rate(axial, level, random.nextDouble()) <= 0);
    }
  }

  /** A flow that stays as it is ends with the ring of that flow, from either side. */
  @ParameterizedTest
  @ValueSource(doubles = {-0.55, -0.8, -1.2, -1.6})
  void aSteadyFlowHasTheRingOfItsOwn(double axial) {
    double fromAbove = after(memory, axial, -0.51, 60);
    assertEquals(axial, remembered(memory, axial, fromAbove));
    double fromBelow = after(memory, axial, axial - 0.4, 60);
    assertEquals(axial, remembered(memory, axial, fromBelow), 1e-3);
    assertEquals(0, memory.rate(axial, axial, 1));
  }

  @Test
  void beforeThereWasARingNothingIsRemembered() {
    for (double axial = -3; axial < 3; axial += 0.0137) {
      assertEquals(0, memory.rate(axial, 0, 0), 0.0, "at " + axial);
      double remembered = remembered(memory, axial, 0);
      assertTrue(axial <= 0 ? remembered == axial : remembered >= 0, "at " + axial);
      assertEquals(axial < 0, memory.mayBegin(axial, 0));
    }
  }

  /** Half way up a step without a corner stands one half, whatever its form. */
  @Test
  void aRingFormsByItselfBetweenHalfTheOnsetAndTheOnset() {
    double full = memory.rate(-1, 0.75 * ONSET, 1);
    assertEquals(0.5 * full, memory.rate(-1, 0.75 * ONSET, 0), 1e-12);
    assertEquals(0, memory.rate(-1, 0.5 * ONSET, 0), 0.0);
    assertEquals(memory.rate(-1, ONSET, 1), memory.rate(-1, ONSET, 0));
    // where the feeding makes no difference, no ring has to be asked for
    assertTrue(memory.mayBegin(-1, 0.75 * ONSET));
    assertFalse(memory.mayBegin(-1, ONSET));
    assertFalse(memory.mayBegin(-0.4, -0.4));
  }

  @Test
  void theStandardRingLastsAndHasTheLossesOfTheHover() {
    assertTrue(ring.memory().lasting());
    assertEquals(RingMemory.SWITCH_WIDTH.standard(), ring.memory().switchWidth());
    assertEquals(1, ring.losses());
  }

  @Test
  void aRingThatHasDissolvedLeavesNothing() {
    double level = after(memory, 0.5, -1, 200);
    assertTrue(level <= 0 && level > -0.02, "level " + level);
  }

  @Test
  void theRateHasNoJump() {
    for (double level : List.of(0.0, -0.01, -0.3, -0.5, -1.0)) {
      double before = memory.rate(-2, level, 0.3);
      for (double axial = -2; axial < 1; axial += 1e-4) {
        double now = memory.rate(axial, level, 0.3);
        assertEquals(before, now, 1e-4 / 0.2 * 1.01, "at " + axial + " of " + level);
        before = now;
      }
    }
  }

  @Test
  void withoutATimeToDissolveNothingIsRemembered() {
    RingMemory none = new RingMemory(STANDARD.with(RingMemory.DISSOLVING_TIME, 0), ONSET);
    for (RingMemory forgetful : List.of(none, RingMemory.NONE)) {
      assertFalse(forgetful.lasting());
      assertEquals(0, forgetful.excess(-0.2, -1));
      assertEquals(0, forgetful.rate(-0.2, -1, 1));
      assertEquals(0, forgetful.rate(-1, -0.2, 1));
      assertFalse(forgetful.mayBegin(-1, 0));
    }
  }

  @Test
  void anOnsetThatIsNoDescentIsRefused() {
    String message =
        assertThrows(IllegalArgumentException.class, () -> new RingMemory(STANDARD, 0))
            .getMessage();
    assertTrue(message.contains("less than 0"), message);
    assertThrows(IllegalArgumentException.class, () -> new RingMemory(STANDARD, Double.NaN));
  }

  /** Source: the boundary of heave damping of the same model. */
  @Test
  void aRingFeedsItselfInsideTheBoundaryOnly() {
    RingStateInflow model = RingStateInflow.standard();
    HeaveDamping boundary = new HeaveDamping(model);
    int inside = 0;
    for (double x = 0; x < 1.3; x += 0.02) {
      for (double z = -2; z < 0.2; z += 0.02) {
        double feeding = ring.feeding(model, x, z);
        double margin = boundary.margin(x, z);
        assertTrue(feeding == 0 || margin < 0, x + " " + z);
        assertTrue(feeding == 1 || margin > -0.1, x + " " + z);
        inside += feeding > 0 ? 1 : 0;
      }
    }
    assertTrue(inside > 500, "inside " + inside);
  }

  /** What is the ring's own is what the model adds to momentum theory. */
  @Test
  void theRingsOwnPartIsWhatIsLeftWithoutMomentumTheory() {
    RingStateInflow model = RingStateInflow.standard();
    SmoothMomentum smooth = SmoothMomentum.standard();
    for (double x = 0; x < 1.3; x += 0.05) {
      for (double z = -3; z < 1; z += 0.05) {
        assertEquals(model.induced(x, z) - smooth.induced(x, z), ring.left(x) * ring.own(z), 1e-12);
      }
    }
  }

  @Test
  void publishedFitsHaveNoRingOfTheirOwn() {
    for (InflowModel fit :
        List.of(
            QuarticFit.standard(),
            new TwoSegmentFit(1.15),
            new CubicBridge(),
            SmoothMomentum.standard(),
            new MomentumTheory())) {
      assertSame(VortexRing.NONE, fit.ring(), fit.name());
      assertEquals(0, fit.ring().losses());
      assertFalse(fit.ring().memory().lasting());
    }
  }
}
