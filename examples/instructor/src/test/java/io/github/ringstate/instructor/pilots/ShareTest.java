package io.github.ringstate.instructor.pilots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShareTest {

  /** The two-sided 95 per cent point of the normal distribution (any table of it). */
  private static final double Z = 1.959963985;

  @ParameterizedTest
  @CsvSource({"1,10", "5,10", "50,1000", "999,1000", "3,7"})
  void theEndsOfTheIntervalSolveTheScoreEquation(long some, long all) {
    // Wilson (1927) defines the ends by |share - p| = z sqrt(p (1 - p) / n).
    Share share = Share.of(some, all);
    for (double p : new double[] {share.low(), share.high()}) {
      assertEquals(Z * Math.sqrt(p * (1 - p) / all), Math.abs(share.value() - p), 1e-9);
    }
    assertTrue(share.low() < share.value() && share.value() < share.high());
  }

  @Test
  void nobodyAndEverybodyLeaveTheIntervalOpenToOneSide() {
    // With nobody the score equation gives p = z^2 / (n + z^2).
    Share nobody = Share.of(0, 100);
    assertEquals(0, nobody.low());
    assertEquals(Z * Z / (100 + Z * Z), nobody.high(), 1e-9);
    Share everybody = Share.of(100, 100);
    assertEquals(1, everybody.high());
    assertEquals(1 - nobody.high(), everybody.low(), 1e-12);
  }

  @Test
  void sharesAreToldApartWhenTheirIntervalsDoNotMeet() {
    assertFalse(Share.of(10, 1000).overlaps(Share.of(100, 1000)));
    assertTrue(Share.of(10, 1000).overlaps(Share.of(15, 1000)));
    assertTrue(Share.of(10, 1000).with(0.09).overlaps(Share.of(100, 1000)));
  }
}
