package io.github.ringstate.analysis.sensitivity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.PowerLawWind;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.Wind;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.Cues;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.rotor.InflowLag;
import io.github.ringstate.study.Sensitivity;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Held against differences of losses, which share neither flights nor steps with it. */
class LossDerivativeTest {

  private static final Encounter BASE = Encounter.of(DemoCraft.TRAINER).withDelay(1.5);

  private static void agrees(Encounter encounter, Input input) {
    Sensitivity differences =
        Sensitivity.ofLoss(
            value -> input.change().with(encounter, value), input.range(), input.standard());
    double found = LossDerivative.of(encounter, input).orElseThrow();
    double let = 1e-5 * Math.abs(found) + 3 * differences.error();
    assertTrue(Math.abs(found) > 100 * let, input.name() + " tells nothing: " + found);
    assertEquals(differences.value(), found, let, input.name());
  }

  private static Input named(Iterable<Input> inputs, String name) {
    for (Input input : inputs) {
      if (input.name().equals(name)) {
        return input;
      }
    }
    throw new AssertionError(name);
  }

  @Test
  void aDelayMovesAllThatFollows() {
    agrees(BASE, Inputs.delay(BASE));
  }

  @Test
  void aNumberOfTheModelMovesOnsetAndAllThatFollows() {
    agrees(BASE, named(Inputs.model(), RingStateInflow.EXIT_TOTAL.name()));
  }

  @Test
  void aRecoveryOfManyPhasesIsFollowed() {
    Encounter glide = BASE.withRecovery(Technique.AUTOROTATION.standard());
    agrees(glide, Inputs.pressureAltitude(StandardAtmosphere.at(0)));
  }

  /** The wind turns the height of onset into a search, and the ground carries the craft. */
  @Test
  void aPilotWhoActsOnACueAboveGroundInShearIsFollowed() {
    Encounter shear =
        BASE.withEntry(EntryKind.STEEP.standard())
            .withRecovery(Technique.LATERAL.standard())
            .withHeight(Unit.FOOT.toSi(300))
            .withWind(PowerLawWind.of(new Wind(4, 0), PowerLawWind.EXPONENT_OPEN_LAND))
            .withRecognition(Recognition.afterCue(Cues.standard(2), 0.8));
    agrees(shear, named(Inputs.craft(shear.craft()), InflowLag.APPARENT_MASS.name()));
  }

  @Test
  void aNumberThatPlaysNoPartHasNone() {
    Input unused = named(Inputs.craft(BASE.craft()), Helicopter.MINIMUM_MASS.name());
    assertEquals(OptionalDouble.of(0), LossDerivative.of(BASE, unused));
  }

  /** A recovery that changes with the sign of a number has no derivative at zero. */
  @Test
  void neighboursThatGoDifferentWaysHaveNone() {
    Quantity sign = new Quantity("sign", Unit.SECOND, -1, 1);
    Input turned =
        new Input(
            "pilot",
            sign,
            0,
            (base, value) ->
                base.withRecovery(
                    (value > 0 ? Technique.FORWARD : Technique.AUTOROTATION).standard()));
    assertEquals(OptionalDouble.empty(), LossDerivative.of(BASE, turned));
  }

  @Test
  void aNumberAtTheEndOfItsRangeHasNone() {
    Input delay = Inputs.delay(BASE.withDelay(0));
    assertEquals(OptionalDouble.empty(), LossDerivative.of(BASE.withDelay(0), delay));
  }
}
