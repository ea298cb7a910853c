package io.github.ringstate.study.run;

import io.github.ringstate.study.LossSpread;
import io.github.ringstate.study.Quantile;

/**
 * Altitude loss to reckon with on a run: how much half of the simulated pilots lose at most, and
 * how much most of them do.
 *
 * @param half loss of the half of the pilots, m; infinite where so many did not arrest the descent
 * @param most loss of the greater share that is asked for, m, not below that of the half; infinite
 *     where so many did not arrest the descent
 * @param mostLow lower end of the 95 per cent confidence interval of {@code most}, m; minus
 *     infinity if there are too few pilots for one
 * @param mostHigh upper end of it, m; infinite if there are too few pilots for one
 */
public record RunLoss(double half, double most, double mostLow, double mostHigh) {

  private static final double CONFIDENCE = 0.95;

  /** A descent that is not arrested, or a flight that cannot be begun. */
  public static final RunLoss OPEN =
      new RunLoss(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

  /** Checks the order. */
  public RunLoss {
    if (!(half <= most)) {
      throw new IllegalArgumentException(
          "half of the pilots cannot lose " + half + " m where most lose " + most + " m at most");
    }
  }

  /**
   * A loss that is known for certain.
   *
   * @param half loss of the half of the pilots, m
   * @param most loss of the greater share, m
   */
  public RunLoss(double half, double most) {
    this(half, most, most, most);
  }

  /**
   * Reads a spread.
   *
   * @param losses what the pilots lost; at least one sample
   * @param share the greater share, from 0.5 to below 1
   * @return the loss
   */
  public static RunLoss of(LossSpread losses, double share) {
    Quantile most = losses.quantile(share, CONFIDENCE);
    return new RunLoss(losses.loss(0.5), most.value(), most.low(), most.high());
  }

  /**
   * The loss of the greater share as a quantile.
   *
   * @param share the greater share, from 0.5 to below 1
   * @return the quantile with its interval, m
   */
  public Quantile quantile(double share) {
    return new Quantile(share, most, mostLow, mostHigh);
  }

  /**
   * The worse of two losses, for the half and for most of the pilots by themselves.
   *
   * @param other another loss
   * @return a loss that is nowhere below either
   */
  public RunLoss worse(RunLoss other) {
    return new RunLoss(
        Math.max(half, other.half),
        Math.max(most, other.most),
        Math.max(mostLow, other.mostLow),
        Math.max(mostHigh, other.mostHigh));
  }
}
