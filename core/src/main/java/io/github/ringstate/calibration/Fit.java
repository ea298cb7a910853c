package io.github.ringstate.calibration;

import io.github.ringstate.craft.FittedModel;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.quantity.UncertainNumbers;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.util.FastMath;

/**
 * Numbers of a model fitted to recorded encounters.
 *
 * @param prior what was known of the numbers before
 * @param posterior what is known of them after
 * @param chiSquare chi-square of heights and vertical speeds per degree of freedom, over all
 *     encounters
 * @param encounters how the fitted model follows each
 * @param leftOut each encounter predicted from the others; empty if that was not asked for
 */
public record Fit(
    UncertainNumbers prior,
    UncertainNumbers posterior,
    double chiSquare,
    List<FittedEncounter> encounters,
    List<LeftOut> leftOut) {

  /**
   * Deviation of the logarithm of a loss for a form that shows in nothing, and by how much more for
   * each unit of strain. Chosen by trials with other forms.
   */
  private static final double UNSEEN_FORM = 0.1;

  private static final double BY_STRAIN = 0.06;

  /** Copies the lists. */
  public Fit {
    encounters = List.copyOf(encounters);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * The deviation of a number after the fit over that before.
   *
   * @param index the index of its parameter
   * @return the ratio, about 0 to 1
   */
  public double ratio(int index) {
    return posterior.deviation(index) / prior.deviation(index);
  }

  /**
   * What the recordings tell of a number.
   *
   * @param index the index of its parameter
   * @return the word for it
   */
  public Told told(int index) {
    return Told.by(ratio(index));
  }

  /**
   * How far the recordings have moved the numbers from what was known of them before: the square of
   * their shift in deviations of the prior, over how many numbers the recordings tell. About 1
   * where the form of the model is right, for then the shift is one draw from the prior; more where
   * the numbers stand in for another form.
   *
   * @return the ratio, 0 or more
   */
  public double strain() {
    return shift() / toldNumbers();
  }

  /**
   * How likely so great a strain is if the form of the model is right.
   *
   * @return the probability of this shift or a greater one, 0 to 1
   */
  public double agreement() {
    return 1 - new ChiSquaredDistribution(toldNumbers()).cumulativeProbability(shift());
  }

  /**
   * How far losses may be off for the form of the model, which no recording of prompt recoveries
   * tells for certain; see the page of the package for the trials behind it.
   *
   * @return the standard deviation of the logarithm of a loss, 0.1 to 1
   */
  public double formDeviation() {
    return Math.min(FastMath.hypot(UNSEEN_FORM, BY_STRAIN * strain()), 1);
  }

  /** The square of the shift of the numbers, in deviations of the prior. */
  private double shift() {
    RealVector moved =
        new ArrayRealVector(posterior.mean()).subtract(new ArrayRealVector(prior.mean()));
    return moved.dotProduct(before().operate(moved));
  }

  /** How many numbers the recordings tell: what they take of the prior's variances; 1 at least. */
  private double toldNumbers() {
    RealMatrix left = before().multiply(MatrixUtils.createRealMatrix(posterior.covariance()));
    return Math.max(1, prior.mean().length - left.getTrace());
  }

  private RealMatrix before() {
    return MatrixUtils.inverse(MatrixUtils.createRealMatrix(prior.covariance()));
  }

  /**
   * The craft with the fitted numbers and with what is left open of them.
   *
   * @param craft the craft whose numbers were fitted
   * @param recordings the recordings, by name
   * @param date the day of the fit, year-month-day, or a word that it is not known
   * @param revision the revision of the model
   * @return the craft
   */
  public Helicopter craft(Helicopter craft, List<String> recordings, String date, String revision) {
    FittedModel model =
        new FittedModel(
            craft.inflow().numbers(),
            posterior,
            encounters.size(),
            recordings,
            date,
            revision,
            formDeviation());
    return model.with(
        craft,
        IntStream.range(0, posterior.mean().length).mapToDouble(posterior::median).toArray());
  }
}
