package io.github.ringstate.air;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import org.hipparchus.util.FastMath;

/**
 * A level wind whose speed grows with a power of the height above ground, its direction being the
 * same at all heights: V(h) = V(r) (h / r)^p.
 *
 * <p>The law is an empirical fit to the surface layer in neutral air. It is held constant below the
 * lowest height, where it would fall to zero with an infinite slope, and above the gradient height,
 * where the ground no longer slows the wind; the shear jumps at both.
 *
 * @param reference the wind at the reference height
 * @param referenceHeight height above ground of the reference, m, 2 to 300
 * @param exponent power p, 0 to 0.6; 0.1 to 0.12 over open water, 1/7 over open land, 0.25 to 0.3
 *     over wood or suburb (from memory)
 * @param lowestHeight height below which the wind is constant, m, 0.1 to 10
 * @param gradientHeight height above which the wind is constant, m, 50 to 1000, and not below the
 *     reference height
 */
public record PowerLawWind(
    Wind reference,
    double referenceHeight,
    double exponent,
    double lowestHeight,
    double gradientHeight)
    implements WindField {

  /** Power over open, level land in neutral air: the one-seventh law (from memory). */
  public static final double EXPONENT_OPEN_LAND = 1.0 / 7.0;

  /** Height at which winds are reported. Default 10 m, range 2 to 300 m. */
  public static final Parameter REFERENCE_HEIGHT =
      Parameter.of(
          "wind reference height",
          Unit.METRE,
          2,
          300,
          10,
          "height of the standard anemometer mast, World Meteorological Organization (from"
              + " memory)");

  /** The power of the law. Default 0.142857, range 0 to 0.6 (a pure number). */
  public static final Parameter EXPONENT =
      Parameter.of(
          "wind shear exponent",
          Unit.ONE,
          0,
          0.6,
          EXPONENT_OPEN_LAND,
          "one-seventh law for open, level land in neutral air (from memory)");

  /** Height of the lower end of the law. Default 2 m, range 0.1 to 10 m. */
  public static final Parameter LOWEST_HEIGHT =
      Parameter.of(
          "lowest height of the wind shear",
          Unit.METRE,
          0.1,
          10,
          2,
          "assumed: about where a rotor stands when the wheels or skids are on the ground");

  /** Height of the upper end of the law. Default 275 m, range 50 to 1000 m. */
  public static final Parameter GRADIENT_HEIGHT =
      Parameter.of(
          "gradient height of the wind",
          Unit.METRE,
          50,
          1000,
          275,
          "gradient height over open land in building codes, about 900 ft (from memory)");

  private static final Quantity HEIGHT =
      new Quantity("height above ground", Unit.METRE, -1000, 20_000);

  /**
   * Checks every component against its range.
   *
   * @throws io.github.ringstate.quantity.OutOfRangeException if a component is outside its range or
   *     not a number
   */
  public PowerLawWind {
    REFERENCE_HEIGHT.quantity().check(referenceHeight);
    EXPONENT.quantity().check(exponent);
    LOWEST_HEIGHT.quantity().check(lowestHeight);
    Quantity gradient = GRADIENT_HEIGHT.quantity();
    gradient
        .within(Math.max(gradient.low(), referenceHeight), gradient.high())
        .check(gradientHeight);
  }

  /**
   * The law with the standard heights.
   *
   * @param reference the wind at 10 m above ground
   * @param exponent power, 0 to 0.6
   * @return the wind field
   * @throws io.github.ringstate.quantity.OutOfRangeException if the exponent is outside its range
   *     or not a number
   */
  public static PowerLawWind of(Wind reference, double exponent) {
    return new PowerLawWind(
        reference,
        REFERENCE_HEIGHT.standard(),
        exponent,
        LOWEST_HEIGHT.standard(),
        GRADIENT_HEIGHT.standard());
  }

  /**
   * The wind's speed at a height over its speed at the reference height.
   *
   * @param height height above ground, m, -1000 to 20000
   * @return the ratio, dimensionless
   * @throws io.github.ringstate.quantity.OutOfRangeException if the height is outside its range or
   *     not a number
   */
  public double speedRatio(double height) {
    HEIGHT.check(height);
    double held = Math.min(gradientHeight, Math.max(lowestHeight, height));
    return FastMath.pow(held / referenceHeight, exponent);
  }

  @Override
  public void velocity(double time, double north, double east, double height, double[] result) {
    double ratio = speedRatio(height);
    result[0] = ratio * reference.north();
    result[1] = ratio * reference.east();
    result[2] = 0;
  }

  /** Every component with its unit. */
  @Override
  public String toString() {
    return reference
        + " at "
        + referenceHeight
        + " m, exponent "
        + exponent
        + ", between "
        + lowestHeight
        + " and "
        + gradientHeight
        + " m";
  }
}
