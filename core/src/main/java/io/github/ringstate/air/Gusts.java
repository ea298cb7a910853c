package io.github.ringstate.air;

import io.github.ringstate.quantity.MadeOf;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.SplittableRandom;

/**
 * One realisation of gusts: the gust velocity as a smooth function of time, fixed by its seed.
 *
 * <p>The gusts are a frozen pattern carried past the observer at the convection speed (Taylor's
 * hypothesis), so a spatial frequency W in rad/m is heard as W V in rad/s. The hypothesis is poor
 * where the helicopter hovers in calm air and nothing is carried past; use the mean wind or the
 * airspeed, whichever is greater. Height, intensity and convection speed stay those that the
 * realisation was made for, however the helicopter then moves.
 *
 * <p>Each component is a sum of 33 sinusoids whose variances add up to the square of the intensity.
 * The random numbers come from {@link SplittableRandom}, whose algorithm (SplitMix64: Steele, Lea
 * and Flood, OOPSLA 2014) does not change between Java releases in practice; only its 64-bit
 * outputs are used and a test holds them. They depend on the seed alone, so the same seed at
 * another height or speed gives the same pattern stretched.
 */
public final class Gusts extends MadeOf {

  private static final Quantity CONVECTION_SPEED =
      new Quantity("convection speed of gusts", Unit.METRE_PER_SECOND, 0.5, 150);
  private static final Quantity WAVELENGTH =
      new Quantity("shortest wavelength of gusts", Unit.METRE, 0, 1000);
  private static final Quantity TIME = new Quantity("time", Unit.SECOND, -1e5, 1e5);

  private final Made made;
  private final double convectionSpeed;
  private final SinusoidSum along;
  private final SinusoidSum across;
  private final SinusoidSum vertical;

  private Gusts(
      Made made,
      double convectionSpeed,
      SinusoidSum along,
      SinusoidSum across,
      SinusoidSum vertical) {
    super(made);
    this.made = made;
    this.convectionSpeed = convectionSpeed;
    this.along = along;
    this.across = across;
    this.vertical = vertical;
  }

  /**
   * Draws a realisation.
   *
   * @param spectra the spectra of the three components
   * @param convectionSpeed speed at which the gusts are carried past, m/s, 0.5 to 150
   * @param seed any number; the same one gives the same gusts
   * @return the realisation
   * @throws io.github.ringstate.quantity.OutOfRangeException if the speed is outside its range or
   *     not a number
   */
  public static Gusts of(LowAltitudeGusts spectra, double convectionSpeed, long seed) {
    CONVECTION_SPEED.check(convectionSpeed);
    SplittableRandom random = new SplittableRandom(seed);
    SinusoidSum along = SinusoidSum.draw(spectra.along(), convectionSpeed, random);
    SinusoidSum across = SinusoidSum.draw(spectra.across(), convectionSpeed, random);
    SinusoidSum vertical = SinusoidSum.draw(spectra.vertical(), convectionSpeed, random);
    Made made = new Made(spectra, convectionSpeed, seed, 0);
    return new Gusts(made, convectionSpeed, along, across, vertical);
  }

  /**
   * The same gusts without their short waves. A rotor averages gusts over its disc, and waves much
   * shorter than its diameter only cost the integrator steps; with them goes their variance.
   *
   * @param shortestWavelength least wavelength kept, m, 0 to 1000; 0 keeps all
   * @return the gusts that remain
   * @throws io.github.ringstate.quantity.OutOfRangeException if the wavelength is outside its range
   *     or not a number
   */
  public Gusts withoutWavesShorterThan(double shortestWavelength) {
    double greatestFrequency = convectionSpeed / Math.abs(WAVELENGTH.check(shortestWavelength));
    double shortest = Math.max(shortestWavelength, made.shortest);
    return new Gusts(
        new Made(made.spectra, convectionSpeed, made.seed, shortest),
        convectionSpeed,
        along.upTo(greatestFrequency),
        across.upTo(greatestFrequency),
        vertical.upTo(greatestFrequency));
  }

  /**
   * The gust along the mean wind.
   *
   * @param time time, s, -1e5 to 1e5
   * @return velocity of the air beyond the mean, m/s, positive downwind
   * @throws io.github.ringstate.quantity.OutOfRangeException if the time is outside its range or
   *     not a number
   */
  public double along(double time) {
    return along.at(TIME.check(time));
  }

  /**
   * The level gust across the mean wind.
   *
   * @param time time, s, -1e5 to 1e5
   * @return velocity of the air, m/s, positive to the right of someone who looks downwind
   * @throws io.github.ringstate.quantity.OutOfRangeException if the time is outside its range or
   *     not a number
   */
  public double across(double time) {
    return across.at(TIME.check(time));
  }

  /**
   * The vertical gust.
   *
   * @param time time, s, -1e5 to 1e5
   * @return velocity of the air, m/s, positive upward
   * @throws io.github.ringstate.quantity.OutOfRangeException if the time is outside its range or
   *     not a number
   */
  public double vertical(double time) {
    return vertical.at(TIME.check(time));
  }

  /** The variance along the mean wind over a long time, (m/s)2. */
  double varianceAlong() {
    return along.variance();
  }

  /** The variance across the mean wind over a long time, (m/s)2. */
  double varianceAcross() {
    return across.variance();
  }

  /** The vertical variance over a long time, (m/s)2. */
  double varianceVertical() {
    return vertical.variance();
  }

  /** What a realisation is made of: spectra, speed in m/s, seed, shortest wavelength in m. */
  private record Made(LowAltitudeGusts spectra, double speed, long seed, double shortest) {

    @Override
    public String toString() {
      return spectra + " at " + speed + " m/s, seed " + seed + ", waves from " + shortest + " m on";
    }
  }
}
