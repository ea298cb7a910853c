package io.github.ringstate.pilot;

import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.Objects;
import java.util.Optional;

/**
 * When a pilot acts: a delay after a moment at which a clock starts.
 *
 * @param delay from the start of the clock to the first movement of the controls, s, 0 to 60
 * @param cue what starts the clock once the ring state is entered; empty if the crossing of the
 *     boundary itself does
 */
public record Recognition(double delay, Optional<Cue> cue) {

  /** The delay that is accepted. */
  public static final Quantity DELAY = new Quantity("delay", Unit.SECOND, 0, 60);

  /** Refuses null and checks the delay. */
  public Recognition {
    Objects.requireNonNull(cue, "cue");
    DELAY.check(delay);
  }

  /**
   * A delay that counts from the crossing of the boundary.
   *
   * @param delay the delay, s
   * @return the recognition
   */
  public static Recognition afterOnset(double delay) {
    return new Recognition(delay, Optional.empty());
  }

  /**
   * A delay that counts from a cue.
   *
   * @param cue what is noticed; one that is already there at onset is noticed then
   * @param delay the reaction time, s
   * @return the recognition
   */
  public static Recognition afterCue(Cue cue, double delay) {
    return new Recognition(delay, Optional.of(cue));
  }

  /**
   * The same clock with another delay.
   *
   * @param other the delay, s
   * @return the recognition
   */
  public Recognition withDelay(double other) {
    return new Recognition(other, cue);
  }

  /**
   * What the delay counts from, for people.
   *
   * @return a phrase
   */
  public String clock() {
    return cue.map(c -> "from the cue: " + c.name()).orElse("from the boundary");
  }

  /** The delay and its clock. */
  @Override
  public String toString() {
    return delay + " s " + clock() + cue.map(c -> " (" + c + ")").orElse("");
  }
}
