package io.github.ringstate.pilot;

import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/** Nothing: the attitude of the hover, the collective left where it is. */
public final class NoRecovery implements Recovery {

  private static final List<String> PHASES = List.of("nothing");

  private static final double RATE = Unit.DEGREE_PER_SECOND.toSi(10);

  /** Creates it. */
  public NoRecovery() {}

  @Override
  public String name() {
    return "none";
  }

  @Override
  public List<String> phases() {
    return PHASES;
  }

  @Override
  public void command(int phase, Cockpit seen, Controls controls) {
    controls.pitch(seen.hoverPitch(), RATE);
    controls.bank(Drift.bank(seen, seen.hoverBank()), RATE);
    controls.collective(seen.collective(), RATE);
  }

  @Override
  public double phaseEnd(int phase, Cockpit seen) {
    return -1;
  }
}
