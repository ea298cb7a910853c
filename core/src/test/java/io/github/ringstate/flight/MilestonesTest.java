package io.github.ringstate.flight;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class MilestonesTest {

  @Test
  void theLastOneOnTheWayToAnInstantIsFoundAmongMany() {
    Milestones milestones = new Milestones();
    for (int i = 0; i < 300; i++) {
      double[] state = new double[State.SIZE];
      state[State.UP] = -i;
      // a step tried from the hundredth reached to the hundred and fifth
      milestones.add(
          0.1 * i, i == 100 ? 10.5 : 0.1 * i, state, 0.05 * i, 2 * i, 0.5 * i, i % 2 == 1);
    }
    assertEquals(0, milestones.onTheWayTo(-1));
    assertEquals(0, milestones.onTheWayTo(0.05));
    assertEquals(1, milestones.onTheWayTo(0.11));
    assertEquals(299, milestones.onTheWayTo(1e9));
    assertEquals(99, milestones.onTheWayTo(10.2));
    assertEquals(105, milestones.onTheWayTo(10.55));
    int found = milestones.onTheWayTo(20.55);
    assertEquals(205, found);
    double[] state = new double[State.SIZE];
    milestones.state(found, state);
    double[] expected = new double[State.SIZE];
    expected[State.UP] = -205;
    assertArrayEquals(expected, state);
    assertEquals(0.05 * 205, milestones.step(found));
    assertEquals(410, milestones.fastest(found));
    assertEquals(0.5 * 205, milestones.lingered(found));
    assertTrue(milestones.steady(found));
    assertFalse(milestones.steady(204));
    assertEquals(0.1 * 299, milestones.last());
  }
}
