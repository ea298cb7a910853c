package io.github.ringstate.instructor.pilots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.study.LossSpread;
import io.github.ringstate.study.Quantile;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PilotLossesTest {

  /** Losses in feet; a negative one did not arrest, NaN met no ring state. */
  private static LossSpread spread(double... feet) {
    return MadeUp.losses(feet);
  }

  private static PilotLosses losses(LossSpread people, LossSpread... models) {
    return new PilotLosses(people, List.of(models));
  }

  @Test
  void quantilesAreInFeet() {
    PilotLosses losses = losses(spread(10, 20, 30, 40));
    assertEquals(20, losses.lossFt(0.5).orElseThrow().value(), 1e-12);
    assertEquals(40, losses.lossFt(0.95).orElseThrow().value(), 1e-12);
  }

  @Test
  void whoDidNotArrestLostMoreThanAnyOther() {
    PilotLosses losses = losses(spread(10, -1, 30, 20));
    assertEquals(20, losses.lossFt(0.5).orElseThrow().value(), 1e-12);
    assertTrue(Double.isInfinite(losses.lossFt(0.95).orElseThrow().value()));
  }

  @Test
  void aShareIsCutOffAndNeverRoundedUpToAll() {
    double[] feet = new double[30_000];
    Arrays.fill(feet, 10);
    feet[0] = -1;
    PilotLosses losses = losses(spread(feet));
    assertEquals(Optional.of(new BigDecimal("0.9999")), losses.arrestedShare());
    assertEquals("99.9 %", PilotCells.arrested(losses));
    feet[0] = 10;
    assertEquals("100 %", PilotCells.arrested(losses(spread(feet))));
  }

  @Test
  void nobodyInTheRingStateGivesNoFigures() {
    PilotLosses losses = losses(spread(Double.NaN, Double.NaN));
    assertEquals(Optional.empty(), losses.lossFt(0.5));
    assertEquals(Optional.empty(), losses.arrestedShare());
    assertEquals(Optional.empty(), losses.shareLosing(100));
    assertEquals("", PilotCells.arrested(losses));
  }

  @Test
  void theShareThatHitsTheGroundCountsThoseWhoLostTheHeightOrMore() {
    PilotLosses losses = losses(spread(50, 99, 101, -1));
    assertEquals(0.5, losses.shareLosing(100).orElseThrow().value());
  }

  @Test
  void modelsWidenTheBandAndDoNotMoveTheFigure() {
    double[] feet = new double[1000];
    double[] more = new double[1000];
    for (int i = 0; i < 1000; i++) {
      feet[i] = i;
      more[i] = 2 * i;
    }
    PilotLosses alone = losses(spread(feet));
    PilotLosses both = losses(spread(feet), spread(feet), spread(more));
    Quantile people = both.lossFt(0.95).orElseThrow();
    assertEquals(alone.lossFt(0.95), both.lossFt(0.95));
    Quantile widest = both.widestLossFt(0.95).orElseThrow();
    assertEquals(people.value(), widest.value());
    assertEquals(people.low(), widest.low());
    // of two models the greater, each with the interval of its own pilots: twice the losses
    assertEquals(2 * people.high(), widest.high(), 1e-9);
    assertEquals(alone.lossFt(0.95), alone.widestLossFt(0.95));
    assertEquals(Optional.empty(), alone.modelsLossFt(0.95));
  }

  @Test
  void aBandInWordsSaysWhereItIsOpen() {
    assertEquals("10 to 20", band(10, 20));
    assertEquals("10 and up", band(10, Double.POSITIVE_INFINITY));
    assertEquals("up to 20", band(Double.NEGATIVE_INFINITY, 20));
    assertEquals("none", band(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY));
    assertEquals("", PilotCells.band(Optional.empty(), Math::rint, Math::rint));
  }

  private static String band(double low, double high) {
    return PilotCells.band(Optional.of(new Quantile(0.95, 15, low, high)), Math::rint, Math::rint);
  }
}
