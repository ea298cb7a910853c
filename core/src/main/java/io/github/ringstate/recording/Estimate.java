package io.github.ringstate.recording;

/**
 * A number found in a recording.
 *
 * @param value the number
 * @param deviation its standard deviation, in the same unit; not negative
 */
public record Estimate(double value, double deviation) {

  /** Checks that both are numbers. */
  public Estimate {
    if (!Double.isFinite(value) || !(deviation >= 0) || Double.isInfinite(deviation)) {
      throw new IllegalArgumentException(
          value + " with deviation " + deviation + " is no estimate");
    }
  }
}
