package io.github.ringstate.pilot;

import io.github.ringstate.dynamics.Controls;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

/** A phase put together of its parts. */
record PlainPhase(String name, ControlLaw law, boolean ends, ToDoubleFunction<Cockpit> until)
    implements Phase {

  PlainPhase {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(law, "command");
    Objects.requireNonNull(until, "end");
  }

  @Override
  public void command(Cockpit seen, Controls controls) {
    law.command(seen, controls);
  }

  @Override
  public double end(Cockpit seen) {
    return until.applyAsDouble(seen);
  }
}
