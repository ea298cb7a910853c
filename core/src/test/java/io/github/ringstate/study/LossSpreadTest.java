package io.github.ringstate.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.quantity.OutOfRangeException;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class LossSpreadTest {

  private static final double INFINITE = Double.POSITIVE_INFINITY;

  private static Outcome outcome(Ending ending, double loss) {
    OptionalDouble none = OptionalDouble.empty();
    OptionalDouble lost = Double.isNaN(loss) ? none : OptionalDouble.of(loss);
    return new Outcome(ending, lost, none, none, none, none, none, List.of());
  }

  private static final LossSpread MIXED =
      LossSpread.of(
          List.of(
              outcome(Ending.ARRESTED, 30),
              outcome(Ending.GROUND, 50),
              outcome(Ending.ARRESTED, 10),
              outcome(Ending.NOT_ARRESTED, Double.NaN),
              outcome(Ending.NO_ONSET, Double.NaN),
              outcome(Ending.ARRESTED, 20)));

  @Test
  void aDescentThatWasNotArrestedCountsAsInfiniteAndNeverAsNothing() {
    assertArrayEquals(new double[] {10, 20, 30, INFINITE, INFINITE}, MIXED.losses());
    assertEquals(0.6, MIXED.arrestedShare(), 1e-15);
    assertEquals(INFINITE, MIXED.quantile(0.95, 0.95).value());
    assertEquals(30, MIXED.quantile(0.6, 0.95).value());
  }

  @Test
  void whoDidNotMeetTheRingStateIsCountedApart() {
    assertEquals(5, MIXED.samples());
    assertEquals(1, MIXED.withoutOnset());
    LossSpread nobody = LossSpread.of(List.of(outcome(Ending.NO_ONSET, Double.NaN)));
    assertEquals(0, nobody.samples());
    assertTrue(Double.isNaN(nobody.arrestedShare()));
    assertTrue(Double.isNaN(nobody.shareLosing(10)));
    assertThrows(IllegalArgumentException.class, () -> nobody.quantile(0.5, 0.95));
    assertThrows(IllegalArgumentException.class, () -> nobody.shareLosing(10, 0.95));
  }

  @Test
  void whoLosesAsMuchAsTheHeightReachesTheGround() {
    assertEquals(1, MIXED.shareLosing(5));
    assertEquals(0.8, MIXED.shareLosing(20), 1e-15);
    assertEquals(0.6, MIXED.shareLosing(20.1), 1e-15);
    assertEquals(0.4, MIXED.shareLosing(1e6), 1e-15);
    assertEquals(Share.of(4, 5, 0.95), MIXED.shareLosing(20, 0.95));
  }

  @Test
  void spreadsPutTogetherHaveAllTheirPilots() {
    LossSpread both = LossSpread.pooled(List.of(MIXED, MIXED));
    assertEquals(10, both.samples());
    assertEquals(2, both.withoutOnset());
    assertEquals(MIXED.arrestedShare(), both.arrestedShare());
    assertEquals(20, both.losses()[2]);
  }

  @Test
  void theLossesHandedOutAreACopy() {
    MIXED.losses()[0] = 99;
    assertEquals(10, MIXED.losses()[0]);
  }

  @Test
  void samplingSufficesWhereTheBandIsNarrowEnoughOrBeyondAllThatIsFinite() {
    LossSpread narrow = LossSpread.ofLosses(filled(500, 20));
    LossSpread hopeless = LossSpread.ofLosses(filled(500, INFINITE));
    LossSpread nobody = LossSpread.ofLosses(filled(500, Double.NaN));
    Sampling meter = new Sampling(1000, 0.95, 0.95, 1);
    assertTrue(meter.suffices(narrow));
    assertTrue(meter.suffices(hopeless));
    assertFalse(meter.suffices(nobody));
    Sampling median = new Sampling(1000, 0.5, 0.95, 1);
    assertFalse(median.suffices(MIXED), "too few for a band");
    assertFalse(Sampling.of(1000).suffices(narrow), "all are to be flown");
  }

  private static double[] filled(int n, double value) {
    double[] values = new double[n];
    Arrays.fill(values, value);
    return values;
  }

  @Test
  void samplingThatCannotBeIsRefused() {
    assertThrows(OutOfRangeException.class, () -> Sampling.of(0));
    assertThrows(OutOfRangeException.class, () -> new Sampling(1, Double.NaN, 0.95, 0));
    assertThrows(OutOfRangeException.class, () -> new Sampling(1, 0.95, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> new Sampling(1, 0.95, 0.95, -1));
    assertThrows(IllegalArgumentException.class, () -> new Sampling(1, 0.95, 0.95, Double.NaN));
  }
}
