package io.github.ringstate.pilot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.chance.IndependentStream;
import io.github.ringstate.quantity.OutOfRangeException;
import java.util.Optional;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.special.Gamma;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DelaysTest {

  /** The 90 per cent point of the standard normal distribution, from printed tables. */
  private static final double Z90 = 1.2815515655446004;

  @ParameterizedTest
  @CsvSource({"0.75, 1.25", "1.5, 2.5", "2.65, 4", "2.5, 5", "0.01, 0.0102", "30, 900", "1, 1.01"})
  void bothDistributionsHitTheirMedianAndNinetyPerCentPoint(double median, double ninety) {
    for (RealDistribution delays :
        new RealDistribution[] {Delays.logNormal(median, ninety), Delays.gamma(median, ninety)}) {
      assertEquals(0.5, delays.cumulativeProbability(median), 1e-7, delays.toString());
      assertEquals(0.9, delays.cumulativeProbability(ninety), 1e-7, delays.toString());
      assertEquals(median, delays.inverseCumulativeProbability(0.5), 1e-8 * Math.max(1, median));
      assertEquals(ninety, delays.inverseCumulativeProbability(0.9), 1e-6 * Math.max(1, ninety));
    }
  }

  /**
   * Sources: the moments of the log-normal distribution in closed form, exp(mu + s^2 / 2) and
   * (exp(s^2) - 1) exp(2 mu + s^2), and its quantile exp(mu + s z).
   */
  @ParameterizedTest
  @EnumSource(PilotState.class)
  void theDelaysOfAStateHaveTheMomentsOfTheLogNormal(PilotState state) {
    double mu = FastMath.log(state.median());
    double s = FastMath.log(state.ninetyPercent() / state.median()) / Z90;
    RealDistribution delays = state.delays();
    double mean = FastMath.exp(mu + s * s / 2);
    assertEquals(mean, delays.getNumericalMean(), 1e-9);
    assertEquals(FastMath.expm1(s * s) * mean * mean, delays.getNumericalVariance(), 1e-9);
    // the 97.5 per cent point of the standard normal distribution, from printed tables
    assertEquals(
        FastMath.exp(mu + s * 1.959963984540054), delays.inverseCumulativeProbability(0.975), 1e-8);
  }

  /** Sampled through the same numbers that a study draws; four standard errors. */
  @ParameterizedTest
  @CsvSource({"1.5, 2.5", "2.5, 5"})
  void sampledDelaysHaveTheMeanOfTheirDistribution(double median, double ninety) {
    for (RealDistribution delays :
        new RealDistribution[] {Delays.logNormal(median, ninety), Delays.gamma(median, ninety)}) {
      int n = 4000;
      double sum = 0;
      for (int i = 0; i < n; i++) {
        sum += delays.inverseCumulativeProbability(new IndependentStream(3, i).uniform());
      }
      double error = Math.sqrt(delays.getNumericalVariance() / n);
      assertEquals(delays.getNumericalMean(), sum / n, 4 * error, delays.toString());
    }
  }

  /**
   * Source: the gamma distribution function of shape 1 is 1 - exp(-x / scale), so its 90 per cent
   * point over its median is log 10 / log 2, and its mean the median over log 2.
   */
  @Test
  void theGammaOfTheExponentialsRatioIsTheExponential() {
    RealDistribution delays = Delays.gamma(1, FastMath.log(10) / FastMath.log(2));
    double mean = 1 / FastMath.log(2);
    assertEquals(mean, delays.getNumericalMean(), 1e-7);
    assertEquals(mean * mean, delays.getNumericalVariance(), 1e-6);
  }

  /** Source: the distribution function of a gamma is the regularised incomplete gamma function. */
  @Test
  void theGammaAgreesWithTheIncompleteGammaFunction() {
    RealDistribution delays = Delays.gamma(1.5, 2.5);
    double scale = delays.getNumericalVariance() / delays.getNumericalMean();
    double shape = delays.getNumericalMean() / scale;
    assertEquals(0.5, Gamma.regularizedGammaP(shape, 1.5 / scale), 1e-8);
    assertEquals(0.9, Gamma.regularizedGammaP(shape, 2.5 / scale), 1e-8);
  }

  @Test
  void delaysThatCannotBeAreRefused() {
    assertThrows(OutOfRangeException.class, () -> Delays.logNormal(Double.NaN, 2));
    assertThrows(OutOfRangeException.class, () -> Delays.logNormal(1, Double.NaN));
    assertThrows(OutOfRangeException.class, () -> Delays.logNormal(2, 1));
    assertThrows(OutOfRangeException.class, () -> Delays.gamma(0, 1));
    assertThrows(OutOfRangeException.class, () -> Delays.gamma(1, 1));
    assertThrows(OutOfRangeException.class, () -> Delays.gamma(1, Double.POSITIVE_INFINITY));
  }

  /**
   * Sources: about 1 s active, 1.5 s attentive, 2 s for a pilot who must first notice (UK military
   * practice, second-hand); 2.3 to 3 s startled (FAA Safety Briefing, March/April 2016, quoted).
   */
  @Test
  void theStatesLeanOnPublishedReactionTimes() {
    assertTrue(PilotState.PRIMED.median() < 1 && PilotState.PRIMED.ninetyPercent() > 1);
    assertEquals(1.5, PilotState.ATTENTIVE.median());
    assertTrue(PilotState.DISTRACTED.median() > 2);
    assertTrue(PilotState.STARTLED.median() >= 2.3 && PilotState.STARTLED.median() <= 3);
  }

  @ParameterizedTest
  @EnumSource(PilotState.class)
  void aStateIsFoundByItsWordAndOwnsUpToWhatIsAssumed(PilotState state) {
    assertEquals(Optional.of(state), PilotState.named(state.label()));
    assertTrue(state.origin().contains("assumed"));
    assertEquals(Optional.empty(), PilotState.named("asleep"));
  }
}
