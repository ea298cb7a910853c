package io.github.ringstate.air;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.util.FastMath;

/**
 * One component of gust velocity as a sum of sinusoids (Rice, Bell System Technical Journal 23,
 * 1944; Shinozuka and Jan, Journal of Sound and Vibration 25, 1972; both from memory).
 *
 * <p>The spectrum is cut into bands of equal ratio. Each band has one sinusoid with the band's
 * variance, a random phase and a random frequency drawn from the spectrum within the band, so that
 * the mean spectrum over many seeds is the given one and no realisation repeats itself.
 */
final class SinusoidSum {

  /**
   * Greatest frequency as x = L W; 0.6 % (longitudinal) or 1 % (transverse) of the variance is
   * beyond.
   */
  private static final double GREATEST = 100;

  /** Upper end of the lowest band as x = L W; the band itself begins at zero. */
  private static final double LEAST = 0.01;

  private static final int BANDS_PER_DECADE = 8;
  private static final int BANDS = 1 + 4 * BANDS_PER_DECADE;

  private static final double FREQUENCY_ACCURACY = 1e-12;
  private static final int SOLVER_ORDER = 5;
  private static final int SOLVER_LIMIT = 200;

  private final double[] amplitude;
  // turns per second and turns: the argument is then brought to a quarter turn exactly
  private final double[] frequency;
  private final double[] phase;

  private SinusoidSum(double[] amplitude, double[] frequency, double[] phase) {
    this.amplitude = amplitude;
    this.frequency = frequency;
    this.phase = phase;
  }

  /** Draws two numbers a band, whatever the spectrum and the speed. */
  static SinusoidSum draw(DrydenSpectrum spectrum, double speed, SplittableRandom random) {
    double[] amplitude = new double[BANDS];
    double[] frequency = new double[BANDS];
    double[] phase = new double[BANDS];
    DrydenSpectrum.Form form = spectrum.form();
    double whole = DrydenSpectrum.shareBelow(form, GREATEST);
    double low = 0;
    for (int i = 0; i < BANDS; i++) {
      double high =
          i == BANDS - 1 ? GREATEST : LEAST * FastMath.pow(10, i / (double) BANDS_PER_DECADE);
      double shareLow = DrydenSpectrum.shareBelow(form, low);
      double share = DrydenSpectrum.shareBelow(form, high) - shareLow;
      double x = drawWithin(form, low, high, shareLow + unit(random) * share);
      // a sinusoid's variance is half its amplitude squared
      amplitude[i] = spectrum.intensity() * Math.sqrt(2 * share / whole);
      frequency[i] = x * speed / (2 * Math.PI * spectrum.scaleLength());
      phase[i] = unit(random);
      low = high;
    }
    return new SinusoidSum(amplitude, frequency, phase);
  }

  /** The same sum without the sinusoids above a frequency in turns per second. */
  SinusoidSum upTo(double greatestFrequency) {
    int kept = 0;
    while (kept < frequency.length && frequency[kept] <= greatestFrequency) {
      kept++;
    }
    return new SinusoidSum(
        Arrays.copyOf(amplitude, kept), Arrays.copyOf(frequency, kept), Arrays.copyOf(phase, kept));
  }

  double at(double time) {
    double sum = 0;
    for (int i = 0; i < amplitude.length; i++) {
      sum += amplitude[i] * sineOfTurns(frequency[i] * time + phase[i]);
    }
    return sum;
  }

  double variance() {
    double sum = 0;
    for (double a : amplitude) {
      sum += 0.5 * a * a;
    }
    return sum;
  }

  /**
   * Within a quarter turn FastMath.sin needs no reduction of its argument, which would allocate.
   */
  private static double sineOfTurns(double turns) {
    double part = turns - Math.rint(turns);
    if (Math.abs(part) > 0.25) {
      part = Math.copySign(0.5, part) - part;
    }
    return FastMath.sin(2 * Math.PI * part);
  }

  private static double drawWithin(
      DrydenSpectrum.Form form, double low, double high, double share) {
    double tooLow = DrydenSpectrum.shareBelow(form, low) - share;
    double tooHigh = DrydenSpectrum.shareBelow(form, high) - share;
    if (!(tooLow < 0 && tooHigh > 0)) {
      return tooLow < 0 ? high : low;
    }
    return new BracketingNthOrderBrentSolver(FREQUENCY_ACCURACY, SOLVER_ORDER)
        .solve(SOLVER_LIMIT, x -> DrydenSpectrum.shareBelow(form, x) - share, low, high);
  }

  /** Uniform in [0, 1): the 53 high bits, so that only the generator's own bits matter. */
  private static double unit(SplittableRandom random) {
    return (random.nextLong() >>> 11) * 0x1.0p-53;
  }
}
