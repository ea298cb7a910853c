package io.github.ringstate.integrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * The error of a step of order three falls with its third power, so that the step that would just
 * be let pass is longer by the cube root of what the error leaves. A factor of safety of 0.9 and
 * bounds on the change are customary (Hairer, Norsett and Wanner, Solving Ordinary Differential
 * Equations I, 1993, section II.4; from memory).
 */
class StepControlTest {

  private static StepControl started() {
    StepControl control = new StepControl();
    control.start();
    return control;
  }

  @Test
  void theNextStepIsLongerByTheCubeRootOfWhatTheErrorLeaves() {
    for (double error = 0.03; error < 90; error *= 1.1) {
      StepControl control = started();
      control.taken(0.1, error);
      double exact = 0.1 * 0.9 / Math.cbrt(error);
      assertEquals(exact, control.step(), 0.015 * exact, "after an error of " + error);
    }
  }

  @Test
  void itIsThreeTimesAsLongAtMostAndAFifthAtLeastAndNeverAboveHalfASecond() {
    StepControl control = started();
    assertEquals(0.02, control.step());
    control.taken(0.1, 1e-9);
    assertEquals(0.3, control.step(), 1e-15);
    control.taken(0.1, 0);
    assertEquals(0.3, control.step(), 1e-15);
    control.taken(0.3, 1e-9);
    assertEquals(0.5, control.step());
    control.taken(0.1, 1e9);
    assertEquals(0.02, control.step(), 1e-15);
    assertTrue(control.refuses(0.1, Double.POSITIVE_INFINITY));
    assertEquals(0.02, control.step(), 1e-15);
  }

  @Test
  void anErrorAboveTheToleranceIsRefusedUnlessTheStepIsTheLeast() {
    StepControl control = started();
    assertFalse(control.refuses(0.1, 1));
    assertEquals(0.02, control.step());
    assertTrue(control.refuses(0.1, 1.001));
    assertEquals(0.09, control.step(), 1e-3);
    assertTrue(control.refuses(1.001e-6, 8));
    assertEquals(1e-6, control.step());
    assertFalse(control.refuses(1e-6, 8));
    // and the one after it is no shorter, or time would stand still
    control.taken(1e-6, 8);
    assertEquals(1e-6, control.step());
    // what is not a number is tried again until the step is the least
    assertTrue(control.refuses(0.1, Double.NaN));
    assertEquals(0.02, control.step(), 1e-15);
    assertFalse(control.refuses(1e-6, Double.NaN));
  }

  /** Where a decay is known the step stays within what the method bears, 2.3 over its rate. */
  @Test
  void aKnownDecayBoundsTheStepUnlessAllIsSteady() {
    StepControl control = started();
    control.taken(0.1, 0.5);
    double free = control.step();
    assertFalse(control.steady());
    assertEquals(free, control.wanted(0));
    assertEquals(0.023, control.wanted(100), 1e-15);
    control.taken(0.1, 1e-3);
    assertFalse(control.steady());
    control.taken(0.1, 0.99e-3);
    assertTrue(control.steady());
    assertEquals(0.3, control.wanted(100), 1e-15);
    control.goOn(0.07, false);
    assertEquals(0.07, control.step());
    assertFalse(control.steady());
  }

  @Test
  void theExcessOfADecayIsWhatAStepDoesNotBear() {
    assertEquals(0, StepControl.excess(20, 0.1));
    assertEquals(0, StepControl.excess(23, 0.1), 1e-13);
    assertEquals(77, StepControl.excess(100, 0.1), 1e-12);
  }
}
