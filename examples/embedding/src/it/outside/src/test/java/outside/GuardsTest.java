package outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.BadCommandException;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.FlightLimits;
import io.github.ringstate.encounter.UnfinishedFlightException;
import io.github.ringstate.pilot.ControlLaw;
import io.github.ringstate.pilot.Phase;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.pilot.Switching;
import io.github.ringstate.quantity.NotFiniteException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Mistakes are refused with the name of the part that has them. */
class GuardsTest {

  private static final Encounter BASE =
      Encounter.of(DemoCraft.TRAINER)
          .withDelay(1)
          .withLimits(FlightLimits.STANDARD.with(FlightLimits.EVALUATIONS, 20_000));

  private record Law(String name, ControlLaw law) implements Recovery {
    @Override
    public List<Phase> phases() {
      return List.of(Phase.last("all along", law));
    }
  }

  @Test
  @Timeout(20)
  void aLawThatSwitchesIsGivenUpByNameAndFlownWhereItIsSmooth() {
    Law switching =
        new Law(
            "switching", (seen, controls) -> controls.collective(seen.power() < 1 ? 1 : 0, 0.1));
    UnfinishedFlightException given =
        assertThrows(UnfinishedFlightException.class, () -> BASE.withRecovery(switching).fly());
    assertTrue(given.getMessage().contains("switching"), given.getMessage());
    assertEquals("all along", given.phase());
    Law smooth =
        new Law(
            "smooth",
            (seen, controls) -> {
              controls.pitch(seen.hoverPitch() - 0.2, 0.2);
              controls.collective(0.3 * Switching.share(1 - seen.power(), 0.03), 0.1);
            });
    assertTrue(BASE.withRecovery(smooth).fly().onsetTime().isPresent());
  }

  @Test
  void whatIsNoNumberIsRefusedByName() {
    Encounter wind = BASE.withWind(new SeaBreeze(Double.NaN, 100, 50, 0));
    assertTrue(
        assertThrows(NotFiniteException.class, wind::fly).getMessage().contains("SeaBreeze"));
    Encounter law =
        BASE.withRecovery(new Law("dizzy", (seen, controls) -> controls.bank(Double.NaN, 0.1)));
    assertTrue(assertThrows(BadCommandException.class, law::fly).getMessage().contains("dizzy"));
  }

  @Test
  void degreesForRadiansAreRefusedByName() {
    Encounter degrees =
        BASE.withRecovery(new Law("in degrees", (seen, controls) -> controls.bank(15, 0.1)));
    assertTrue(
        assertThrows(BadCommandException.class, degrees::fly).getMessage().contains("in degrees"));
  }

  @Test
  void nullIsRefusedWhereItIsGiven() {
    assertThrows(NullPointerException.class, () -> BASE.withRecovery(null));
    assertThrows(NullPointerException.class, () -> BASE.withCraft(null));
  }
}
