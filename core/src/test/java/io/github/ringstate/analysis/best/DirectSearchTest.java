package io.github.ringstate.analysis.best;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.ringstate.analysis.best.ControlHistory.Knot;
import io.github.ringstate.analysis.best.ControlHistory.Rates;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
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

  /** A paraboloid about (0.5, 0), and a narrow hole that hardly a search falls into. */
  private static double holed(double[] x) {
    boolean hole = Math.abs(x[0] + 0.5) < 1e-2 && Math.abs(x[1]) < 1e-2;
    return (hole ? -1 : 0) + Math.pow(Math.abs(x[0]) - 0.5, 2) + x[1] * x[1] + (x[0] < 0 ? 0.1 : 0);
  }

  @Test
  void aTwinIsTriedAndOnlyWhatIsConfirmedCounts() {
    DirectSearch search = new DirectSearch(100, 3);
    List<UnaryOperator<double[]>> mirror = List.of(x -> new double[] {-x[0], x[1]});
    List<double[]> start = List.of(new double[] {0.5, 0});
    assertEquals(
        -0.9,
        search.minimise(DirectSearchTest::holed, x -> true, mirror, start).get(0).value(),
        1e-3);
    DirectSearch.End right =
        search.minimise(DirectSearchTest::holed, x -> x[0] > 0, mirror, start).get(0);
    assertEquals(0, right.value(), 1e-3);
    assertEquals(0.5, right.point()[0], 0.05);
    assertEquals(List.of(), search.minimise(DirectSearchTest::holed, x -> false, mirror, start));
    assertThrows(IllegalArgumentException.class, () -> new DirectSearch(99, 3));
  }

  @Test
  void theSearchThatEndsLowestComesFirst() {
    List<double[]> starts = List.of(new double[] {0.5, 0}, new double[] {-0.5, 0});
    List<DirectSearch.End> ends =
        new DirectSearch(100, 3).minimise(DirectSearchTest::holed, x -> true, List.of(), starts);
    assertEquals(2, ends.size());
    assertEquals(-0.9, ends.get(0).value(), 1e-3);
    assertEquals(0, ends.get(1).value(), 1e-3);
  }

  /**
   * Before its first knot a history holds it; between others it is linear from each to the next.
   */
  @Test
  void aHistoryMayBeginLate() {
    List<Knot> knots =
        List.of(new Knot(1, 0.2, 0, 0.05), new Knot(3, 0.6, 0.4, 0.25), new Knot(4, 0, 0, 0));
    ControlHistory history = new ControlHistory(knots, 1, new Rates(1, 1, 1));
    assertEquals(knots.get(0), history.at(0));
    assertEquals(knots.get(1), history.at(3));
    Knot quarter = history.at(1.5);
    assertEquals(0.3, quarter.pitch(), 1e-15);
    assertEquals(0.1, quarter.bank(), 1e-15);
    assertEquals(0.1, quarter.collective(), 1e-15);
    assertEquals("history", history.name());
    assertEquals(1, history.phases().size());
    assertThrows(
        IllegalArgumentException.class, () -> new ControlHistory(knots, 0, new Rates(1, 1, 1)));
    List<Knot> twice = List.of(knots.get(0), knots.get(0));
    assertThrows(
        IllegalArgumentException.class, () -> new ControlHistory(twice, 1, new Rates(1, 1, 1)));
  }
}
