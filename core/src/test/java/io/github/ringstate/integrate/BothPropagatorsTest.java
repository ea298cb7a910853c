package io.github.ringstate.integrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.integrate.Event.Crossing;
import io.github.ringstate.integrate.NodeListener.Node;
import io.github.ringstate.integrate.Problem.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What legs tell, what ends them early, and what is left when they begin anew. */
class BothPropagatorsTest {

  private enum Way {
    FAST {
      @Override
      Propagator<String, Point> propagator(int size) {
        double[] scales = new double[size];
        Arrays.fill(scales, 1);
        return new FastPropagator<>(FastSettings.plain(scales, 1e-8));
      }
    },
    PRECISE {
      @Override
      Propagator<String, Point> propagator(int size) {
        return new PrecisePropagator<>(DormandPrince::new, 1e-9, 0);
      }
    };

    abstract Propagator<String, Point> propagator(int size);

    Propagator<String, Point> started(Problem problem) {
      Propagator<String, Point> propagator = propagator(problem.start().length);
      propagator.start(0, problem.start());
      return propagator;
    }
  }

  private static final Problem OSCILLATOR = Problem.oscillator();

  private static Event<String, Point> falls() {
    return Event.stop("falls", Crossing.FALLING, OSCILLATOR.quantity());
  }

  /** The exact solution is the cosine. */
  @ParameterizedTest
  @EnumSource
  void nodesLieOnTheSolutionInOrderAndCloseTogether(Way way) {
    Propagator<String, Point> propagator = way.started(OSCILLATOR);
    List<Node> nodes = new ArrayList<>();
    List<Double> times = new ArrayList<>();
    propagator.listen(
        (node, at) -> {
          nodes.add(node);
          times.add(at.time());
          assertEquals(FastMath.cos(at.time()), at.state()[0], 1e-5);
        });
    assertNull(OSCILLATOR.fly(propagator, 1, falls()));
    assertEquals("falls", OSCILLATOR.fly(propagator, 5, falls()));
    assertEquals(0, times.get(0));
    assertEquals(2, nodes.stream().filter(Node.BEGIN::equals).count());
    int begin = nodes.lastIndexOf(Node.BEGIN);
    assertEquals(1, times.get(begin), 1e-9);
    for (int i = 1; i < nodes.size(); i++) {
      double apart = times.get(i) - times.get(i - 1);
      assertTrue(i == begin ? apart == 0 : apart > 0, "node " + i + " after " + apart);
      if (way == Way.PRECISE) {
        assertTrue(apart <= 0.02 + 1e-12, "node " + i + " after " + apart);
      } else {
        assertFalse(nodes.get(i) == Node.WITHIN);
      }
    }
    assertEquals(way == Way.PRECISE, nodes.contains(Node.WITHIN));
    assertEquals(Node.END, nodes.get(nodes.size() - 1));
    assertEquals(propagator.time(), times.get(times.size() - 1), 1e-9);
    propagator.listen(null);
    int heard = times.size();
    OSCILLATOR.fly(propagator, 2);
    assertEquals(heard, times.size());
  }

  /** Nodes within a step divide it evenly. */
  @Test
  void partsOfAStepAreOfOneLength() {
    Propagator<String, Point> propagator = Way.PRECISE.started(OSCILLATOR);
    List<Double> parts = new ArrayList<>();
    double[] last = new double[1];
    propagator.listen(
        (node, at) -> {
          parts.add(at.time() - last[0]);
          last[0] = at.time();
          if (node == Node.END) {
            double mean = parts.stream().mapToDouble(part -> part).average().orElseThrow();
            parts.forEach(part -> assertEquals(mean, part, 1e-12));
          }
          if (node != Node.WITHIN) {
            parts.clear();
          }
        });
    OSCILLATOR.fly(propagator, 3);
  }

  @ParameterizedTest
  @EnumSource
  void aBudgetOfEvaluationsEndsALegThatNeedsMore(Way way) {
    Propagator<String, Point> free = way.started(OSCILLATOR);
    Problem.Counted counted = OSCILLATOR.equations();
    free.propagate(counted, 1, List.of());
    int needed = counted.count();
    Propagator<String, Point> enough = way.started(OSCILLATOR);
    enough.budget(needed);
    OSCILLATOR.fly(enough, 1);
    assertEquals(free.state(0), enough.state(0));
    Propagator<String, Point> less = way.started(OSCILLATOR);
    // the fast one counts by steps of three evaluations, and not the first rates
    less.budget(needed - 4);
    Problem.Counted asked = OSCILLATOR.equations();
    UnfinishedLegException ended =
        assertThrows(UnfinishedLegException.class, () -> less.propagate(asked, 1, List.of()));
    assertTrue(ended.time() > 0.5 && ended.time() < 1.01, "ended at " + ended.time());
    assertEquals(needed, (double) ended.evaluations(), 4);
    assertTrue(asked.count() <= needed, asked.count() + " of " + needed);
    // starting anew, it has it all again
    less.start(0, OSCILLATOR.start());
    OSCILLATOR.fly(less, 0.5);
    less.restart(0);
    OSCILLATOR.fly(less, 0.5);
    assertEquals(0.5, less.time(), 1e-9);
  }

  @ParameterizedTest
  @EnumSource
  void anInterruptedThreadGivesUp(Way way) {
    Propagator<String, Point> propagator = way.started(OSCILLATOR);
    Thread.currentThread().interrupt();
    CancellationException given =
        assertThrows(CancellationException.class, () -> OSCILLATOR.fly(propagator, 1));
    assertEquals(Propagator.INTERRUPTED, given.getMessage());
    assertTrue(Thread.interrupted());
  }

  @ParameterizedTest
  @EnumSource
  void whatIsNotedStandsInTheLogWithTimeAndState(Way way) {
    Propagator<String, Point> propagator = way.started(OSCILLATOR);
    OSCILLATOR.fly(propagator, 1);
    propagator.note("here");
    assertEquals("here", propagator.log().kind(0));
    assertEquals(propagator.time(), propagator.log().time(0));
    assertEquals(propagator.state(1), propagator.log().state(0, 1));
    assertFalse(propagator.isGivenUp());
  }

  @ParameterizedTest
  @EnumSource
  void aSharedLegEndsAtAnEventToo(Way way) {
    Propagator<String, Point> propagator = way.started(OSCILLATOR);
    assertEquals("falls", propagator.propagateShared(OSCILLATOR.equations(), 5, List.of(falls())));
    assertEquals(Math.PI / 2, propagator.time(), 1e-6);
  }

  @ParameterizedTest
  @EnumSource
  void startingAnewLeavesNothingOfWhatWas(Way way) {
    Propagator<String, Point> used = way.started(OSCILLATOR);
    used.propagateShared(OSCILLATOR.equations(), 5, List.of(falls()));
    OSCILLATOR.fly(used, 9);
    used.start(0, new double[] {0.5, 0});
    Propagator<String, Point> fresh = way.propagator(2);
    fresh.start(0, new double[] {0.5, 0});
    assertEquals(0, used.log().size());
    assertEquals(0.5, used.least());
    for (Propagator<String, Point> each : List.of(used, fresh)) {
      each.propagateShared(OSCILLATOR.equations(), 2, List.of());
      each.restart(1.5);
      each.propagateShared(OSCILLATOR.equations(), 1.5, List.of());
    }
    assertEquals(fresh.state(0), used.state(0));
    assertEquals(0.5 * FastMath.cos(1.5), used.state(0), 1e-6);
  }

  /** Samples up to an event at pi / 2, and the first one of a leg that begins later. */
  @ParameterizedTest
  @EnumSource
  void samplesEndWithTheLeg(Way way) {
    Propagator<String, Point> propagator = way.started(OSCILLATOR);
    List<Double> times = new ArrayList<>();
    propagator.sample(new Sampler<>(0.5, at -> times.add(at.time())));
    OSCILLATOR.fly(propagator, 5, falls());
    assertEquals(List.of(0.0, 0.5, 1.0, 1.5), times);
    propagator.sample(null);
    OSCILLATOR.fly(propagator, 2.3);
    times.clear();
    propagator.sample(new Sampler<>(0.5, at -> times.add(at.time())));
    OSCILLATOR.fly(propagator, 3.6);
    assertEquals(List.of(2.5, 3.0, 3.5), times);
    assertThrows(IllegalArgumentException.class, () -> new Sampler<>(0, at -> {}));
    assertThrows(IllegalArgumentException.class, () -> new Sampler<>(Double.NaN, at -> {}));
  }

  @ParameterizedTest
  @EnumSource
  void aLegShorterThanANanosecondIsNotPropagated(Way way) {
    Propagator<String, Point> propagator = way.started(OSCILLATOR);
    Problem.Counted counted = OSCILLATOR.equations();
    propagator.propagate(counted, 1e-9, List.of());
    assertEquals(0, propagator.time());
    propagator.propagate(counted, 3e-9, List.of());
    assertEquals(3e-9, propagator.time(), 1e-24);
  }

  /** y' = y^2 from 1 is 1 / (1 - t), which has no value at 1 (any textbook). */
  @Test
  void aSolutionThatEndsIsNotPropagatedBeyondItsEnd() {
    Problem pole =
        new Problem(
            "a pole",
            new double[] {1},
            2,
            (t, y, rates) -> rates[0] = y[0] * y[0],
            t -> new double[] {1 / (1 - t)},
            at -> at.state()[0],
            true,
            0);
    Propagator<String, Point> precise = Way.PRECISE.started(pole);
    UnfinishedLegException unfinished =
        assertThrows(UnfinishedLegException.class, () -> pole.fly(precise, 2));
    assertEquals(1, unfinished.time(), 1e-6);
    assertTrue(unfinished.evaluations() > 100);
    Propagator<String, Point> fast = Way.FAST.started(pole);
    ArithmeticException none = assertThrows(ArithmeticException.class, () -> pole.fly(fast, 2));
    assertTrue(none.getMessage().startsWith(Propagator.NOT_A_NUMBER), none.getMessage());
  }

  @Test
  void howLongAQuantityMayGoUnseenIsItsValueOverItsRate() {
    Event<String, Point> event = Event.note("t", Crossing.RISING, Point::time);
    assertEquals(Double.POSITIVE_INFINITY, event.unseen(3));
    assertEquals(1.5, event.changingAtMost(2).unseen(-3));
    assertEquals(Event.SHORTEST_VISIT, event.changingAtMost(2).unseen(1e-4));
  }

  @Test
  void placesThatTheStateHasNotAreRefused() {
    for (int[] places : new int[][] {{-1, -1}, {2, -1}, {0, 2}}) {
      assertThrows(
          IllegalArgumentException.class,
          () ->
              new FastSettings<Point>(
                  new double[2], 1, places[0], places[1], at -> 0, at -> false));
    }
    FastSettings<Point> last = new FastSettings<>(new double[2], 1, 1, 1, at -> 0, at -> false);
    assertEquals(1, last.stiff());
  }
}
