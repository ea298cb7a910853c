package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** An arrest as {@link Encounter} defines it, on descents that are told and not flown. */
class ArrestWatchTest {

  private final ArrestWatch watch = new ArrestWatch();

  @BeforeEach
  void forget() {
    watch.clear();
  }

  @Test
  void anArrestIsWatchedForTenSeconds() {
    assertFalse(watch.begun());
    watch.begin(12, -40, -15, 9, 3);
    assertTrue(watch.begun());
    assertEquals(22, watch.until());
    assertEquals(12, watch.time());
    assertEquals(-40, watch.low());
    assertEquals(-15, watch.recognisedAt());
    assertEquals(9, watch.peakDescent());
    assertEquals(3, watch.logged());
    watch.clear();
    assertFalse(watch.begun());
  }

  /** It counts from the first arrest, however low the craft comes later. */
  @Test
  void aLaterLowCountsAndTheWatchEndsNoLater() {
    watch.begin(12, -40, -15, 9, 3);
    assertFalse(watch.hadLaterLow());
    assertFalse(watch.isLower(-40));
    assertFalse(watch.isLower(-40.0009));
    assertTrue(watch.isLower(-40.0011));
    watch.lower(15, -41);
    assertTrue(watch.hadLaterLow());
    assertEquals(15, watch.time());
    assertEquals(-41, watch.low());
    assertEquals(22, watch.until());
    watch.clear();
    assertFalse(watch.hadLaterLow());
  }

  /** 100 ft/min is 0.508 m/s. */
  @Test
  void aDescentOfMoreThanAHundredFeetAMinuteIsNoLastingArrest() {
    assertTrue(watch.lasts(1));
    assertTrue(watch.lasts(-0.5079));
    assertFalse(watch.lasts(-0.5081));
  }
}
