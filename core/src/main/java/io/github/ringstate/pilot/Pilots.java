package io.github.ringstate.pilot;

import io.github.ringstate.chance.RandomStream;

/** People who recover, each in a way of their own; {@link PilotGroups} makes some. */
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
}
