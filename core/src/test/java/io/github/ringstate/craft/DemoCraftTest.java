package io.github.ringstate.craft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.rotor.Rotor;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

class DemoCraftTest {

  @Test
  void thereAreFourLightestFirstAndFoundByName() {
    assertEquals(
        List.of("trainer", "utility", "twin", "heavy"),
        DemoCraft.ALL.stream().map(Helicopter::name).toList());
    assertEquals(Optional.of(DemoCraft.TWIN), DemoCraft.named("twin"));
    assertEquals(Optional.empty(), DemoCraft.named("Twin"));
    for (int i = 1; i < DemoCraft.ALL.size(); i++) {
      assertTrue(DemoCraft.ALL.get(i).mass() > DemoCraft.ALL.get(i - 1).mass());
    }
  }

  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void aDemoCraftSaysThatItIsInvented(Helicopter craft) {
    assertTrue(craft.description().contains("Invented"), craft.description());
    assertTrue(craft.description().contains("no real type"), craft.description());
  }

  /**
   * Disc loading 100 to 450 N/m2, blade loading CT/s 0.06 to 0.10, tip speed 190 to 225 m/s: the
   * usual ranges (Leishman, Principles of Helicopter Aerodynamics, and others; from memory).
   */
  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void aDemoCraftLiesInTheUsualRanges(Helicopter craft) {
    double tipSpeed = craft.si(Rotor.TIP_SPEED);
    double bladeLoading =
        craft.discLoading() / (1.225 * tipSpeed * tipSpeed * craft.rotor().solidity());
    assertTrue(craft.discLoading() > 100 && craft.discLoading() < 450, "" + craft.discLoading());
    assertTrue(bladeLoading > 0.06 && bladeLoading < 0.10, "" + bladeLoading);
    assertTrue(tipSpeed >= 190 && tipSpeed <= 225, "" + tipSpeed);
  }

  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void everyMassFromLeastToGreatestMakesACraft(Helicopter craft) {
    double least = craft.numbers().get(Helicopter.MINIMUM_MASS);
    double greatest = craft.numbers().get(Helicopter.MAXIMUM_MASS);
    for (int i = 0; i <= 4; i++) {
      double mass = least + (greatest - least) * i / 4;
      assertEquals(mass, craft.with(Helicopter.MASS, mass).mass());
    }
  }
}
