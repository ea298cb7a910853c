package io.github.ringstate.calibration;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.recording.Estimate;
import org.junit.jupiter.api.Test;

/** Bands with ends and without. */
class LossBandTest {

  @Test
  void aPredictionWithoutEndsIsNoneAndHoldsNothing() {
    Estimate recorded = new Estimate(40, 1);
    LossBand none = LossBand.of(Double.NaN, Double.NaN);
    LeftOut open = new LeftOut("one", recorded, none.middle(), none.low(), none.high());
    assertFalse(open.tells() || open.within());
    LossBand few = LossBand.of(40, Double.NaN, Double.NaN);
    assertTrue(Double.isNaN(few.middle()) && Double.isInfinite(few.high()), few::toString);
    LossBand never = LossBand.of(Double.POSITIVE_INFINITY);
    assertFalse(new LeftOut("two", recorded, 40, 30, never.high()).within());
    LeftOut closed = new LeftOut("three", recorded, 40, 30, 50);
    assertTrue(closed.tells() && closed.within());
    assertFalse(new LeftOut("four", recorded, 35, 30, 39).within());
  }
}
