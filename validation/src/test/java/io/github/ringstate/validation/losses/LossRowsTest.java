package io.github.ringstate.validation.losses;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LossRowsTest {

  private static final Air AIR = StandardAtmosphere.at(0);

  /**
   * Regression, against the table that the first release printed for the trainer and settling, at
   * 0, 1, 2, 3 and 4 s: to 1 ft below 100 ft and to 5 ft from there. The two techniques are still
   * flown as they were then.
   */
  @Test
  void thePhysicsOfTheReleaseGivesTheLossesOfTheRelease() {
    Encounter base = Encounter.of(DemoCraft.TRAINER).withEntry(EntryKind.SETTLING.standard());
    double[] lateral = {21, 40, 65, 105, 170};
    double[] tolerance = {0.6, 0.6, 0.6, 2.6, 2.6};
    for (LossRows row : LossRows.of(base)) {
      double[] feet = Arrays.stream(row.release()).map(Unit.FOOT::fromSi).toArray();
      if (row.technique().equals(Technique.LATERAL)) {
        for (int i = 0; i < feet.length; i++) {
          assertEquals(lateral[i], feet[i], tolerance[i], "at " + i + " s");
        }
      } else if (row.technique().equals(Technique.COLLECTIVE)) {
        assertArrayEquals(
            new double[] {13, 31, 55, 99}, Arrays.copyOf(feet, 4), 0.6, Arrays.toString(feet));
        assertEquals(Double.NaN, feet[4]);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.13, 0.30, 0.56})
  void theTakeOffPowerExceedsTheHoverByWhatIsToSpare(double spare) {
    for (Helicopter craft : DemoCraft.ALL) {
      SparePower power = SparePower.of(craft, AIR, spare);
      assertEquals(1 + spare, power.craft().takeOffPower(AIR) / power.hover(), 1e-12, craft.name());
      assertEquals(
          craft.continuousPower(AIR) / craft.takeOffPower(AIR),
          power.craft().continuousPower(AIR) / power.craft().takeOffPower(AIR),
          1e-12);
    }
  }
}
