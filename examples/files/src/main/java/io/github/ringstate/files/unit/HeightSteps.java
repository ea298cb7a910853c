package io.github.ringstate.files.unit;

import io.github.ringstate.files.text.Decimals;
import java.util.function.DoubleUnaryOperator;

/** Heights rounded for people, to the precision that the model deserves: coarser as they grow. */
public enum HeightSteps {
  /** 1 ft below 100 ft, 5 ft from there, 10 ft from 1000 ft. */
  FEET("ft", 100, 1000),
  /** 1 m below 300 m, 5 m from there, 10 m from 3000 m. */
  METRES("m", 300, 3000);

  private static final double MIDDLE = 5;
  private static final double COARSE = 10;

  private final String symbol;
  private final double middleFrom;
  private final double coarseFrom;

  HeightSteps(String symbol, double middleFrom, double coarseFrom) {
    this.symbol = symbol;
    this.middleFrom = middleFrom;
    this.coarseFrom = coarseFrom;
  }

  /**
   * Rounds a height.
   *
   * @param height the height, in the unit of these steps, not negative
   * @return the rounded height
   */
  public double rounded(double height) {
    return rounded(height, Math::rint);
  }

  /**
   * Rounds a height upwards.
   *
   * @param height the height, in the unit of these steps, not negative
   * @return the rounded height, not below the height
   */
  public double up(double height) {
    return rounded(height, value -> Decimals.up(value, 0));
  }

  /**
   * Rounds a height downwards.
   *
   * @param height the height, in the unit of these steps, not negative
   * @return the rounded height, not above the height
   */
  public double down(double height) {
    return rounded(height, value -> Decimals.down(value, 0));
  }

  /**
   * Rounds a height no finer than it is known.
   *
   * @param height the height, in the unit of these steps, not negative
   * @param within how finely it is known, in the same unit: half of a confidence interval
   * @return the height, rounded in the first of the steps 1, 2, 5, 10, 20, 50, ... that is no less,
   *     if that is coarser than by itself; in a finer one where nothing would be left
   */
  public double rounded(double height, double within) {
    double own = rounded(height);
    double step = step(within);
    while (step > 1 && Math.rint(height / step) == 0) {
      step = step(0.4 * step);
    }
    return step > ownStep(own) ? step * Math.rint(height / step) : own;
  }

  /**
   * The same upwards.
   *
   * @param height the height, in the unit of these steps, not negative
   * @param within how finely it is known, in the same unit
   * @return the rounded height, not below the height
   */
  public double up(double height, double within) {
    return known(height, within, value -> Decimals.up(value, 0));
  }

  /**
   * The same downwards.
   *
   * @param height the height, in the unit of these steps, not negative
   * @param within how finely it is known, in the same unit
   * @return the rounded height, not above the height
   */
  public double down(double height, double within) {
    return known(height, within, value -> Decimals.down(value, 0));
  }

  private double known(double height, double within, DoubleUnaryOperator rounding) {
    double own = rounded(height, rounding);
    double step = step(within);
    return step > ownStep(own) ? step * rounding.applyAsDouble(height / step) : own;
  }

  private double ownStep(double rounded) {
    if (rounded < middleFrom) {
      return 1;
    }
    return rounded < coarseFrom ? MIDDLE : COARSE;
  }

  /** The first of 1, 2, 5, 10, 20, 50, ... that is no less. */
  private static double step(double within) {
    double step = 1;
    for (int i = 0; step < within; i++) {
      step *= i % 3 == 1 ? 2.5 : 2;
    }
    return step;
  }

  private double rounded(double height, DoubleUnaryOperator rounding) {
    double whole = rounding.applyAsDouble(height);
    if (whole < middleFrom) {
      return whole;
    }
    double middle = MIDDLE * rounding.applyAsDouble(height / MIDDLE);
    return middle < coarseFrom ? middle : COARSE * rounding.applyAsDouble(height / COARSE);
  }

  /**
   * The steps in words.
   *
   * @return a part of a sentence
   */
  public String inWords() {
    return "to 1 "
        + symbol
        + " below "
        + Decimals.brief(middleFrom)
        + " "
        + symbol
        + ", to 5 "
        + symbol
        + " from there, to 10 "
        + symbol
        + " from "
        + Decimals.brief(coarseFrom)
        + " "
        + symbol;
  }
}
