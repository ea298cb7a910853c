package io.github.ringstate.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Technique;
import java.util.function.DoubleFunction;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;

class SensitivityTest {

  private static final Encounter BASE = Encounter.of(DemoCraft.TRAINER).withDelay(1.5);

  /** Closed forms: the derivatives of sine, exponential and a rational function. */
  @Test
  void theDerivativesOfKnownFunctionsAreFound() {
    Sensitivity sine = Sensitivity.of(FastMath::sin, 0.7, 0.5);
    assertEquals(FastMath.cos(0.7), sine.value(), 1e-11);
    assertTrue(sine.error() < 1e-9, sine.toString());
    assertEquals(FastMath.exp(1.2), Sensitivity.of(FastMath::exp, 1.2, 0.4).value(), 1e-10);
    assertEquals(-0.25, Sensitivity.of(x -> 1 / x, 2, 0.5).value(), 1e-11);
    assertThrows(IllegalArgumentException.class, () -> Sensitivity.of(x -> x, 0, 0));
  }

  /** Noise of 1e-6 in the function: a plain difference over 1e-6 would be of no use. */
  @Test
  void theStepIsControlledWhereTheFunctionIsNoisy() {
    Sensitivity noisy =
        Sensitivity.of(x -> FastMath.sin(x) + 1e-6 * FastMath.sin(1e9 * x), 0.7, 0.5);
    assertEquals(FastMath.cos(0.7), noisy.value(), 1e-4);
    assertTrue(noisy.error() > 1e-8 && noisy.error() < 1e-3, noisy.toString());
  }

  /** Kinks elsewhere within the first step: only the shorter steps are of use. */
  @Test
  void kinksNearbyDoNotSpoilIt() {
    Sensitivity near = Sensitivity.of(x -> FastMath.sin(x) + Math.abs(x - 0.8), 0.7, 0.5);
    assertEquals(FastMath.cos(0.7) - 1, near.value(), 1e-6);
  }

  private static double central(DoubleFunction<Encounter> with, double at, double step) {
    Simulator simulator = Simulator.dormandPrince(1e-10);
    double above = with.apply(at + step).fly(simulator, null).altitudeLoss().orElseThrow();
    double below = with.apply(at - step).fly(simulator, null).altitudeLoss().orElseThrow();
    return (above - below) / (2 * step);
  }

  /** Second method: a user's own central differences. */
  @Test
  void theSensitivitiesOfTheLossAgreeWithCentralDifferences() {
    DoubleFunction<Encounter> delay = BASE::withDelay;
    Sensitivity ofDelay = Sensitivity.ofLoss(delay, Recognition.DELAY.within(0, 6), 1.5);
    assertEquals(central(delay, 1.5, 0.01), ofDelay.value(), 0.002 * ofDelay.value());
    assertTrue(ofDelay.error() < 0.01 * ofDelay.value(), ofDelay.toString());

    DoubleFunction<Encounter> mass =
        kilograms -> BASE.withCraft(DemoCraft.TRAINER.with(Helicopter.MASS, kilograms));
    Sensitivity ofMass = Sensitivity.ofLoss(mass, Helicopter.MASS.quantity().within(500, 650), 600);
    assertEquals(central(mass, 600, 0.5), ofMass.value(), 0.01 * Math.abs(ofMass.value()));

    DoubleFunction<Encounter> nose =
        degrees -> BASE.withRecovery(Technique.FORWARD.with(Forward.NOSE_DOWN, degrees));
    Sensitivity ofNose = Sensitivity.ofLoss(nose, Forward.NOSE_DOWN.quantity(), 15);
    assertEquals(central(nose, 15, 0.05), ofNose.value(), 0.01 * Math.abs(ofNose.value()));
  }

  @Test
  void aDescentThatIsNotArrestedHasNoSensitivity() {
    Encounter none = BASE.withRecovery(Technique.NONE.standard());
    assertThrows(
        IllegalArgumentException.class,
        () -> Sensitivity.ofLoss(none::withDelay, Recognition.DELAY, 1.5));
  }
}
