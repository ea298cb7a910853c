package io.github.ringstate.embedding;

import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.pilot.Cockpit;
import io.github.ringstate.pilot.Recovery;
import java.util.List;

/** A recovery of one's own: nose down and bank together, then level. */
public final class OwnRecovery implements Recovery {

  @Override
  public String name() {
    return "diagonal";
  }

  @Override
  public List<String> phases() {
    return List.of("out", "level");
  }

  @Override
  public void command(int phase, Cockpit seen, Controls controls) {
    double lean = phase == 0 ? 0.2 : 0; // rad
    controls.pitch(seen.hoverPitch() - lean, 0.3);
    controls.bank(seen.hoverBank() + seen.tailPush() * lean, 0.3);
    controls.collective(seen.hoverCollective(), 0.1);
  }

  @Override
  public double phaseEnd(int phase, Cockpit seen) {
    return seen.forwardAirspeed() - 6; // m/s
  }
}
