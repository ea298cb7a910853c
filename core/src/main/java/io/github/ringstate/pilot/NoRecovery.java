package io.github.ringstate.pilot;

import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/** Nothing: the attitude of the hover, the collective left where it is. */
public record NoRecovery() implements Recovery {

  private static final Drift DRIFT = Drift.of(ParameterSet.standard(Drift.PARAMETERS));

  private static final double RATE = Unit.DEGREE_PER_SECOND.toSi(10);

  private static final List<Phase> PHASES = List.of(Phase.last("nothing", NoRecovery::command));

  @Override
  public String name() {
    return "none";
  }

  @Override
  public List<Phase> phases() {
    return PHASES;
  }

  private static void command(Cockpit seen, Controls controls) {
    controls.pitch(seen.hoverPitch(), RATE);
    controls.bank(DRIFT.bank(seen, seen.hoverBank()), RATE);
    controls.collective(seen.collective(), RATE);
  }
}
