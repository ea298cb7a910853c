package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.pilot.Cockpit;
import io.github.ringstate.pilot.Limited;
import io.github.ringstate.pilot.Phase;
import io.github.ringstate.pilot.Recovery;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A technique of one's own takes one class of some twenty lines. */
class OwnRecoveryTest {

  /** Nose down and full continuous power at once; level at 10 m/s. */
  record PowerAndNose() implements Recovery {
    @Override
    public String name() {
      return "power-and-nose";
    }

    @Override
    public List<Phase> phases() {
      return List.of(
          Phase.of(
              "away",
              (seen, controls) -> command(0.2, seen, controls),
              seen -> seen.forwardAirspeed() - 10),
          Phase.last("level", (seen, controls) -> command(0, seen, controls)));
    }

    private static void command(double down, Cockpit seen, Controls controls) {
      controls.pitch(seen.hoverPitch() - down, 0.2);
      controls.collective(seen.collective() + 0.08 * (1 - seen.power()), 0.1);
    }
  }

  @Test
  void aRecoveryOfOnesOwnFliesLikeTheBuiltInOnes() {
    Encounter forward = Encounter.of(DemoCraft.TRAINER).withHeight(120);
    Encounter encounter = forward.withRecovery(new PowerAndNose());
    Outcome outcome = encounter.fly();
    assertEquals(Ending.ARRESTED, outcome.ending());
    double loss = outcome.altitudeLoss().orElseThrow();
    assertTrue(loss > 3 && loss < forward.fly().altitudeLoss().orElseThrow(), loss + " m");
    Outcome limited = encounter.withRecovery(new Limited(new PowerAndNose())).fly();
    assertEquals(Ending.ARRESTED, limited.ending());
  }

  /** A recovery whose list comes to an end, or that never comes to fly a phase. */
  record Broken(boolean circular) implements Recovery {
    @Override
    public String name() {
      return "broken";
    }

    @Override
    public List<Phase> phases() {
      return List.of(new Over(circular ? this : null));
    }
  }

  /** Is over at once. */
  record Over(@Nullable Recovery then) implements Phase {
    @Override
    public String name() {
      return "over";
    }

    @Override
    public void command(Cockpit seen, Controls controls) {}

    @Override
    public double end(Cockpit seen) {
      return 1;
    }

    @Override
    public List<Phase> instead(Cockpit seen) {
      return then == null ? List.of() : then.phases();
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aRecoveryThatLeadsNowhereIsNamed(boolean circular) {
    Encounter encounter = Encounter.of(DemoCraft.TRAINER).withRecovery(new Broken(circular));
    String message = assertThrows(IllegalStateException.class, encounter::fly).getMessage();
    assertTrue(message.startsWith("the recovery broken has "), message);
  }
}
