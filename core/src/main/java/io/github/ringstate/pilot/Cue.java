package io.github.ringstate.pilot;

/**
 * Something by which a pilot may notice the ring state. A cue fires when its level rises through
 * zero. This is the interface to write for a cue of one's own; {@link Cues} has those that are
 * built in.
 *
 * <p>The level comes from what the cockpit shows or the body feels, not from the state of the craft
 * as it is. A cue should be a value, as a record is: encounters with equal cues are equal then.
 */
public interface Cue {

  /**
   * The cue's name.
   *
   * @return a few lower-case words
   */
  String name();

  /**
   * How strong the cue is. A function of nothing but what is seen: no clock of its own, no memory,
   * no chance; finite and continuous, for a cue that jumps is met in steps ever shorter.
   *
   * @param seen what can be known at this instant; not to be kept
   * @return negative below the threshold of notice, positive above; continuous along the flight
   */
  double level(Cockpit seen);
}
