package io.github.ringstate.air;

import static io.github.ringstate.air.DrydenSpectrum.Form.LONGITUDINAL;
import static io.github.ringstate.air.DrydenSpectrum.Form.TRANSVERSE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Unit;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.complex.Complex;
import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class GustsTest {

  /** Longitudinal along, transverse across; L = V, so that an angular frequency in rad/s is L W. */
  private static final double SPEED = 10;

  private static final LowAltitudeGusts SPECTRA =
      new LowAltitudeGusts(
          new DrydenSpectrum(LONGITUDINAL, 2, SPEED),
          new DrydenSpectrum(TRANSVERSE, 2, SPEED),
          new DrydenSpectrum(TRANSVERSE, 1, SPEED));

  /** The variance beyond the greatest frequency is left out: at most this share of the whole. */
  private static final double BEYOND = 0.01;

  /** The mean of independent values and its standard error. */
  private static final class Estimate {
    private final DoubleSummaryStatistics values = new DoubleSummaryStatistics();
    private final DoubleSummaryStatistics squares = new DoubleSummaryStatistics();

    void add(double value) {
      values.accept(value);
      squares.accept(value * value);
    }

    double mean() {
      return values.getAverage();
    }

    double error() {
      return Math.sqrt((squares.getAverage() - mean() * mean()) / (values.getCount() - 1));
    }
  }

  private static DoubleUnaryOperator component(DrydenSpectrum.Form form, long seed) {
    Gusts gusts = Gusts.of(SPECTRA, SPEED, seed);
    return form == LONGITUDINAL ? gusts::along : gusts::across;
  }

  @Test
  void theVarianceIsTheSquareOfTheIntensity() {
    Estimate vertical = new Estimate();
    for (int seed = 0; seed < 400; seed++) {
      Gusts gusts = Gusts.of(SPECTRA, SPEED, seed);
      assertEquals(4, gusts.varianceAlong(), 1e-12);
      assertEquals(4, gusts.varianceAcross(), 1e-12);
      assertEquals(1, gusts.varianceVertical(), 1e-12);
      vertical.add(gusts.vertical(seed) * gusts.vertical(seed));
    }
    assertEquals(1, vertical.mean(), 4 * vertical.error());
  }

  /**
   * Bands of the periodogram (Hann window) against the integral of the specified density: decades,
   * and bands whose ends are not those of the construction.
   */
  @ParameterizedTest
  @EnumSource
  void thePeriodogramHasTheSpecifiedVarianceInEveryBand(DrydenSpectrum.Form form) {
    double[][] bands = {{0.1, 1}, {1, 10}, {10, 100}, {0.5, 0.8}, {2.2, 3.6}, {11, 19}, {40, 70}};
    Estimate[] measured = new Estimate[bands.length];
    Arrays.setAll(measured, i -> new Estimate());
    for (long seed = 0; seed < 100; seed++) {
      double[] power = periodogram(component(form, seed));
      for (int i = 0; i < bands.length; i++) {
        measured[i].add(bandVariance(power, bands[i][0], bands[i][1]));
      }
    }
    for (int i = 0; i < bands.length; i++) {
      double error = measured[i].error();
      double specified = specifiedVariance(form, bands[i][0], bands[i][1]);
      String band = Arrays.toString(bands[i]) + " rad/s";
      assertTrue(error < 0.05 * specified, band + ": sharp enough to say anything");
      assertEquals(specified, measured[i].mean(), 4 * error + BEYOND * specified, band);
    }
  }

  private static final int SAMPLES = 8192;
  private static final double STEP = 0.03;
  private static final double RESOLUTION = 2 * Math.PI / (SAMPLES * STEP);

  /** Variance of each line, one-sided. */
  private static double[] periodogram(DoubleUnaryOperator gust) {
    double[] samples = new double[SAMPLES];
    double windowSquared = 0;
    for (int i = 0; i < SAMPLES; i++) {
      double window = 0.5 - 0.5 * Math.cos(2 * Math.PI * i / SAMPLES);
      windowSquared += window * window;
      samples[i] = window * gust.applyAsDouble(i * STEP);
    }
    Complex[] lines =
        new FastFourierTransformer(DftNormalization.STANDARD)
            .transform(samples, TransformType.FORWARD);
    double[] power = new double[SAMPLES / 2];
    for (int k = 1; k < power.length; k++) {
      double magnitude = lines[k].norm();
      power[k] = 2 * magnitude * magnitude / (SAMPLES * windowSquared);
    }
    return power;
  }

  private static double bandVariance(double[] power, double low, double high) {
    double variance = 0;
    for (int k = 1; k < power.length; k++) {
      // a line stands for half the distance to its neighbours on both sides
      double covered =
          Math.min(high, (k + 0.5) * RESOLUTION) - Math.max(low, (k - 0.5) * RESOLUTION);
      variance += power[k] * Math.max(0, covered) / RESOLUTION;
    }
    return variance;
  }

  /** Midpoint rule on the density as MIL-F-8785C writes it, with sigma = 2 and L = V. */
  private static double specifiedVariance(DrydenSpectrum.Form form, double low, double high) {
    int n = 100_000;
    double step = (high - low) / n;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double x = low + (i + 0.5) * step;
      sum +=
          form == LONGITUDINAL
              ? 4 * 2 / Math.PI / (1 + x * x)
              : 4 / Math.PI * (1 + 3 * x * x) / Math.pow(1 + x * x, 2);
    }
    return sum * step;
  }

  /**
   * Dryden's correlations exp(-r/L) and (1 - r/2L) exp(-r/L), from memory and by transforming the
   * spectra: the mean square difference over a lag is 2 sigma^2 (1 - correlation).
   */
  @ParameterizedTest
  @CsvSource({
    "LONGITUDINAL, 0.3", "LONGITUDINAL, 1", "LONGITUDINAL, 3",
    "TRANSVERSE, 0.3", "TRANSVERSE, 1", "TRANSVERSE, 3"
  })
  void differencesOverALagFollowDrydensCorrelation(DrydenSpectrum.Form form, double lag) {
    double correlation = form == LONGITUDINAL ? Math.exp(-lag) : (1 - 0.5 * lag) * Math.exp(-lag);
    Estimate squares = new Estimate();
    SplittableRandom random = new SplittableRandom(77);
    for (long seed = 0; seed < 400; seed++) {
      DoubleUnaryOperator gust = component(form, seed);
      Estimate own = new Estimate();
      for (int i = 0; i < 60; i++) {
        double time = random.nextDouble(0, 1000);
        double difference = gust.applyAsDouble(time + lag) - gust.applyAsDouble(time);
        own.add(difference * difference);
      }
      squares.add(own.mean());
    }
    double error = squares.error();
    double expected = 2 * 4 * (1 - correlation);
    assertTrue(error < 0.02 * expected, "the estimate is sharp enough to say anything");
    assertEquals(expected, squares.mean(), 4 * error + 2 * 4 * BEYOND);
  }

  /**
   * A sum of many independent sinusoids nears the normal distribution: Rice, 1944 (from memory).
   */
  @Test
  void valuesOverTheSeedsAreCloseToNormallyDistributed() {
    int n = 4000;
    double[] values = new double[n];
    for (int seed = 0; seed < n; seed++) {
      values[seed] = Gusts.of(SPECTRA, SPEED, seed).along(5);
    }
    double variance = 0;
    double fourth = 0;
    double mean = 0;
    for (double value : values) {
      mean += value / n;
      variance += value * value / n;
      fourth += value * value * value * value / n;
    }
    assertEquals(0, mean, 4 * 2 / Math.sqrt(n));
    assertEquals(4, variance, 4 * 4 * Math.sqrt(2.0 / n));
    // standard error of the kurtosis: sqrt(24 / n)
    assertEquals(3, fourth / (variance * variance), 4 * Math.sqrt(24.0 / n));
  }

  @Test
  void theComponentsAreUncorrelated() {
    Estimate products = new Estimate();
    Estimate others = new Estimate();
    for (long seed = 0; seed < 2000; seed++) {
      Gusts gusts = Gusts.of(SPECTRA, SPEED, seed);
      products.add(gusts.along(3) * gusts.across(3));
      others.add(gusts.across(3) * gusts.vertical(3));
    }
    assertEquals(0, products.mean(), 4 * 4 / Math.sqrt(2000));
    assertEquals(0, others.mean(), 4 * 2 / Math.sqrt(2000));
  }

  @Test
  void theSameSeedGivesTheSameBitsAndAnotherSeedOtherGusts() {
    Gusts first = Gusts.of(SPECTRA, SPEED, 42);
    Gusts again = Gusts.of(SPECTRA, SPEED, 42);
    Gusts other = Gusts.of(SPECTRA, SPEED, 43);
    for (double time = 0; time < 60; time += 1.7) {
      assertEquals(first.along(time), again.along(time));
      assertEquals(first.across(time), again.across(time));
      assertEquals(first.vertical(time), again.vertical(time));
      assertNotEquals(first.along(time), other.along(time));
    }
  }

  /** SplitMix64 from the seed 1234567: values published with the algorithm's C code (memory). */
  @Test
  void theGeneratorOfTheRuntimeIsStillSplitMix64() {
    SplittableRandom random = new SplittableRandom(1234567);
    assertEquals(6457827717110365317L, random.nextLong());
    assertEquals(3203168211198807973L, random.nextLong());
    assertEquals(Long.parseUnsignedLong("9817491932198370423"), random.nextLong());
  }

  @Test
  void anotherSpeedOrScaleOnlyStretchesThePattern() {
    Gusts slow = Gusts.of(SPECTRA, SPEED, 9);
    Gusts fast = Gusts.of(SPECTRA, 2 * SPEED, 9);
    for (double time = 0; time < 60; time += 3.1) {
      assertEquals(slow.along(2 * time), fast.along(time), 1e-10);
      assertEquals(slow.vertical(2 * time), fast.vertical(time), 1e-10);
    }
  }

  @Test
  void withoutShortWavesTheVarianceIsThatOfTheLongOnes() {
    Gusts all = Gusts.of(SPECTRA, SPEED, 3);
    Gusts same = all.withoutWavesShorterThan(0);
    assertEquals(all.along(1), same.along(1));
    double wavelength = 2 * Math.PI * SPEED / 10;
    Gusts some = all.withoutWavesShorterThan(wavelength);
    // x = 10 ends a band, so that the cut falls between two waves
    double kept = SPECTRA.along().varianceBelow(2 * Math.PI / wavelength);
    assertEquals(kept, some.varianceAlong(), BEYOND * 4);
    double finest = 0;
    for (double time = 0; time < 20; time += 0.01) {
      finest = Math.max(finest, Math.abs(some.along(time + 1e-4) - some.along(time)) / 1e-4);
    }
    assertTrue(finest < 10 * 2 * 4, "slope is bounded by the greatest frequency: " + finest);
    assertEquals(0, all.withoutWavesShorterThan(1000).varianceAlong(), 4 * 0.1);
  }

  @Test
  void evaluatingAllocatesNothing() {
    Gusts gusts = Gusts.of(SPECTRA, SPEED, 1);
    GustyWind wind = GustyWind.of(Wind.CALM, gusts, 0);
    double[] velocity = new double[3];
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    wind.velocity(0, 0, 0, 0, velocity);
    threads.getCurrentThreadAllocatedBytes();
    long before = threads.getCurrentThreadAllocatedBytes();
    for (int i = 0; i < 1000; i++) {
      wind.velocity(i * 31.7, 0, 0, 0, velocity);
    }
    assertEquals(0, threads.getCurrentThreadAllocatedBytes() - before);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 45, 120, 200, 315})
  void gustsBlowAlongAcrossAndUp(double degrees) {
    Wind mean = Wind.from(Unit.DEGREE.toSi(degrees), 12);
    Gusts gusts = Gusts.of(SPECTRA, SPEED, 5);
    double[] velocity = new double[3];
    GustyWind.of(mean, gusts, Unit.DEGREE.toSi(degrees)).velocity(8, 1, 2, 30, velocity);
    Wind total = new Wind(velocity[0], velocity[1]);
    double downwind = Unit.DEGREE.toSi(degrees + 180);
    assertEquals(12 + gusts.along(8), total.along(downwind), 1e-12);
    assertEquals(gusts.across(8), total.across(downwind), 1e-12);
    assertEquals(gusts.vertical(8), velocity[2]);
  }

  @Test
  void noWindGivesNoGusts() {
    Gusts gusts = Gusts.of(LowAltitudeGusts.at(30, 0), 5, 1);
    assertEquals(0, gusts.along(3));
    assertEquals(0, gusts.vertical(3));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, -1e6, Double.POSITIVE_INFINITY})
  void wrongNumbersAreRefused(double bad) {
    Gusts gusts = Gusts.of(SPECTRA, SPEED, 1);
    assertThrows(OutOfRangeException.class, () -> Gusts.of(SPECTRA, bad, 1));
    assertThrows(OutOfRangeException.class, () -> gusts.withoutWavesShorterThan(bad));
    assertThrows(OutOfRangeException.class, () -> gusts.along(bad));
    assertThrows(OutOfRangeException.class, () -> gusts.across(bad));
    assertThrows(OutOfRangeException.class, () -> gusts.vertical(bad));
    assertThrows(OutOfRangeException.class, () -> GustyWind.of(Wind.CALM, gusts, bad));
  }
}
