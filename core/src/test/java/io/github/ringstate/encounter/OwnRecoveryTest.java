package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.pilot.Cockpit;
import io.github.ringstate.pilot.Limited;
import io.github.ringstate.pilot.Recovery;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A technique of one's own takes one class of some twenty lines. */
class OwnRecoveryTest {

  /** Nose down and full continuous power at once; level at 10 m/s. */
  static final class PowerAndNose implements Recovery {
    @Override
    public String name() {
      return "power-and-nose";
    }

    @Override
    public List<String> phases() {
      return List.of("away", "level");
    }

    @Override
    public void command(int phase, Cockpit seen, Controls controls) {
      controls.pitch(seen.hoverPitch() - (phase == 0 ? 0.2 : 0), 0.2);
      controls.collective(seen.collective() + 0.08 * (1 - seen.power()), 0.1);
    }

    @Override
    public double phaseEnd(int phase, Cockpit seen) {
      return seen.forwardAirspeed() - 10;
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
}
