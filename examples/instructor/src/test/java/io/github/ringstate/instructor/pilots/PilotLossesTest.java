package io.github.ringstate.instructor.pilots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.LossSpread;
import io.github.ringstate.study.Quantile;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PilotLossesTest {

  /** Losses in feet; a negative one did not arrest, NaN met no ring state. */
  private static LossSpread spread(double... feet) {
    return MadeUp.losses(feet);
  }

  private static PilotLosses losses(LossSpread people, LossSpread... models) {
    return new PilotLosses(people, List.of(models));
  }

  @Test
  void anIntervalIsRoundedInTheStepsOfItsHeightAndHoldsIt() {
    for (double height = 60; height < 400; height += 0.7) {
      for (double width : new double[] {0.5, 3, 9, 20}) {
        double margin = Unit.FOOT.toSi(50);
        Quantile loss = new Quantile(0.95, height, height - width, height + 0.6 * width);
        String needed = PilotCells.needed(loss, margin, UnitSystem.AVIATION);
        assertEquals(
            Double.parseDouble(PilotCells.most(loss, UnitSystem.AVIATION)) + 50,
            Double.parseDouble(needed),
            "figures beside each other add up");
        String[] ends =
            PilotCells.interval(Optional.of(loss), margin, UnitSystem.AVIATION).split(" to ", -1);
        assertTrue(Double.parseDouble(ends[0]) <= Double.parseDouble(needed), ends[0] + needed);
        assertTrue(Double.parseDouble(needed) <= Double.parseDouble(ends[1]), needed + ends[1]);
      }
    }
  }

  @Test
  void whoDidNotArrestLostMoreThanAnyOther() {
    PilotLosses losses = losses(spread(10, -1, 30, 20));
    assertEquals(20 * 0.3048, losses.loss(0.5).orElseThrow().value(), 1e-12);
    assertTrue(Double.isInfinite(losses.loss(0.95).orElseThrow().value()));
    assertEquals("not arrested", losses.failure());
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
    assertEquals(Optional.empty(), losses.loss(0.5));
    assertEquals(Optional.empty(), losses.arrestedShare());
    assertEquals(Optional.empty(), losses.shareLosing(100 * 0.3048));
    assertEquals("", PilotCells.arrested(losses));
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
    Quantile people = both.loss(0.95).orElseThrow();
    assertEquals(alone.loss(0.95), both.loss(0.95));
    Quantile widest = both.widestLoss(0.95).orElseThrow();
    assertEquals(people.value(), widest.value());
    assertEquals(people.low(), widest.low());
    // twice 949 ft, the 950th smallest of 0, 1, 2, ... ft
    assertEquals(2 * 949 * 0.3048, widest.high(), 1e-9);
    assertEquals(alone.loss(0.95), alone.widestLoss(0.95));
    assertEquals(Optional.empty(), alone.modelsLoss(0.95));
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

  @Test
  void seventyTwoPilotsAreTheFewestForBothEndsOfAnIntervalAtNinetyFivePerCent() {
    // closed form: 0.95^71 = 0.0262 is more than half of 5 %, 0.95^72 = 0.0249 is not
    assertEquals(72, PilotLosses.fewest(0.95));
    // of the smallest and the greatest of six values: 0.5^6 = 0.0156, 0.5^5 = 0.0313
    assertEquals(6, PilotLosses.fewest(0.5));
    assertEquals(PilotLosses.fewest(0.9), PilotLosses.fewest(0.1));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.1, 0.5, 0.9, 0.95, 0.99, 0.999})
  void anIntervalHasBothEndsFromTheFewestPilotsOnAndNotBefore(double share) {
    int fewest = Math.toIntExact(PilotLosses.fewest(share));
    PilotLosses enough = losses(spread(new double[fewest]));
    assertFalse(enough.tooFew(share));
    assertTrue(Double.isFinite(enough.loss(share).orElseThrow().halfWidth()));
    PilotLosses few = losses(spread(new double[fewest - 1]));
    assertTrue(few.tooFew(share));
    assertTrue(Double.isInfinite(few.loss(share).orElseThrow().halfWidth()));
  }

  @Test
  void whoDidNotMeetTheRingStateIsNotCountedAmongThePilots() {
    double[] feet = new double[72];
    feet[0] = Double.NaN;
    assertTrue(losses(spread(feet)).tooFew(0.95));
  }
}
