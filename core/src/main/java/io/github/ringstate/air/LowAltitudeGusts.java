package io.github.ringstate.air;

import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import org.hipparchus.util.FastMath;

/**
 * The spectra of the three components of gust velocity near the ground.
 *
 * <p>{@link #at} gives the low-altitude model of MIL-F-8785C (1980), section 3.7.3 (from memory),
 * for heights of 10 ft to 1000 ft, h being the height above ground in feet and W20 the mean wind at
 * 20 ft:
 *
 * <ul>
 *   <li>scale lengths Lw = h, Lu = Lv = h / (0.177 + 0.000823 h)^1.2
 *   <li>intensities sigma w = 0.1 W20, sigma u = sigma v = sigma w / (0.177 + 0.000823 h)^0.4
 * </ul>
 *
 * <p>A later handbook, MIL-HDBK-1797, halves Lw and Lv and changes the transverse spectra to match;
 * the two forms must not be mixed. At 1000 ft the gusts of this form are the same in all
 * directions.
 *
 * @param along spectrum of the component along the mean wind
 * @param across spectrum of the component across it, level
 * @param vertical spectrum of the vertical component
 */
public record LowAltitudeGusts(
    DrydenSpectrum along, DrydenSpectrum across, DrydenSpectrum vertical) {

  private static final double BASE = 0.177;
  private static final double BASE_PER_FOOT = 0.000823;
  private static final double VERTICAL_INTENSITY = 0.1;
  private static final double INTENSITY_EXPONENT = 0.4;
  private static final double SCALE_EXPONENT = 1.2;

  private static final Quantity HEIGHT =
      new Quantity(
          "height above ground for gusts", Unit.METRE, Unit.FOOT.toSi(10), Unit.FOOT.toSi(1000));
  private static final Quantity WIND =
      new Quantity("mean wind at 20 ft", Unit.METRE_PER_SECOND, 0, 50);

  /**
   * The gusts at a height.
   *
   * @param height height above ground, m, 3.048 to 304.8 (10 ft to 1000 ft)
   * @param windAt20Feet mean wind speed 20 ft (6.1 m) above ground, m/s, 0 to 50
   * @return the spectra
   * @throws io.github.ringstate.quantity.OutOfRangeException if an argument is outside its range or
   *     not a number
   */
  public static LowAltitudeGusts at(double height, double windAt20Feet) {
    HEIGHT.check(height);
    WIND.check(windAt20Feet);
    double base = BASE + BASE_PER_FOOT * Unit.FOOT.fromSi(height);
    double verticalIntensity = VERTICAL_INTENSITY * windAt20Feet;
    double levelIntensity = verticalIntensity / FastMath.pow(base, INTENSITY_EXPONENT);
    double levelScale = height / FastMath.pow(base, SCALE_EXPONENT);
    return new LowAltitudeGusts(
        new DrydenSpectrum(DrydenSpectrum.Form.LONGITUDINAL, levelIntensity, levelScale),
        new DrydenSpectrum(DrydenSpectrum.Form.TRANSVERSE, levelIntensity, levelScale),
        new DrydenSpectrum(DrydenSpectrum.Form.TRANSVERSE, verticalIntensity, height));
  }
}
