package io.github.ringstate.integrate;

/**
 * A leg that was not propagated to its end, because steps became too short or too many: the rates
 * jump, or swing faster than can be followed.
 */
public final class UnfinishedLegException extends IllegalStateException {

  private static final long serialVersionUID = 1L;

  private final double time;
  private final long evaluations;

  /**
   * Creates the exception.
   *
   * @param time how far the propagation came
   * @param evaluations how often rates were worked out since the start
   */
  public UnfinishedLegException(double time, long evaluations) {
    super("not propagated beyond a time of " + time + " s in " + evaluations + " evaluations");
    this.time = time;
    this.evaluations = evaluations;
  }

  /**
   * How far the propagation came.
   *
   * @return the time
   */
  public double time() {
    return time;
  }

  /**
   * How often rates were worked out since the start.
   *
   * @return the number of evaluations
   */
  public long evaluations() {
    return evaluations;
  }
}
