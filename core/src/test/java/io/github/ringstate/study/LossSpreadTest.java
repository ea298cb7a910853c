package io.github.ringstate.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.encounter.Ending;
import io.github.ringstate.quantity.OutOfRangeException;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class LossSpreadTest {

  private static final double INFINITE = Double.POSITIVE_INFINITY;

  private static final LossSpread MIXED =
      LossSpread.of(
          new Ending[] {
            Ending.ARRESTED,
            Ending.GROUND,
            Ending.ARRESTED,
            Ending.NOT_ARRESTED,
            Ending.NO_ONSET,
            Ending.ARRESTED
          },
          new double[] {30, 50, 10, Double.NaN, Double.NaN, 20});

  private static LossSpread same(int n, Ending ending, double loss) {
    Ending[] endings = new Ending[n];
    double[] losses = new double[n];
    Arrays.fill(endings, ending);
    Arrays.fill(losses, loss);
    return LossSpread.of(endings, losses);
  }

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
    assertEquals(1, MIXED.count(Ending.GROUND));
    assertEquals(1, MIXED.count(Ending.NOT_ARRESTED));
    LossSpread nobody = same(1, Ending.NO_ONSET, Double.NaN);
    assertEquals(0, nobody.samples());
    assertTrue(Double.isNaN(nobody.arrestedShare()));
    assertTrue(Double.isNaN(nobody.shareLosing(10)));
    assertThrows(IllegalArgumentException.class, () -> nobody.quantile(0.5, 0.95));
    assertThrows(IllegalArgumentException.class, () -> nobody.loss(0.5));
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
  void whatIsNoHeightHasNoShare() {
    assertThrows(IllegalArgumentException.class, () -> MIXED.shareLosing(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> MIXED.shareLosing(Double.NaN, 0.95));
  }

  @Test
  void aLossIsTheValueOfItsQuantile() {
    for (double share : new double[] {0.1, 0.2, 0.5, 0.6}) {
      assertEquals(MIXED.quantile(share, 0.9).value(), MIXED.loss(share));
    }
    assertEquals(Double.POSITIVE_INFINITY, MIXED.loss(0.9));
  }

  @Test
  void theLossesHandedOutAreACopy() {
    MIXED.losses()[0] = 99;
    assertEquals(10, MIXED.losses()[0]);
  }

  @Test
  void samplingSufficesWhereTheBandIsNarrowEnoughOrBeyondAllThatIsFinite() {
    LossSpread narrow = same(500, Ending.ARRESTED, 20);
    LossSpread hopeless = same(500, Ending.NOT_ARRESTED, 0);
    LossSpread nobody = same(500, Ending.NO_ONSET, 0);
    Sampling meter = new Sampling(1000, 0.95, 0.95, 1);
    assertTrue(meter.suffices(narrow));
    assertTrue(meter.suffices(hopeless));
    assertFalse(meter.suffices(nobody));
    Sampling median = new Sampling(1000, 0.5, 0.95, 1);
    assertFalse(median.suffices(MIXED), "too few for an interval");
    assertFalse(Sampling.of(1000).suffices(narrow), "all are to be flown");
  }

  /** Source: Bonferroni's inequality for two looks. */
  @Test
  void theIntervalsOfAStudyThatMayStopAreAtHalfTheChanceOfAnError() {
    assertEquals(MIXED.quantile(0.6, 0.975), MIXED.stopped().quantile(0.6, 0.95));
    assertEquals(MIXED.shareLosing(20, 0.9), MIXED.stopped().shareLosing(20, 0.8));
    assertArrayEquals(MIXED.losses(), MIXED.stopped().losses());
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
