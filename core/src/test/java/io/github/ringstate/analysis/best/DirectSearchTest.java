package io.github.ringstate.analysis.best;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.ringstate.analysis.best.ControlHistory.Knot;
import io.github.ringstate.analysis.best.ControlHistory.Rates;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class DirectSearchTest {

  private static final int KNOTS = 12;
  private static final double DURATION = 2;
  private static final double STEP = DURATION / (KNOTS - 1);
  private static final double WEIGHT = 500;

  /** The double integrator: how far it comes, and how fast it is at the end, exactly. */
  private static double[] flown(double[] force) {
    double speed = 0;
    double way = 0;
    for (int i = 1; i < KNOTS; i++) {
      way += speed * STEP + STEP * STEP * (2 * force[i - 1] + force[i]) / 6;
      speed += STEP * (force[i - 1] + force[i]) / 2;
    }
    return new double[] {way, speed};
  }

  /**
   * The farthest way from rest to rest in a time T under a force of at most one is T^2 / 4, by full
   * force ahead and, from half time on, back: bang-bang (Bryson and Ho, Applied Optimal Control,
   * ch. 3; from memory). With a force linear between knots, the change at half time takes one step
   * h, which costs h^2 / 12 (by hand). A speed left at the end is fined; by its shadow price T / 2
   * that is worth (T / 2)^2 / (4 weight).
   */
  @Test
  void theDoubleIntegratorIsFoundToBeBangBang() {
    List<double[]> starts = List.of(new double[KNOTS], new double[KNOTS]);
    starts.get(1)[3] = -0.9;
    List<DirectSearch.End> ends =
        new DirectSearch(8000, 5)
            .minimise(
                force -> {
                  double[] end = flown(force);
                  return WEIGHT * end[1] * end[1] - end[0];
                },
                force -> true,
                List.of(),
                starts);
    double farthest = DURATION * DURATION / 4 - STEP * STEP / 12;
    double fined = DURATION * DURATION / 16 / WEIGHT;
    for (DirectSearch.End end : ends) {
      assertEquals(-farthest - fined, end.value(), 1e-3);
      for (int i = 0; i < KNOTS; i++) {
        assertEquals(i < KNOTS / 2 ? 1 : -1, end.point()[i], 0.02, "knot " + i);
      }
    }
  }

  @Test
  void aHistoryIsLinearBetweenItsKnotsAndHeldBeyond() {
    List<Knot> knots = new ArrayList<>();
    knots.add(new Knot(0, 0.1, 0, 0.02));
    knots.add(new Knot(2, -0.1, 0.4, 0));
    ControlHistory history = new ControlHistory(knots, 1, new Rates(1, 1, 1));
    assertEquals(new Knot(0.5, 0.05, 0.1, 0.015), history.at(0.5));
    assertEquals(0.1, history.at(-1).pitch());
    assertEquals(knots.get(1), history.at(7));
    knots.add(new Knot(1, 0, 0, 0));
    assertThrows(
        IllegalArgumentException.class, () -> new ControlHistory(knots, 1, new Rates(1, 1, 1)));
  }
}
