package io.github.ringstate.integrate;

/**
 * Hears of the instants between which a cubic through states and rates (Hermite) follows a
 * propagation: the two ends of each step, and more where the steps are long for a cubic.
 *
 * @param <V> the view of an instant
 */
@FunctionalInterface
public interface NodeListener<V> {

  /** What an instant is. */
  enum Node {
    /** The begin of a leg. */
    BEGIN,
    /** Within a step. */
    WITHIN,
    /** The end of a step. */
    END
  }

  /**
   * Hears of one.
   *
   * @param node what it is
   * @param view the instant; valid during the call only
   */
  void at(Node node, V view);
}
