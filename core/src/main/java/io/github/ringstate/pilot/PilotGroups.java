package io.github.ringstate.pilot;

import io.github.ringstate.chance.RandomStream;
import io.github.ringstate.quantity.ParameterSet;
import java.util.Objects;

/** People who recover, put together of others, as values. */
public final class PilotGroups {

  private PilotGroups() {}

  /**
   * People who all do the same.
   *
   * @param recovery what they do
   * @return the people
   */
  public static Pilots all(Recovery recovery) {
    return new Alike(recovery);
  }

  /**
   * People of whom some follow a wrong first instinct for a while, before they do the right thing.
   *
   * @param share the share of those who do, 0 to 1
   * @param instinct what they do first
   * @param seconds for how long, s, 0 to 60
   * @param right what they do then, and the others at once
   * @return the people
   */
  public static Pilots someWrongAtFirst(
      double share, Recovery instinct, double seconds, Pilots right) {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("a share of pilots lies between 0 and 1, not " + share);
    }
    Recognition.DELAY.check(seconds);
    return new WrongAtFirst(share, instinct, seconds, right);
  }

  /**
   * The same people, each within limits.
   *
   * @param free the people
   * @param limits values for {@link Limited#PARAMETERS}
   * @return the people
   */
  public static Pilots within(Pilots free, ParameterSet limits) {
    return new Within(free, limits);
  }

  private record Alike(Recovery recovery) implements Pilots {

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

  private record WrongAtFirst(double share, Recovery instinct, double seconds, Pilots right)
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

  private record Within(Pilots free, ParameterSet limits) implements Pilots {

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
