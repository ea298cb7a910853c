package io.github.ringstate.pilot;

import io.github.ringstate.chance.RandomStream;
import io.github.ringstate.quantity.ParameterSet;
import java.util.Objects;

/** The people that {@link Pilots} makes, as values. */
final class PilotGroups {

  private PilotGroups() {}

  record Alike(Recovery recovery) implements Pilots {

    Alike {
      Objects.requireNonNull(recovery, "recovery");
    }

    @Override
    public String name() {
      return recovery.name();
    }

    @Override
    public Recovery draw(RandomStream draws) {
      return recovery;
    }
  }

  record WrongAtFirst(double share, Recovery instinct, double seconds, Pilots right)
      implements Pilots {

    WrongAtFirst {
      Objects.requireNonNull(instinct, "instinct");
      Objects.requireNonNull(right, "right");
    }

    @Override
    public String name() {
      return right.name();
    }

    @Override
    public Recovery draw(RandomStream draws) {
      boolean wrong = draws.uniform() < share;
      Recovery then = right.draw(draws);
      return wrong ? Switched.after(instinct, seconds, then) : then;
    }
  }

  record Within(Pilots free, ParameterSet limits) implements Pilots {

    Within {
      limits = limits.only(Limited.PARAMETERS);
    }

    @Override
    public String name() {
      return free.name();
    }

    @Override
    public Recovery draw(RandomStream draws) {
      return new Limited(free.draw(draws), limits);
    }
  }
}
