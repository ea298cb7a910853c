package io.github.ringstate.embedding;

import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.pilot.Cockpit;
import io.github.ringstate.pilot.Phase;
import io.github.ringstate.pilot.Recovery;
import java.util.List;

/** A recovery of one's own: nose down and bank together, then level. */
public record OwnRecovery() implements Recovery {

  @Override
  public String name() {
    return "diagonal";
  }

  @Override
  public List<Phase> phases() {
    return List.of(
        Phase.of(
            "out",
            (seen, controls) -> command(0.2, seen, controls), // rad
            seen -> seen.forwardAirspeed() - 6), // m/s
        Phase.last("level", (seen, controls) -> command(0, seen, controls)));
  }

  private static void command(double lean, Cockpit seen, Controls controls) {
    controls.pitch(seen.hoverPitch() - lean, 0.3);
    controls.bank(seen.hoverBank() + seen.tailPush() * lean, 0.3);
    controls.collective(seen.hoverCollective(), 0.1);
  }
}
