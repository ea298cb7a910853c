package io.github.ringstate.integrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.integrate.Event.Crossing;
import io.github.ringstate.integrate.Problem.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Passages in a step of two seconds from a time of ten, of quantities that are functions of the
 * part of the step with known roots.
 */
class EventSearchTest {

  private static final double BEGIN = 10;
  private static final double LENGTH = 2;

  private int looks;
  private final Problem.Counted equations =
      new Problem(
              "a clock",
              new double[] {BEGIN},
              BEGIN + LENGTH,
              (t, y, rates) -> rates[0] = 1,
              t -> new double[] {t},
              Point::time,
              true,
              0)
          .equations();
  private final BogackiShampine<Point> step = new BogackiShampine<>(new double[] {1}, -1);
  private final EventSearch<String, Point> search = new EventSearch<>(step);

  private Event<String, Point> event(String name, DoubleUnaryOperator ofPart) {
    return Event.note(
        name,
        Crossing.EITHER,
        at -> {
          looks++;
          // the state is the time as well: both are those of the place looked at
          assertEquals(at.time(), at.state()[0], 1e-12);
          return ofPart.applyAsDouble((at.time() - BEGIN) / LENGTH);
        });
  }

  /** Takes the step; whether any quantity passes in it. */
  private boolean passes(List<Event<String, Point>> events) {
    step.state()[0] = BEGIN;
    search.begin(events, step.begin(equations, BEGIN));
    step.attempt(equations, BEGIN, LENGTH, 0);
    boolean passes = search.passes(events, step.end(), equations, BEGIN, LENGTH);
    looks = 0;
    return passes;
  }

  private int first(List<Event<String, Point>> events) {
    return search.first(events, equations, BEGIN, LENGTH);
  }

  /** Quantities with one root, and the looks that it should take. */
  private enum Shape {
    LINE(0.35, 3, s -> s - 0.35),
    FALLING(0.6, 3, s -> 7 * (0.6 - s)),
    EXPONENTIAL(0.55, 15, s -> FastMath.exp(12 * s) - FastMath.exp(6.6)),
    DECAY(0.05, 15, s -> FastMath.exp(-30 * s) - FastMath.exp(-1.5)),
    SINE(0.25, 6, s -> FastMath.sin(2 * Math.PI * (s - 0.25) / 1.6)),
    STEEP(0.4, 12, s -> FastMath.atan(40 * (s - 0.4))),
    LATE(0.995, 12, s -> FastMath.pow(s, 40) - FastMath.pow(0.995, 40)),
    EARLY(0.004, 12, s -> FastMath.sqrt(s) - FastMath.sqrt(0.004));

    private final double root;
    private final int most;

    @SuppressWarnings("ImmutableEnumChecker") // a function that keeps nothing
    private final DoubleUnaryOperator quantity;

    Shape(double root, int most, DoubleUnaryOperator quantity) {
      this.root = root;
      this.most = most;
      this.quantity = quantity;
    }
  }

  /** It moved by less than 1e-4 last and converges faster than linearly: within a tenth of that. */
  @ParameterizedTest
  @EnumSource
  void aRootIsFoundInFewLooks(Shape shape) {
    List<Event<String, Point>> events = List.of(event("root", shape.quantity));
    assertTrue(passes(events));
    assertEquals(0, first(events));
    assertEquals(shape.root, search.place(), 1e-5);
    assertTrue(looks <= shape.most, looks + " looks");
    assertEquals(shape.quantity.applyAsDouble(0) < 0, search.takeRising(0));
    assertEquals(-1, first(events));
  }

  @Test
  void aJumpIsFoundToATenThousandthOfTheStep() {
    for (double at : new double[] {0.001, 0.3, 0.77, 0.999}) {
      for (double high : new double[] {1, 1e6}) {
        List<Event<String, Point>> events = List.of(event("jump", s -> s < at ? -1 : high));
        assertTrue(passes(events));
        assertEquals(0, first(events));
        assertEquals(at, search.place(), 1e-4);
        assertTrue(looks <= 20, looks + " looks");
      }
    }
  }

  /** Where it stands still at its root: what it is worth there is no more than 1e-9 of its ends. */
  @Test
  void aTripleRootIsFoundAsFarAsItCanBeTold() {
    List<Event<String, Point>> events = List.of(event("flat", s -> FastMath.pow(s - 0.7, 3)));
    assertTrue(passes(events));
    assertEquals(0, first(events));
    assertEquals(0.7, search.place(), 1e-3);
  }

  @Test
  void aRootThatIsHitIsTheAnswer() {
    List<Event<String, Point>> events = List.of(event("half", s -> 2 * s - 1));
    assertTrue(passes(events));
    assertEquals(0, first(events));
    assertEquals(0.5, search.place());
    assertEquals(1, looks);
  }

  @Test
  void whatDoesNotPassIsNotLookedAt() {
    List<Event<String, Point>> events =
        List.of(
            event("above", s -> 0.1 + s),
            event("below", s -> -0.1 - s),
            // unseen between the ends
            event("dips", s -> FastMath.abs(s - 0.5) - 0.2),
            // zero counts as above: touching it from there is no passage
            event("touches", s -> 1 - s),
            // and zero at the very start counts as where it goes
            event("leaves up", s -> s),
            event("leaves down", s -> -s));
    assertFalse(passes(events));
    assertEquals(-1, first(events));
    assertEquals(0, looks);
  }

  /** In a later step zero is where the last one ended, above; from there it may go below. */
  @Test
  void aQuantityThatIsZeroWhereAStepBeginsAndFallsPassesThere() {
    List<Event<String, Point>> events = List.of(event("falls", s -> Math.min(0, 1 - s)));
    assertFalse(passes(events));
    search.moveOn(1);
    step.moveOn();
    step.attempt(equations, BEGIN + LENGTH, LENGTH, 0);
    assertTrue(search.passes(events, step.end(), equations, BEGIN + LENGTH, LENGTH));
    assertEquals(0, search.first(events, equations, BEGIN + LENGTH, LENGTH));
    assertEquals(0, search.place(), 2e-4);
    assertFalse(search.takeRising(0));
  }

  @Test
  void passagesComeInOrderOfTimeAndOfThoseAtOnceTheFirstNamedFirst() {
    List<Event<String, Point>> events = new ArrayList<>();
    double[] roots = new double[20];
    for (int i = 0; i < roots.length; i++) {
      double root = (i * 7 % 20 + 1) / 21.0;
      roots[i] = root;
      events.add(event("root " + i, s -> s - root));
    }
    events.add(event("again", s -> s - roots[3]));
    assertTrue(passes(events));
    double before = 0;
    for (int i = 0; i < 21; i++) {
      int which = first(events);
      assertTrue(search.place() >= before);
      assertEquals(roots[which == 20 ? 3 : which], search.place(), 1e-9);
      if (which == 20) {
        assertEquals(before, search.place(), 1e-9);
      }
      assertTrue(search.takeRising(which));
      before = search.place();
    }
    assertEquals(-1, first(events));
    List<Event<String, Point>> twice =
        List.of(event("one", s -> s - 0.5), event("other", s -> s - 0.5));
    passes(twice);
    assertEquals(0, first(twice));
  }

  /** Below zero from 0.4 to 0.6, changing by 1 over the step, which is 1/2 a second. */
  @Test
  void aVisitIsSeenAsTwoPassagesWhereTheQuantityIsKnownToBeSlow() {
    for (double sign : new double[] {1, -1}) {
      List<Event<String, Point>> events =
          List.of(
              event("other", s -> s - 0.5),
              event("visit", s -> sign * (FastMath.abs(s - 0.5) - 0.1)).changingAtMost(1 / LENGTH));
      assertTrue(passes(events));
      assertEquals(1, first(events));
      assertEquals(0.4, search.place(), 1e-5);
      assertEquals(sign < 0, search.takeRising(1));
      assertEquals(0, first(events));
      assertTrue(search.takeRising(0));
      assertEquals(1, first(events));
      assertEquals(0.6, search.place(), 1e-5);
      assertEquals(sign > 0, search.takeRising(1));
      assertEquals(-1, first(events));
    }
  }

  @Test
  void aVisitIsLookedForOnlyAsOftenAsTheQuantityMayChange() {
    int[] asked = new int[1];
    Event<String, Point> far =
        Event.<String, Point>note(
                "far",
                Crossing.EITHER,
                at -> {
                  asked[0]++;
                  return 1;
                })
            .changingAtMost(0.75);
    assertFalse(passes(List.of(far)));
    // at the begin, at the end, and after 1 / 0.75 = 4/3 s, from where it cannot come back to zero
    assertEquals(3, asked[0]);
    Event<String, Point> slow =
        Event.<String, Point>note(
                "slow",
                Crossing.EITHER,
                at -> {
                  asked[0]++;
                  return 1;
                })
            .changingAtMost(0.5);
    asked[0] = 0;
    assertFalse(passes(List.of(slow)));
    assertEquals(2, asked[0]);
  }
}
