package io.github.ringstate.calibration;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.calibration.UnsupportedFitException.Reason;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.UncertainNumbers;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which fits are refused: fits that were made up, of two independent numbers. */
class SupportTest {

  private static final Parameter FIRST = RingStateInflow.EXIT_TOTAL;
  private static final Parameter SECOND = RingStateInflow.LOSSES;
  private static final List<Parameter> TWO = List.of(FIRST, SECOND);

  private static UncertainNumbers numbers(
      double one, double other, double deviationOfOne, double deviationOfOther) {
    return new UncertainNumbers(
        TWO,
        new double[] {one, other},
        new double[][] {
          {deviationOfOne * deviationOfOne, 0}, {0, deviationOfOther * deviationOfOther}
        });
  }

  /** What is known before: the first number to 0.5 and the other to 1, as logits. */
  private static final UncertainNumbers PRIOR = numbers(0, 0, 0.5, 1);

  private static void support(UncertainNumbers prior, UncertainNumbers posterior, double square) {
    new Calibration(prior, Flights.CRAFT)
        .requireSupport(new Fit(prior, posterior, square, List.of(), List.of()), List.of());
  }

  private static UnsupportedFitException refusal(
      UncertainNumbers prior, UncertainNumbers posterior, double square) {
    return assertThrows(UnsupportedFitException.class, () -> support(prior, posterior, square));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.3, 1, 1.5})
  void aFitThatFollowsAndTellsIsSupported(double square) {
    assertDoesNotThrow(() -> support(PRIOR, numbers(0.3, -0.5, 0.2, 0.5), square));
  }

  @ParameterizedTest
  @CsvSource({"1.501, 1.501", "2.25, 2.25", "17.12345, 17.123", "NaN, NaN"})
  void aModelThatDoesNotFollowIsToldWithItsChiSquare(double square, String told) {
    UnsupportedFitException refused = refusal(PRIOR, numbers(0.3, -0.5, 0.2, 0.5), square);
    assertEquals(Reason.MISFIT, refused.reason());
    String message = String.valueOf(refused.getMessage());
    assertTrue(message.contains("chi-square per degree of freedom is " + told + ","), message);
  }

  /** Two numbers wholly told, both moved by 2.7 deviations: exp(-2.7^2) is less than 0.001. */
  @Test
  void numbersThatTogetherLieFarOffAreRefused() {
    double far = 2.7;
    UnsupportedFitException refused = refusal(PRIOR, numbers(far * 0.5, -far, 1e-3, 1e-3), 1);
    assertEquals(Reason.APART, refused.reason());
    assertTrue(
        String.valueOf(refused.getMessage()).contains("shifts is 7.29,"), refused.getMessage());
    // by 2.6: exp(-2.6^2) is more
    assertDoesNotThrow(() -> support(PRIOR, numbers(2.6 * 0.5, -2.6, 1e-3, 1e-3), 1));
  }

  /** One of many numbers moved by more than 3.5 deviations, the others as they were. */
  @ParameterizedTest
  @CsvSource({"3.45, false", "-3.45, false", "3.55, true", "-3.55, true"})
  void aNumberThatLiesFarOffIsRefusedThoughAllTogetherDoNot(double deviations, boolean refused) {
    List<Parameter> six =
        List.of(
            FIRST,
            SECOND,
            RingStateInflow.ONSET_AXIAL,
            RingStateInflow.ONSET_TOTAL,
            RingStateInflow.EXIT_AXIAL,
            RingStateInflow.FADE_EDGEWISE);
    double[][] before = new double[6][6];
    double[][] after = new double[6][6];
    for (int i = 0; i < 6; i++) {
      before[i][i] = 0.25;
      after[i][i] = 1e-6;
    }
    double[] moved = {deviations * 0.5, 0, 0, 0, 0, 0};
    UncertainNumbers prior = new UncertainNumbers(six, new double[6], before);
    UncertainNumbers posterior = new UncertainNumbers(six, moved, after);
    if (refused) {
      UnsupportedFitException far = refusal(prior, posterior, 1);
      assertEquals(Reason.BEYOND, far.reason());
      assertTrue(String.valueOf(far.getMessage()).contains(FIRST.name()), far.getMessage());
    } else {
      assertDoesNotThrow(() -> support(prior, posterior, 1));
    }
  }

  private static double logitOf(Parameter parameter, double share) {
    double low = parameter.quantity().low();
    double high = parameter.quantity().high();
    return UncertainNumbers.logit(parameter, low + share * (high - low));
  }

  /** Within 0.002 of the range from its end, where the recordings tell something of the number. */
  @ParameterizedTest
  @CsvSource({"0.0019, true", "0.0021, false", "0.9979, false", "0.9981, true"})
  void aNumberAtTheEndOfItsRangeIsRefused(double share, boolean refused) {
    double end = logitOf(SECOND, share);
    UncertainNumbers prior = numbers(0, end + 0.5, 0.5, 1);
    UncertainNumbers told = numbers(0.1, end, 0.2, 0.9);
    if (refused) {
      UnsupportedFitException beyond = refusal(prior, told, 1);
      assertEquals(Reason.BEYOND, beyond.reason());
      double value =
          SECOND.quantity().low() + share * (SECOND.quantity().high() - SECOND.quantity().low());
      assertTrue(
          String.valueOf(beyond.getMessage())
              .endsWith(SECOND.name() + " " + Math.rint(1000 * value) / 1000),
          beyond.getMessage());
    } else {
      assertDoesNotThrow(() -> support(prior, told, 1));
    }
    // told nothing of, it is there because it was thought to be
    assertDoesNotThrow(() -> support(prior, numbers(0.1, end, 0.2, 0.96), 1));
  }

  /** A number is told if its deviation is at most 0.95 of what it was. */
  @Test
  void recordingsThatTellNoNumberAreRefused() {
    UnsupportedFitException refused = refusal(PRIOR, numbers(0.1, 0.1, 0.48, 0.96), 1);
    assertEquals(Reason.NOTHING_TOLD, refused.reason());
    assertTrue(
        String.valueOf(refused.getMessage())
            .endsWith(List.of(FIRST.name(), SECOND.name()).toString()),
        refused.getMessage());
    assertDoesNotThrow(() -> support(PRIOR, numbers(0.1, 0.1, 0.47, 0.96), 1));
    assertDoesNotThrow(() -> support(PRIOR, numbers(0.1, 0.1, 0.48, 0.94), 1));
  }
}
