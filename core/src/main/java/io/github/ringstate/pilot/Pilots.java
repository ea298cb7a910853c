package io.github.ringstate.pilot;

import io.github.ringstate.chance.RandomStream;
import io.github.ringstate.quantity.ParameterSet;

/** People who recover, each in a way of their own. */
public interface Pilots {

  /**
   * What they are briefed to do.
   *
   * @return the technique's name
   */
  String name();

  /**
   * One of them.
   *
   * @param draws random numbers of the sample
   * @return what this person does
   */
  Recovery draw(RandomStream draws);

  /**
   * People who all do the same.
   *
   * @param recovery what they do
   * @return the people
   */
  static Pilots all(Recovery recovery) {
    return new Pilots() {
      @Override
      public String name() {
        return recovery.name();
      }

      @Override
      public Recovery draw(RandomStream draws) {
        return recovery;
      }
    };
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
  static Pilots someWrongAtFirst(double share, Recovery instinct, double seconds, Pilots right) {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("a share of pilots lies between 0 and 1, not " + share);
    }
    Recognition.DELAY.check(seconds);
    return new Pilots() {
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
    };
  }

  /**
   * The same people, each within limits.
   *
   * @param limits values for {@link Limited#PARAMETERS}
   * @return the people
   */
  default Pilots within(ParameterSet limits) {
    Pilots free = this;
    return new Pilots() {
      @Override
      public String name() {
        return free.name();
      }

      @Override
      public Recovery draw(RandomStream draws) {
        return new Limited(free.draw(draws), limits);
      }
    };
  }
}
