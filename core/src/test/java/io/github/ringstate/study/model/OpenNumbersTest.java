package io.github.ringstate.study.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.QuarticFit;
import io.github.ringstate.inflow.RingBand;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.TwoSegmentFit;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.study.Workers;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class OpenNumbersTest {

  private static final long SEED = 7;

  private static final Accepted<RingStateInflow> ACCEPTED = OpenNumbers.accepted(24, SEED);

  /** The boundary is looked for by the library's own finder, which rejection does without. */
  @Test
  void everyAcceptedModelMeetsEveryRange() {
    for (RingStateInflow model : ACCEPTED.kept()) {
      for (PublishedRange range : PublishedRanges.ALL) {
        assertTrue(range.holds(model), () -> range.name() + " of " + model.numbers());
      }
      HeaveDamping damping = new HeaveDamping(model);
      List<RingBand> bands = damping.bands(0);
      assertEquals(1, bands.size());
      double onset = bands.get(0).onset();
      double exit = bands.get(0).exit().orElseThrow();
      assertTrue(onset >= -0.6 && onset <= -0.4, "onset " + onset);
      assertTrue(exit >= -1.6 && exit <= -1.4, "exit " + exit);
      double reach = damping.reach().orElseThrow();
      assertEquals(reach, PublishedRanges.REACH.measure().applyAsDouble(model), 2e-3);
    }
  }

  /** Both fits as they are printed in textbooks (Leishman, ch. 2; from memory), k = 1.15. */
  @Test
  void theRangeOfPowerIsThatBetweenTheTwoFits() {
    double[] quartic = {1.0433, 0.966, 0.7887};
    double[] segments = {1.225, 1.3, 1.3675};
    for (int i = 0; i < 3; i++) {
      assertEquals(quartic[i], PublishedRanges.POWER.get(i).low(), 5e-5);
      assertEquals(segments[i], PublishedRanges.POWER.get(i).high(), 5e-5);
    }
    assertEquals(0.893 + 0.15, new QuarticFit(1.15).total(0, -0.5), 5e-4);
    assertEquals(1.15 * 1.5 - 0.5, new TwoSegmentFit(1.15).total(0, -0.5), 1e-12);
  }

  @Test
  void theStandardModelMissesThePowerAtTheExitAndNothingElse() {
    RingStateInflow standard = RingStateInflow.standard();
    PublishedRange power = PublishedRanges.POWER.get(2);
    for (PublishedRange range : PublishedRanges.ALL) {
      assertEquals(!range.equals(power), range.holds(standard), range.name());
    }
    assertEquals(1.4, power.measure().applyAsDouble(standard), 1e-9);
    assertFalse(PublishedRanges.hold(standard));
  }

  /**
   * The less flow passes the disc at the onset, the better the sink is held there; a deeper fold
   * drives it on.
   */
  @Test
  void theSinkRunsAwayTheSoonerTheMoreTheInflowRisesAcrossTheFold() {
    double standard = runaway(0.9, 1.25);
    assertTrue(standard > 6 && standard < 8, "standard model: " + standard + " s");
    assertTrue(runaway(0.9, 1.7) < standard);
    assertTrue(runaway(0.9, 1.02) > standard);
    assertTrue(runaway(0.75, 1.25) > PublishedRanges.RUNAWAY.high());
  }

  private static double runaway(double onset, double exit) {
    return PublishedRanges.RUNAWAY
        .measure()
        .applyAsDouble(
            RingStateInflow.standard()
                .with(RingStateInflow.ONSET_TOTAL, onset)
                .with(RingStateInflow.EXIT_TOTAL, exit));
  }

  /** Each range alone has draws that it rejects: none of them asks for nothing. */
  @Test
  void evenDrawsContradictEachOfTheRanges() {
    List<RingStateInflow> drawn =
        LongStream.range(0, 60).mapToObj(i -> OpenNumbers.drawn(SEED, i, Drawing.SOBOL)).toList();
    for (PublishedRange range : PublishedRanges.ALL) {
      long met = drawn.stream().filter(range::holds).count();
      assertTrue(met > 0 && met < drawn.size(), range.name() + ": " + met);
    }
  }

  @Test
  void theAcceptanceIsThatOfARecount() {
    List<ParameterSet> again =
        LongStream.range(0, ACCEPTED.draws())
            .mapToObj(i -> OpenNumbers.drawn(SEED, i, Drawing.SOBOL))
            .filter(PublishedRanges::hold)
            .map(RingStateInflow::numbers)
            .toList();
    assertEquals(ACCEPTED.kept().stream().map(RingStateInflow::numbers).toList(), again);
    assertEquals((double) again.size() / ACCEPTED.draws(), ACCEPTED.share());
  }

  @Test
  void theModelsAreThoseOfTheSeedWhateverTheNumberOfThreadsAndOfModels() throws Exception {
    Accepted<RingStateInflow> alone = Workers.with(1, () -> OpenNumbers.accepted(6, SEED));
    assertEquals(ACCEPTED.kept().subList(0, 6), alone.kept());
    assertTrue(alone.draws() < ACCEPTED.draws());
    assertFalse(OpenNumbers.accepted(1, SEED + 1).kept().equals(ACCEPTED.kept().subList(0, 1)));
  }

  @Test
  void aRangeGoesUpward() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new PublishedRange("none", "1", 1, 1, "none", model -> 1));
    assertThrows(
        IllegalArgumentException.class,
        () -> new PublishedRange("none", "1", Double.NaN, 1, "none", model -> 1));
    assertFalse(
        new PublishedRange("none", "1", 0, 1, "none", model -> Double.NaN)
            .holds(RingStateInflow.standard()));
  }
}
