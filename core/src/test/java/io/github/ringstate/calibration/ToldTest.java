package io.github.ringstate.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.CraftBody;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.UncertainNumbers;
import io.github.ringstate.recording.Channel;
import io.github.ringstate.recording.Estimate;
import io.github.ringstate.recording.FoundEncounter;
import io.github.ringstate.recording.Movement;
import io.github.ringstate.recording.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said of a fit's numbers, and what is thought of them before. */
class ToldTest {

  private static final double INFINITE = Double.POSITIVE_INFINITY;

  @Test
  void aNumberIsToldByHowMuchItsDeviationFell() {
    assertEquals(Told.BY_THE_DATA, Told.by(0));
    assertEquals(Told.BY_THE_DATA, Told.by(0.5));
    assertEquals(Told.PARTLY, Told.by(0.501));
    assertEquals(Told.PARTLY, Told.by(0.9));
    assertEquals(Told.NOT, Told.by(0.901));
    assertEquals(Told.NOT, Told.by(3));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, Double.NaN})
  void whatIsNoRatioIsRefused(double ratio) {
    assertThrows(IllegalArgumentException.class, () -> Told.by(ratio));
  }

  private static LeftOut leftOut(double recorded, double low, double high) {
    return new LeftOut("one", new Estimate(recorded, 1), 10, low, high);
  }

  @Test
  void anEncounterLeftOutLiesWithinItsBandOrBesideIt() {
    assertTrue(leftOut(8, 8, 12).within());
    assertTrue(leftOut(12, 8, 12).within());
    assertFalse(leftOut(7.9, 8, 12).within());
    assertFalse(leftOut(12.1, 8, 12).within());
    // a band without an end holds everything and tells nothing
    for (LeftOut open : List.of(leftOut(9, 8, INFINITE), leftOut(9, -INFINITE, 12))) {
      assertFalse(open.tells());
      assertFalse(open.within());
    }
  }

  private static FoundEncounter found(Optional<Movement> movement) {
    Estimate some = new Estimate(5, 1);
    return new FoundEncounter(
        0,
        some,
        100,
        Optional.empty(),
        movement,
        Optional.of(some),
        some,
        some,
        Verdict.RING_STATE);
  }

  private static Technique recovery(double pitch, double bank) {
    return Demonstration.recoveryOf(
        found(Optional.of(new Movement(Channel.BANK, new Estimate(6, 0.1), pitch, bank, 0))));
  }

  @Test
  void theRecoveryIsToTheSideWhereTheCraftBanksMoreThanItNosesDown() {
    assertEquals(Technique.LATERAL, recovery(-0.1, 0.11));
    assertEquals(Technique.LATERAL, recovery(-0.1, -0.11));
    assertEquals(Technique.FORWARD, recovery(-0.1, 0.09));
    assertEquals(Technique.FORWARD, recovery(Double.NaN, Double.NaN));
    assertEquals(Technique.FORWARD, Demonstration.recoveryOf(found(Optional.empty())));
  }

  private static List<RingStateInflow> models(int count) {
    List<RingStateInflow> models = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      models.add(
          RingStateInflow.standard().with(RingStateInflow.EXIT_TOTAL, i % 2 == 0 ? 1.3 : 1.4));
    }
    return models;
  }

  /** Models of two values in equal numbers: the covariance is the mean square about the craft's. */
  @Test
  void aPriorHasTheSpreadOfTheModelsAndOfWhatIsUsual() {
    Parameter exit = RingStateInflow.EXIT_TOTAL;
    Helicopter craft = DemoCraft.TRAINER;
    UncertainNumbers prior = Prior.of(List.of(exit, Helicopter.MASS), craft, models(20));
    double middle = UncertainNumbers.logit(exit, RingStateInflow.standard().numbers().get(exit));
    double low = UncertainNumbers.logit(exit, 1.3) - middle;
    double high = UncertainNumbers.logit(exit, 1.4) - middle;
    assertEquals((low * low + high * high) / 2, prior.covariance()[0][0], 1e-12);
    assertEquals(0, prior.covariance()[0][1]);
    // a twentieth of the mass; the slope of the logit is (high - low) / (above low x below high)
    double mass = craft.numbers().get(Helicopter.MASS);
    double least = Helicopter.MASS.quantity().low();
    double most = Helicopter.MASS.quantity().high();
    assertEquals(
        0.05 * mass * (most - least) / ((mass - least) * (most - mass)), prior.deviation(1), 1e-9);
    assertEquals(mass, prior.median(1), 1e-9 * mass);
  }

  @Test
  void aPriorOfNothingOrOfTooFewModelsIsRefused() {
    Helicopter craft = DemoCraft.TRAINER;
    assertThrows(IllegalArgumentException.class, () -> Prior.of(List.of(), craft, models(20)));
    assertThrows(
        IllegalArgumentException.class,
        () -> Prior.of(List.of(RingStateInflow.EXIT_TOTAL), craft, models(9)));
  }

  @Test
  void whatIsNoCovarianceIsRefused() {
    for (double[][] none : new double[][][] {{{0}}, {{-1}}, {{1, 2}, {2, 1}}, {{Double.NaN}}}) {
      assertThrows(IllegalArgumentException.class, () -> new Whitening(none));
    }
  }

  /**
   * Near an end of a range, 0 to 0.2 here, the slope of the logit is that a hundredth of the range
   * inside; the deviation is a twentieth of the value, and no less than a millionth of the range.
   */
  @ParameterizedTest
  @CsvSource({"1e-4, 5e-6", "0.1999, 0.009995", "1e-6, 2e-7"})
  void aPriorNearTheEndOfARangeHasTheSlopeInside(double value, double deviation) {
    Helicopter craft = DemoCraft.TRAINER.with(CraftBody.DOWNLOAD, value);
    UncertainNumbers prior = Prior.of(List.of(CraftBody.DOWNLOAD), craft, models(10));
    double expected = deviation * 0.2 / (0.002 * 0.198);
    assertEquals(expected, prior.deviation(0), 1e-9 * expected);
  }

  @Test
  void twoNumbersTakeTwentyModels() {
    List<Parameter> two = List.of(RingStateInflow.EXIT_TOTAL, Helicopter.MASS);
    Helicopter craft = DemoCraft.TRAINER;
    assertThrows(IllegalArgumentException.class, () -> Prior.of(two, craft, models(19)));
    assertEquals(2, Prior.of(two, craft, models(20)).parameters().size());
  }
}
