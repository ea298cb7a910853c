package io.github.ringstate.air;

import static io.github.ringstate.air.DrydenSpectrum.Form.LONGITUDINAL;
import static io.github.ringstate.air.DrydenSpectrum.Form.TRANSVERSE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Unit;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class DrydenSpectrumTest {

  private static final double SIGMA = 1.5;
  private static final double LENGTH = 80;

  private static double integral(UnivariateFunction f, double low, double high) {
    return new IterativeLegendreGaussIntegrator(20, 1e-10, 1e-13)
        .integrate(1_000_000, f, low, high);
  }

  /** The specification defines the intensity by it; substituting W = tan(a) / L for the far end. */
  @ParameterizedTest
  @EnumSource
  void theDensityIntegratesToTheVariance(DrydenSpectrum.Form form) {
    DrydenSpectrum spectrum = new DrydenSpectrum(form, SIGMA, LENGTH);
    double variance =
        integral(
            a -> {
              double tangent = Math.tan(a);
              return spectrum.density(tangent / LENGTH) * (1 + tangent * tangent) / LENGTH;
            },
            0,
            Math.PI / 2 - 1e-12);
    assertEquals(SIGMA * SIGMA, variance, 1e-9);
    assertEquals(SIGMA * SIGMA, spectrum.varianceBelow(Double.POSITIVE_INFINITY), 1e-12);
    assertEquals(0, spectrum.varianceBelow(0));
  }

  @ParameterizedTest
  @EnumSource
  void theClosedFormOfTheVarianceIsTheIntegralOfTheDensity(DrydenSpectrum.Form form) {
    DrydenSpectrum spectrum = new DrydenSpectrum(form, SIGMA, LENGTH);
    for (double frequency : new double[] {1e-4, 1e-3, 0.01, 0.05, 0.3, 2}) {
      assertEquals(
          integral(spectrum::density, 0, frequency), spectrum.varianceBelow(frequency), 1e-9);
    }
  }

  /** Condition of isotropy between the two spectra: Batchelor, Homogeneous Turbulence (memory). */
  @Test
  void theTransverseSpectrumIsTheOneThatIsotropyGivesFromTheLongitudinal() {
    DrydenSpectrum u = new DrydenSpectrum(LONGITUDINAL, SIGMA, LENGTH);
    DrydenSpectrum v = new DrydenSpectrum(TRANSVERSE, SIGMA, LENGTH);
    for (double frequency : new double[] {1e-3, 0.01, 0.05, 0.3}) {
      double h = 1e-4 * frequency;
      double slope = (u.density(frequency + h) - u.density(frequency - h)) / (2 * h);
      double isotropic = 0.5 * (u.density(frequency) - frequency * slope);
      assertEquals(isotropic, v.density(frequency), 1e-6 * isotropic);
    }
  }

  /** Dryden's correlation exp(-r/L); its transform at r = L over [0, W], remainder below 1e-3. */
  @ParameterizedTest
  @ValueSource(doubles = {0.5, 1, 2})
  void theLongitudinalCorrelationFallsExponentially(double distanceInLengths) {
    DrydenSpectrum u = new DrydenSpectrum(LONGITUDINAL, 1, 1);
    double end = 200 * Math.PI / distanceInLengths;
    double correlation = integral(w -> u.density(w) * Math.cos(w * distanceInLengths), 0, end);
    assertEquals(Math.exp(-distanceInLengths), correlation, 1e-4);
  }

  /**
   * MIL-F-8785C figures by 30-digit arithmetic from its formulas; h in ft, intensities over W20.
   */
  @ParameterizedTest
  @CsvSource({
    "10, 75.6391096181174866, 0.196297816733051659",
    "100, 505.169334905126662, 0.171584871297117156",
    "500, 944.657210201866859, 0.123623607614266280",
    "1000, 1000, 0.1"
  })
  void lowAltitudeScalesAndIntensitiesFollowTheSpecification(
      double feet, double levelScaleFeet, double levelIntensity) {
    double wind = Unit.KNOT.toSi(30);
    LowAltitudeGusts gusts = LowAltitudeGusts.at(Unit.FOOT.toSi(feet), wind);
    assertEquals(levelScaleFeet, Unit.FOOT.fromSi(gusts.along().scaleLength()), 1e-10);
    assertEquals(levelScaleFeet, Unit.FOOT.fromSi(gusts.across().scaleLength()), 1e-10);
    assertEquals(feet, Unit.FOOT.fromSi(gusts.vertical().scaleLength()), 1e-10);
    assertEquals(levelIntensity * wind, gusts.along().intensity(), 1e-12);
    assertEquals(levelIntensity * wind, gusts.across().intensity(), 1e-12);
    assertEquals(0.1 * wind, gusts.vertical().intensity(), 1e-12);
    assertEquals(LONGITUDINAL, gusts.along().form());
    assertEquals(TRANSVERSE, gusts.across().form());
    assertEquals(TRANSVERSE, gusts.vertical().form());
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, -1, Double.POSITIVE_INFINITY})
  void wrongNumbersAreRefused(double bad) {
    assertThrows(OutOfRangeException.class, () -> new DrydenSpectrum(LONGITUDINAL, bad, 10));
    assertThrows(OutOfRangeException.class, () -> new DrydenSpectrum(LONGITUDINAL, 1, bad));
    assertThrows(OutOfRangeException.class, () -> LowAltitudeGusts.at(bad, 5));
    assertThrows(OutOfRangeException.class, () -> LowAltitudeGusts.at(30, bad));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, -1})
  void negativeFrequenciesAreRefused(double bad) {
    DrydenSpectrum spectrum = new DrydenSpectrum(LONGITUDINAL, 1, 10);
    assertThrows(IllegalArgumentException.class, () -> spectrum.density(bad));
    assertThrows(IllegalArgumentException.class, () -> spectrum.varianceBelow(bad));
  }

  @Test
  void heightsOutsideTheSpecificationAreRefused() {
    assertThrows(OutOfRangeException.class, () -> LowAltitudeGusts.at(3, 5));
    assertThrows(OutOfRangeException.class, () -> LowAltitudeGusts.at(305, 5));
  }
}
