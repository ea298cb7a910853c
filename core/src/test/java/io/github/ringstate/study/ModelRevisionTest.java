package io.github.ringstate.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ModelRevisionTest {

  @Test
  void theNameIsACheckSumOfTheLosses() {
    // the check value of CRC-32 for no input at all is zero (ISO/IEC/IEEE 8802-3)
    assertEquals("00000000", ModelRevision.of());
    assertEquals(ModelRevision.of(30, 40), ModelRevision.of(30, 40));
    assertNotEquals(ModelRevision.of(30, 40), ModelRevision.of(30, Math.nextUp(40)));
    assertNotEquals(ModelRevision.of(30, 40), ModelRevision.of(40, 30));
  }

  @Test
  void theRevisionOfThisBuildIsOneName() {
    assertTrue(ModelRevision.current().matches("[0-9a-f]{8}"), ModelRevision.current());
    assertEquals(ModelRevision.current(), ModelRevision.current());
  }
}
