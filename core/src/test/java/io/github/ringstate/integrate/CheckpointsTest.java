package io.github.ringstate.integrate;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class CheckpointsTest {

  @Test
  void theLastOneOnTheWayToAnInstantIsFoundAmongMany() {
    Checkpoints checkpoints = new Checkpoints(3);
    StepControl control = new StepControl();
    for (int i = 0; i < 300; i++) {
      control.goOn(0.05 * i, i % 2 == 1);
      // a step tried from the hundredth reached to the hundred and fifth
      checkpoints.add(
          0.1 * i,
          i == 100 ? 10.5 : 0.1 * i,
          new double[] {0, -i, 7},
          control,
          2 * i,
          0.5 * i,
          3L * i);
    }
    assertEquals(0, checkpoints.onTheWayTo(-1));
    assertEquals(0, checkpoints.onTheWayTo(0.05));
    assertEquals(1, checkpoints.onTheWayTo(0.11));
    assertEquals(299, checkpoints.onTheWayTo(1e9));
    assertEquals(99, checkpoints.onTheWayTo(10.2));
    assertEquals(105, checkpoints.onTheWayTo(10.55));
    int found = checkpoints.onTheWayTo(20.55);
    assertEquals(205, found);
    double[] state = new double[3];
    checkpoints.state(found, state);
    assertArrayEquals(new double[] {0, -205, 7}, state);
    assertEquals(0.05 * 205, checkpoints.step(found));
    assertEquals(410, checkpoints.least(found));
    assertEquals(0.5 * 205, checkpoints.timed(found));
    assertEquals(3 * 205, checkpoints.evaluations(found));
    assertTrue(checkpoints.steady(found));
    assertFalse(checkpoints.steady(204));
    assertEquals(0.1 * 299, checkpoints.last());
  }
}
