package io.github.ringstate.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.ringstate.craft.Fitted;
import io.github.ringstate.encounter.Encounter;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;

/** Against a lognormal distribution, which is what remains where the numbers are known. */
class FittedBandsTest {

  private static final double FORM = 0.2;

  private static Encounter known() {
    return Encounter.of(Flights.CRAFT.withFitted(Fitted.known(FORM))).withDelay(1);
  }

  @Test
  void withKnownNumbersTheFormAloneIsLeftOpen() {
    double loss = Encounter.of(Flights.CRAFT).withDelay(1).fly().altitudeLoss().orElseThrow();
    FittedBands bands = FittedBands.of(known());
    assertEquals(loss, bands.numbers().low(), 0.05);
    assertEquals(loss, bands.numbers().high(), 0.05);
    // 400 evenly spread draws place an end within about one of them
    assertEquals(-1.96, FastMath.log(bands.whole().low() / loss) / FORM, 0.15);
    assertEquals(1.96, FastMath.log(bands.whole().high() / loss) / FORM, 0.15);
  }

  @Test
  void aLossThatTakesTheHeightEndsOnTheGround() {
    double loss = Encounter.of(Flights.CRAFT).withDelay(1).fly().altitudeLoss().orElseThrow();
    FittedBands bands = FittedBands.of(known().withHeight(1.2 * loss));
    assertEquals(Double.POSITIVE_INFINITY, bands.whole().high());
  }

  @Test
  void aCraftThatWasNotFittedHasNone() {
    Encounter plain = Encounter.of(Flights.CRAFT);
    assertThrows(IllegalArgumentException.class, () -> FittedBands.of(plain));
  }
}
