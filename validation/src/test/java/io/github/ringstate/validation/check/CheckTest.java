package io.github.ringstate.validation.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class CheckTest {

  private static final Question QUESTION =
      new Source("author", "title", "", "1900", "").closedForm("name", "quantity", "1");

  @Test
  void aValueWithinTheToleranceOrAtItsEdgePasses() {
    assertEquals(Status.PASSED, QUESTION.near(2, 0.5, 2.5, "why").status());
    assertEquals(Status.FAILED, QUESTION.near(2, 0.5, Math.nextUp(2.5), "why").status());
  }

  @Test
  void theEndsOfARangeBelongToIt() {
    assertEquals(Status.PASSED, QUESTION.within(0.1, 0.3, 0.1, "why").status());
    assertEquals(Status.PASSED, QUESTION.within(0.1, 0.3, 0.3, "why").status());
    assertEquals(Status.FAILED, QUESTION.within(0.1, 0.3, 0.31, "why").status());
  }

  @Test
  void notANumberNeverPasses() {
    assertEquals(Status.FAILED, QUESTION.near(2, 0.5, Double.NaN, "why").status());
    assertEquals(Status.FAILED, QUESTION.near(Double.NaN, 0.5, 2, "why").status());
    assertEquals(Status.FAILED, QUESTION.atMost(1, Double.NaN, "why").status());
    assertEquals(
        Status.FAILED,
        QUESTION.near(2, 0.5, Double.NaN, "why").butDiffers(3, 4, "reason").status());
  }

  @Test
  void aKnownDifferenceMayNeitherGrowNorVanish() {
    assertEquals(Status.KNOWN_DIFFERENCE, known(3.5));
    assertEquals(Status.FAILED, known(4.1));
    assertEquals(Status.FAILED, known(2));
  }

  private static Status known(double actual) {
    return QUESTION.near(2, 0.5, actual, "why").butDiffers(3, 4, "reason").status();
  }

  @Test
  void theShareIsTheErrorOverTheTolerance() {
    assertEquals(0.5, QUESTION.near(2, 0.5, 1.75, "why").share());
    assertEquals(0, QUESTION.near(2, 0, 2, "why").share());
  }
}
