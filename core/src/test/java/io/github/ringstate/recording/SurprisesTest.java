package io.github.ringstate.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is made of readings that are so and so far off. */
class SurprisesTest {

  /** Of a reading so far off, half a unit is a standard deviation. */
  private static final double DEVIATION = 0.5;

  /** Readings of heights that surprise, from an index on: where a step is found, or negative. */
  private static int found(Surprises surprises, Channel channel, int from, double... innovations) {
    int found = -1;
    for (int i = 0; i < innovations.length; i++) {
      double off = innovations[i];
      assertFalse(surprises.takes(channel, from + i, off, off / DEVIATION, DEVIATION));
      found = surprises.stepFound();
      assertTrue(found < 0 || i + 1 == innovations.length, "a step before the last");
    }
    return found;
  }

  @Test
  void whatIsBeyondFiveDeviationsIsASurprise() {
    Surprises surprises = new Surprises();
    assertTrue(surprises.takes(Channel.HEIGHT, 0, 2.5, 5, DEVIATION));
    assertTrue(surprises.takes(Channel.HEIGHT, 1, -2.5, -5, DEVIATION));
    assertEquals(Map.of(), surprises.outliers());
    assertEquals(-1, found(surprises, Channel.HEIGHT, 2, 2.6));
    assertEquals(-1, found(surprises, Channel.HEIGHT, 3, -2.6));
    assertEquals(Map.of(Channel.HEIGHT, Set.of(2, 3)), surprises.outliers());
  }

  /** Within five deviations either way of the middle between them, so within 5 of each other. */
  @Test
  void threeInARowThatAgreeAreAStepBeforeTheFirst() {
    Surprises surprises = new Surprises();
    assertEquals(7, found(surprises, Channel.HEIGHT, 7, -100, -103, -104.9));
    assertEquals(Map.of(Channel.HEIGHT, Set.of(7)), surprises.steps());
    assertEquals(104.9 * 104.9, surprises.step(Channel.HEIGHT, 7), 1e-9);
    assertEquals(0, surprises.step(Channel.HEIGHT, 8));
    assertEquals(0, surprises.step(Channel.PRESSURE_ALTITUDE, 7));
    assertFalse(surprises.hasStepped(Channel.HEIGHT, 6));
    assertTrue(surprises.hasStepped(Channel.HEIGHT, 7));
    assertTrue(surprises.hasStepped(Channel.HEIGHT, 8));
    assertFalse(surprises.hasStepped(Channel.PRESSURE_ALTITUDE, 8));
    // the same step once more, for what was found was too little
    assertEquals(7, found(surprises, Channel.HEIGHT, 7, 30, 30, 30));
    assertEquals(104.9 * 104.9 + 900, surprises.step(Channel.HEIGHT, 7), 1e-9);
    assertEquals(-1, found(new Surprises(), Channel.HEIGHT, 7, 100, 103, 105.1));
  }

  @Test
  void eightInARowThatDoNotAgreeAreAStepToo() {
    Surprises surprises = new Surprises();
    assertEquals(
        4, found(surprises, Channel.PRESSURE_ALTITUDE, 4, 50, -90, 70, 50, -50, 60, 80, 40));
    assertEquals(90 * 90, surprises.step(Channel.PRESSURE_ALTITUDE, 4), 1e-9);
  }

  @Test
  void aReadingThatIsTakenEndsARow() {
    Surprises surprises = new Surprises();
    found(surprises, Channel.HEIGHT, 0, 50, 50);
    assertTrue(surprises.takes(Channel.HEIGHT, 2, 0, 0, DEVIATION));
    assertEquals(-1, found(surprises, Channel.HEIGHT, 3, 50, 50));
    assertEquals(3, found(surprises, Channel.HEIGHT, 5, 50), "the third after it");
    assertEquals(Map.of(Channel.HEIGHT, Set.of(0, 1)), surprises.outliers());
  }

  /** A vertical speed has no level. */
  @Test
  void aVerticalSpeedDoesNotStep() {
    Surprises surprises = new Surprises();
    found(surprises, Channel.VERTICAL_SPEED, 0, 9, 9, 9, 9, 9, 9, 9, 9, 9);
    assertEquals(Map.of(), surprises.steps());
    assertEquals(9, surprises.outliers().get(Channel.VERTICAL_SPEED).size());
  }

  /** The filter goes over it again; what was surprising before stays so. */
  @Test
  void fromAStepOnSurprisesAreForgotten() {
    Surprises surprises = new Surprises();
    found(surprises, Channel.HEIGHT, 3, 50);
    surprises.takes(Channel.HEIGHT, 4, 0, 0, DEVIATION);
    found(surprises, Channel.VERTICAL_SPEED, 10, 9, 9);
    assertEquals(10, found(surprises, Channel.HEIGHT, 10, 50, 50, 50));
    assertEquals(-1, surprises.stepFound(), "it is told once");
    assertEquals(Map.of(Channel.HEIGHT, Set.of(3)), surprises.outliers());
    assertEquals(-1, found(surprises, Channel.HEIGHT, 10, 50, 50));
  }

  @Test
  void aStepMayComeWithTheFirstReading() {
    Surprises surprises = new Surprises();
    assertEquals(0, found(surprises, Channel.HEIGHT, 0, 50, 50, 50));
    assertEquals(Map.of(), surprises.outliers());
  }
}
