package io.github.ringstate.quantity;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.util.FastMath;

/**
 * Values of some parameters that are known up to a normal distribution. It is normal in the logit
 * of the place within the parameter's range, ln((value - low) / (high - value)), so that no value
 * leaves its range however wide the distribution is.
 *
 * <p>Immutable.
 */
public final class UncertainNumbers {

  /** Part of the message if a covariance is none. */
  public static final String NO_COVARIANCE = "the covariance is not symmetric and positive";

  /** A value nearer to an end of its range than this part of it counts as so near. */
  private static final double NEAREST = 1e-6;

  private static final double SYMMETRIC = 1e-9;

  private final List<Parameter> parameters;
  private final double[] mean;
  private final double[][] covariance;
  private final double[][] root;

  /**
   * Creates the numbers.
   *
   * @param parameters the parameters; no two share a name
   * @param mean the mean of the logit of each
   * @param covariance the covariance of the logits, symmetric and positive definite
   * @throws IllegalArgumentException if the sizes differ or the covariance is none
   */
  public UncertainNumbers(List<Parameter> parameters, double[] mean, double[][] covariance) {
    this.parameters = List.copyOf(parameters);
    this.mean = mean.clone();
    int size = mean.length;
    if (parameters.size() != size
        || covariance.length != size
        || Arrays.stream(covariance).anyMatch(row -> row.length != size)
        || !Arrays.stream(mean).allMatch(Double::isFinite)) {
      throw new IllegalArgumentException(
          "each of " + parameters.size() + " numbers needs a mean, and a row of as many");
    }
    this.covariance = new double[size][];
    Arrays.setAll(this.covariance, i -> covariance[i].clone());
    root = root(this.covariance);
  }

  private static double[][] root(double[][] covariance) {
    if (covariance.length == 0) {
      return covariance;
    }
    // not a number is neither symmetric nor positive, but no comparison would tell
    if (!Arrays.stream(covariance).flatMapToDouble(Arrays::stream).allMatch(Double::isFinite)) {
      throw new IllegalArgumentException(NO_COVARIANCE);
    }
    try {
      RealMatrix matrix = MatrixUtils.createRealMatrix(covariance);
      return new CholeskyDecomposition(matrix, SYMMETRIC, 0).getL().getData();
    } catch (MathRuntimeException notPositive) {
      throw new IllegalArgumentException(NO_COVARIANCE, notPositive);
    }
  }

  /**
   * The logit of a value's place within its range.
   *
   * @param parameter the parameter
   * @param value the value, in the parameter's own unit and within its range
   * @return the logit, a pure number
   */
  public static double logit(Parameter parameter, double value) {
    Quantity range = parameter.quantity();
    range.check(value);
    double share = (value - range.low()) / (range.high() - range.low());
    double inside = Math.min(Math.max(share, NEAREST), 1 - NEAREST);
    return FastMath.log(inside / (1 - inside));
  }

  /**
   * The value of which a number is the logit.
   *
   * @param parameter the parameter
   * @param logit the logit
   * @return the value, in the parameter's own unit and within its range
   */
  public static double value(Parameter parameter, double logit) {
    Quantity range = parameter.quantity();
    double share = 1 / (1 + FastMath.exp(-logit));
    return Math.min(range.low() + share * (range.high() - range.low()), range.high());
  }

  /**
   * The parameters.
   *
   * @return an unmodifiable list
   */
  public List<Parameter> parameters() {
    return parameters;
  }

  /**
   * The means of the logits.
   *
   * @return a copy, in the order of {@link #parameters}
   */
  public double[] mean() {
    return mean.clone();
  }

  /**
   * The covariance of the logits.
   *
   * @return a copy
   */
  public double[][] covariance() {
    double[][] copy = new double[covariance.length][];
    Arrays.setAll(copy, i -> covariance[i].clone());
    return copy;
  }

  /**
   * The middle value of a number: as likely too low as too high.
   *
   * @param index the index of its parameter
   * @return the value, in the parameter's own unit
   */
  public double median(int index) {
    return value(parameters.get(index), mean[index]);
  }

  /**
   * A value some standard deviations from the middle.
   *
   * @param index the index of its parameter
   * @param deviations how many, positive above; -1.96 and 1.96 bound what 95 in 100 lie within
   * @return the value, in the parameter's own unit
   */
  public double quantile(int index, double deviations) {
    return value(parameters.get(index), mean[index] + deviations * deviation(index));
  }

  /**
   * The standard deviation of a logit.
   *
   * @param index the index of its parameter
   * @return the deviation, a pure number
   */
  public double deviation(int index) {
    return FastMath.sqrt(covariance[index][index]);
  }

  /**
   * The correlation of two logits.
   *
   * @param one the index of one parameter
   * @param other that of the other
   * @return the coefficient, -1 to 1
   */
  public double correlation(int one, int other) {
    return covariance[one][other] / (deviation(one) * deviation(other));
  }

  /**
   * Values drawn from the distribution.
   *
   * @param normals a standard normal number for each parameter
   * @return the values, each in its parameter's own unit
   */
  public double[] draw(double... normals) {
    double[] values = new double[mean.length];
    for (int i = 0; i < mean.length; i++) {
      double logit = mean[i];
      for (int j = 0; j <= i; j++) {
        logit += root[i][j] * normals[j];
      }
      values[i] = value(parameters.get(i), logit);
    }
    return values;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof UncertainNumbers numbers
        && parameters.equals(numbers.parameters)
        && Arrays.equals(mean, numbers.mean)
        && Arrays.deepEquals(covariance, numbers.covariance);
  }

  @Override
  public int hashCode() {
    return 31 * parameters.hashCode() + Arrays.hashCode(mean);
  }

  /** The parameters with their middle values. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < mean.length; i++) {
      text.append(i == 0 ? "" : ", ").append(parameters.get(i).key()).append(" about ");
      text.append(median(i));
    }
    return text.toString();
  }
}
