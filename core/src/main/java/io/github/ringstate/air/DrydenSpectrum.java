package io.github.ringstate.air;

import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import org.hipparchus.util.FastMath;

/**
 * The Dryden spectrum of one component of gust velocity, MIL-F-8785C (1980), section 3.7.1.2 (from
 * memory): how its variance is spread over spatial frequency.
 *
 * <p>The spectrum is one-sided: its integral over all frequencies from zero up is the variance.
 * With x = L W, L the scale length and W the spatial frequency in rad/m,
 *
 * <ul>
 *   <li>along the mean motion: (2 sigma^2 L / pi) / (1 + x^2)
 *   <li>across it, sideways or vertical: (sigma^2 L / pi) (1 + 3 x^2) / (1 + x^2)^2
 * </ul>
 *
 * @param form which of the two
 * @param intensity root mean square gust velocity sigma, m/s, 0 to 30
 * @param scaleLength scale length L, m, 0.5 to 1000
 */
public record DrydenSpectrum(Form form, double intensity, double scaleLength) {

  /** The two forms of the spectrum. */
  public enum Form {
    /** The gust velocity along the direction in which the air is traversed. */
    LONGITUDINAL,
    /** A gust velocity at right angles to that direction. */
    TRANSVERSE
  }

  private static final Quantity INTENSITY =
      new Quantity("gust intensity", Unit.METRE_PER_SECOND, 0, 30);
  private static final Quantity SCALE_LENGTH =
      new Quantity("gust scale length", Unit.METRE, 0.5, 1000);

  /**
   * Checks the numbers.
   *
   * @throws io.github.ringstate.quantity.OutOfRangeException if one is outside its range or not a
   *     number
   */
  public DrydenSpectrum {
    INTENSITY.check(intensity);
    SCALE_LENGTH.check(scaleLength);
  }

  /**
   * The spectral density.
   *
   * @param spatialFrequency spatial frequency, rad/m, not negative
   * @return variance per unit of spatial frequency, (m/s)^2 per rad/m
   * @throws IllegalArgumentException if the frequency is negative or not a number
   */
  public double density(double spatialFrequency) {
    double x = scaleLength * checkFrequency(spatialFrequency);
    double square = x * x;
    double shape =
        switch (form) {
          case LONGITUDINAL -> 2 / (1 + square);
          case TRANSVERSE -> (1 + 3 * square) / ((1 + square) * (1 + square));
        };
    return intensity * intensity * scaleLength / Math.PI * shape;
  }

  /**
   * The variance below a spatial frequency: the integral of the density from zero, in closed form.
   *
   * @param spatialFrequency upper end, rad/m, not negative; may be infinite
   * @return the variance, (m/s)^2, at most the square of the intensity
   * @throws IllegalArgumentException if the frequency is negative or not a number
   */
  public double varianceBelow(double spatialFrequency) {
    return intensity * intensity * shareBelow(form, scaleLength * checkFrequency(spatialFrequency));
  }

  /** Share of the variance below a frequency x = L W; 0 at 0, 1 at infinity. */
  static double shareBelow(Form form, double x) {
    double angle = FastMath.atan(x);
    return switch (form) {
      case LONGITUDINAL -> 2 * angle / Math.PI;
      // x / (1 + x^2), written so that an infinite x gives zero
      case TRANSVERSE -> (2 * angle - 0.5 * FastMath.sin(2 * angle)) / Math.PI;
    };
  }

  private static double checkFrequency(double spatialFrequency) {
    if (!(spatialFrequency >= 0)) {
      throw new IllegalArgumentException(
          "spatial frequency " + spatialFrequency + " rad/m is not zero or more");
    }
    return spatialFrequency;
  }
}
