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
    return new PilotGroups.Alike(recovery);
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
    return new PilotGroups.WrongAtFirst(share, instinct, seconds, right);
  }

  /**
   * The same people, each within limits.
   *
   * @param limits values for {@link Limited#PARAMETERS}
   * @return the people
   */
  default Pilots within(ParameterSet limits) {
    return new PilotGroups.Within(this, limits);
  }
}
