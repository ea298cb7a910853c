package io.github.ringstate.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.encounter.Settling;
import io.github.ringstate.encounter.TailwindApproach;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.PowerSetting;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.study.EqualTerms.Way;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** What part of the lateral recovery's advantage is direction, and what part is power at once. */
class DirectionOrPowerTest {

  private static final ParameterSet STANDARD = ParameterSet.standard(EqualTerms.PARAMETERS);

  private static double loss(Encounter encounter) {
    return encounter.fly().altitudeLoss().orElse(Double.POSITIVE_INFINITY);
  }

  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void thePartsAddUpToTheAdvantage(Helicopter craft) {
    for (EntryKind kind : EntryKind.ALL) {
      Encounter base = Encounter.of(craft).withEntry(kind.standard());
      for (DirectionOrPower at : DirectionOrPower.fly(base, STANDARD, List.of(0.0, 1.0))) {
        double advantage = at.advantage().orElseThrow();
        double direction = at.byDirection().orElseThrow();
        double power = at.byPower().orElseThrow();
        assertEquals(advantage, direction + power, 1e-9);
        assertTrue(power > 0, "power at once saves " + power + " m after " + at);
      }
    }
  }

  /** The same recovery, written another way. */
  @Test
  void leaningAheadOnForwardsNumbersIsForward() {
    ParameterSet forward = STANDARD.with(EqualTerms.RATE, 12).with(EqualTerms.EXIT_AIRSPEED, 24);
    for (double delay : new double[] {0, 2}) {
      Encounter taught =
          Encounter.of(DemoCraft.TRAINER).withRecovery(new Forward()).withDelay(delay);
      Encounter equal = taught.withRecovery(new EqualTerms(Way.AHEAD, false, forward));
      assertEquals(loss(taught), loss(equal), 1e-6);
    }
  }

  /** Fast flights are within a tenth of a foot of precise ones. */
  @Test
  void theLossesAreThoseOfTheRecoveriesAlone() {
    Encounter base = Encounter.of(DemoCraft.TRAINER).withEntry(new Settling());
    DirectionOrPower at = DirectionOrPower.fly(base, STANDARD, List.of(1.0)).get(0);
    assertEquals(loss(base.withRecovery(new Forward())), at.forward(), 0.03);
    Encounter aside = base.withRecovery(new EqualTerms(Way.ASIDE, true, STANDARD));
    assertEquals(loss(aside), at.asideAtOnce(), 0.03);
    Encounter nowhere = base.withRecovery(new EqualTerms(Way.NOWHERE, true, STANDARD));
    assertEquals(loss(nowhere), at.levelAtOnce(), 0.03);
    assertEquals("nowhere-at-once", nowhere.recovery().name());
  }

  @Test
  void whatIsNotArrestedHasNoParts() {
    Encounter base = Encounter.of(DemoCraft.TRAINER).withEntry(new Settling());
    ParameterSet weak = STANDARD.with(PowerSetting.CLIMB_POWER, 50);
    DirectionOrPower at = DirectionOrPower.fly(base, weak, List.of(3.0)).get(0);
    assertTrue(Double.isInfinite(at.levelAtOnce()), at::toString);
    assertTrue(at.advantage().isPresent() == at.byPower().isPresent());
    assertThrows(
        IllegalArgumentException.class,
        () -> DirectionOrPower.fly(base.withHeight(60), STANDARD, List.of(1.0)));
    ParameterSet headwind =
        ParameterSet.standard(TailwindApproach.PARAMETERS).with(TailwindApproach.WIND, -20);
    assertEquals(
        List.of(),
        DirectionOrPower.fly(
            base.withEntry(new TailwindApproach(headwind)), STANDARD, List.of(1.0)));
  }

  @Test
  void everyOneOfTheRecoveriesHasANameOfItsOwn() {
    Set<String> names = new HashSet<>();
    for (Way way : Way.values()) {
      for (boolean atOnce : new boolean[] {true, false}) {
        names.add(new EqualTerms(way, atOnce, STANDARD).name());
      }
    }
    assertEquals(6, names.size(), names.toString());
    assertTrue(names.contains("ahead-at-once") && names.contains("nowhere-after-reduction"));
  }
}
