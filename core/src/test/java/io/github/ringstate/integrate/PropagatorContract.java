package io.github.ringstate.integrate;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.integrate.Event.Crossing;
import io.github.ringstate.integrate.Problem.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What every propagator must do with the problems of the catalogue. */
abstract class PropagatorContract {

  static final Problem OSCILLATOR = Problem.oscillator();

  /** A propagator at a tolerance, with all errors in the units of the state. */
  abstract Propagator<String, Point> propagator(Problem problem, double tolerance);

  /** A tolerance that is tight for the method. */
  abstract double tight();

  /** The greatest error at the end, over the tolerance, in problems of some seconds. */
  abstract double errorOverTolerance();

  /** The greatest error of the time of an event at the tight tolerance, s. */
  abstract double timeError();

  static Stream<Problem> problems() {
    return Problem.all().stream();
  }

  final Propagator<String, Point> started(Problem problem) {
    Propagator<String, Point> propagator = propagator(problem, tight());
    propagator.start(0, problem.start());
    return propagator;
  }

  static double error(Problem problem, Propagator<String, Point> propagator) {
    double[] exact = problem.solution().apply(propagator.time());
    double error = 0;
    for (int i = 0; i < exact.length; i++) {
      error = Math.max(error, Math.abs(propagator.state(i) - exact[i]));
    }
    return error;
  }

  @ParameterizedTest
  @MethodSource("problems")
  void theErrorAtTheEndFollowsTheTolerance(Problem problem) {
    double before = Double.POSITIVE_INFINITY;
    for (double tolerance = 1000 * tight(); tolerance > 0.9 * tight(); tolerance /= 10) {
      Propagator<String, Point> propagator = propagator(problem, tolerance);
      propagator.start(0, problem.start());
      assertNull(problem.fly(propagator, problem.end()));
      assertEquals(problem.end(), propagator.time(), 1e-9);
      double error = error(problem, propagator);
      assertTrue(
          error <= errorOverTolerance() * tolerance, problem + ": " + error + " at " + tolerance);
      assertTrue(error < before, problem + ": " + error + " after " + before);
      before = Math.max(error, 1e-12);
    }
  }

  @ParameterizedTest
  @MethodSource("problems")
  void everyPassageIsNotedWhereTheExactSolutionPutsIt(Problem problem) {
    Propagator<String, Point> propagator = started(problem);
    problem.fly(propagator, problem.end(), Event.note("zero", Crossing.EITHER, problem.quantity()));
    assertTimes(problem.times(), propagator);
    for (int i = 0; i < problem.times().length; i++) {
      double[] exact = problem.solution().apply(problem.times()[i]);
      assertEquals(exact[0], propagator.log().state(i, 0), 1e3 * timeError());
    }
  }

  private void assertTimes(double[] exact, Propagator<String, Point> propagator) {
    EventLog<String> log = propagator.log();
    assertArrayEquals(
        exact, IntStream.range(0, log.size()).mapToDouble(log::time).toArray(), timeError());
  }

  @ParameterizedTest
  @MethodSource("problems")
  void aLegEndsAtTheFirstPassageThatStopsItAndOnlyThen(Problem problem) {
    Propagator<String, Point> propagator = started(problem);
    Crossing first = problem.risesFirst() ? Crossing.RISING : Crossing.FALLING;
    assertEquals(
        "zero",
        problem.fly(propagator, problem.end(), Event.stop("zero", first, problem.quantity())));
    assertEquals(problem.times()[0], propagator.time(), timeError());
    assertEquals(propagator.time(), propagator.log().time(0), 2e-10);
    assertTrue(error(problem, propagator) <= errorOverTolerance() * tight());
    assertEquals(propagator.time(), propagator.at(problem.equations()).time());
  }

  /** Falling at pi / 2 and 5 pi / 2, rising at 3 pi / 2. */
  @Test
  void onlyPassagesInTheRightDirectionCount() {
    Propagator<String, Point> rising = started(OSCILLATOR);
    OSCILLATOR.fly(rising, 10, Event.note("r", Crossing.RISING, OSCILLATOR.quantity()));
    assertTimes(new double[] {3 * Math.PI / 2}, rising);
    Propagator<String, Point> falling = started(OSCILLATOR);
    OSCILLATOR.fly(falling, 10, Event.note("f", Crossing.FALLING, OSCILLATOR.quantity()));
    assertTimes(new double[] {Math.PI / 2, 5 * Math.PI / 2}, falling);
  }

  @Test
  void aPassageCountsOnlyWhereItsConditionHolds() {
    Propagator<String, Point> propagator = started(OSCILLATOR);
    assertEquals(
        "zero",
        OSCILLATOR.fly(
            propagator,
            10,
            Event.<String, Point>stop("zero", Crossing.EITHER, OSCILLATOR.quantity())
                .when(at -> at.time() > 2)));
    assertEquals(3 * Math.PI / 2, propagator.time(), timeError());
  }

  /** The speed of the oscillator is zero at the start and falls, so -speed rises. */
  @Test
  void aQuantityThatIsZeroAtTheVeryStartDoesNotPassThere() {
    Propagator<String, Point> propagator = started(OSCILLATOR);
    OSCILLATOR.fly(
        propagator,
        4,
        Event.note("speed", Crossing.EITHER, at -> at.state()[1]),
        Event.note("back", Crossing.EITHER, at -> -at.state()[1]));
    assertTimes(new double[] {Math.PI, Math.PI}, propagator);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-3, 1e-5})
  void aPassageJustInsideTheStartIsFound(double after) {
    Problem problem = Problem.fallWithDrag();
    Propagator<String, Point> propagator = started(problem);
    problem.fly(propagator, 1, Event.stop("t", Crossing.RISING, at -> at.time() - after));
    assertEquals(after, propagator.time(), timeError());
  }

  @Test
  void aPassageJustBeforeTheEndIsFoundAndOneJustBeyondIsNot() {
    double margin = 10 * timeError();
    Propagator<String, Point> within = started(OSCILLATOR);
    assertEquals(
        "zero",
        OSCILLATOR.fly(
            within,
            Math.PI / 2 + margin,
            Event.stop("zero", Crossing.FALLING, OSCILLATOR.quantity())));
    Propagator<String, Point> without = started(OSCILLATOR);
    assertNull(
        OSCILLATOR.fly(
            without,
            Math.PI / 2 - margin,
            Event.stop("zero", Crossing.FALLING, OSCILLATOR.quantity())));
    assertEquals(Math.PI / 2 - margin, without.time(), 1e-9);
    assertEquals(0, without.log().size());
  }

  /**
   * The parabola is below zero within r of its lowest point and changes by less than 2 a second.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.02, 0.003, 0.0006})
  void aShortVisitBeyondZeroIsSeenWhereItIsKnownHowFastTheQuantityChanges(double r) {
    for (double middle : new double[] {0.2137, 0.5141, 0.7771}) {
      Event<String, Point> event =
          Event.<String, Point>note(
                  "visit",
                  Crossing.EITHER,
                  at -> (at.time() - middle) * (at.time() - middle) - r * r)
              .changingAtMost(2);
      Propagator<String, Point> propagator = started(OSCILLATOR);
      OSCILLATOR.fly(propagator, 1, event);
      assertTimes(new double[] {middle - r, middle + r}, propagator);
      Propagator<String, Point> stopped = started(OSCILLATOR);
      OSCILLATOR.fly(
          stopped,
          1,
          Event.<String, Point>stop("visit", Crossing.FALLING, event.value()).changingAtMost(2));
      assertEquals(middle - r, stopped.time(), timeError());
    }
  }

  @Test
  void twoPassagesAtOnceAreBothNoted() {
    Propagator<String, Point> propagator = started(OSCILLATOR);
    OSCILLATOR.fly(
        propagator,
        3,
        Event.note("one", Crossing.FALLING, at -> at.state()[0]),
        Event.note("other", Crossing.RISING, at -> -3 * at.state()[0]));
    assertTimes(new double[] {Math.PI / 2, Math.PI / 2}, propagator);
    assertTrue(!propagator.log().kind(0).equals(propagator.log().kind(1)));
  }

  @Test
  void ofTwoPassagesThatStopAtOnceOneEndsTheLegThere() {
    Propagator<String, Point> propagator = started(OSCILLATOR);
    String stop =
        OSCILLATOR.fly(
            propagator,
            3,
            Event.stop("one", Crossing.FALLING, at -> at.state()[0]),
            Event.stop("other", Crossing.RISING, at -> -3 * at.state()[0]));
    assertTrue("one".equals(stop) || "other".equals(stop));
    assertEquals(Math.PI / 2, propagator.time(), timeError());
  }

  /** Two quantities a millisecond apart: the later one, which stops, does not hide the earlier. */
  @Test
  void passagesWithinOneStepAreTakenInOrderOfTime() {
    Propagator<String, Point> propagator = started(OSCILLATOR);
    assertEquals(
        "later",
        OSCILLATOR.fly(
            propagator,
            3,
            Event.stop("later", Crossing.RISING, at -> at.time() - 1.001),
            Event.note("earlier", Crossing.RISING, at -> at.time() - 1),
            Event.note("never", Crossing.RISING, at -> at.time() - 1.002)));
    assertTimes(new double[] {1, 1.001}, propagator);
  }

  @ParameterizedTest
  @MethodSource("problems")
  void samplesLieAtWholeStepsAcrossLegsAndOnTheSolution(Problem problem) {
    Propagator<String, Point> propagator = started(problem);
    List<Double> times = new ArrayList<>();
    double[] worst = new double[1];
    propagator.sample(
        new Sampler<>(
            0.25,
            at -> {
              times.add(at.time());
              double[] exact = problem.solution().apply(at.time());
              for (int i = 0; i < exact.length; i++) {
                worst[0] = Math.max(worst[0], Math.abs(exact[i] - at.state()[i]));
              }
            }));
    for (double end = 0.6; end < 3.1; end += 0.6) {
      problem.fly(propagator, end);
    }
    assertEquals(IntStream.range(0, 13).mapToObj(i -> 0.25 * i).toList(), times);
    assertTrue(worst[0] <= errorOverTolerance() * tight(), problem + ": " + worst[0]);
  }

  /** The least value of the cosine is -1, at pi. */
  @Test
  void theLeastValueOfTheWatchedQuantityIsKept() {
    Propagator<String, Point> propagator = started(OSCILLATOR);
    assertEquals(1, propagator.least());
    OSCILLATOR.fly(propagator, 4, Event.note("turns", Crossing.RISING, at -> at.state()[1]));
    assertEquals(-1, propagator.least(), errorOverTolerance() * tight());
  }

  @Test
  void goingBackToTheStartForgetsWhatHappened() {
    Propagator<String, Point> propagator = started(OSCILLATOR);
    Problem.Counted equations = OSCILLATOR.equations();
    List<Event<String, Point>> events =
        List.of(Event.stop("zero", Crossing.FALLING, OSCILLATOR.quantity()));
    propagator.propagate(equations, 10, events);
    double time = propagator.time();
    double state = propagator.state(1);
    propagator.restart(0);
    assertEquals(0, propagator.time());
    assertEquals(0, propagator.log().size());
    propagator.propagate(equations, 10, events);
    assertEquals(time, propagator.time());
    assertEquals(state, propagator.state(1));
  }

  @Test
  void aLegWithoutLengthLeavesAllAsItIs() {
    Propagator<String, Point> propagator = started(OSCILLATOR);
    assertNull(OSCILLATOR.fly(propagator, 0));
    assertEquals(0, propagator.time());
    assertEquals(1, propagator.state(0));
  }

  @Test
  void whatIsNotANumberIsRefused() {
    Problem broken =
        new Problem(
            "broken from 1 s on",
            new double[] {1},
            2,
            (t, y, rates) -> rates[0] = t < 1 ? 0 : Double.NaN,
            OSCILLATOR.solution(),
            OSCILLATOR.quantity(),
            true,
            0);
    Propagator<String, Point> propagator = propagator(broken, tight());
    propagator.start(0, broken.start());
    ArithmeticException failure =
        assertThrows(ArithmeticException.class, () -> broken.fly(propagator, 2));
    assertTrue(failure.getMessage().startsWith(Propagator.NOT_A_NUMBER));
    Propagator<String, Point> sound = started(OSCILLATOR);
    assertThrows(IllegalArgumentException.class, () -> OSCILLATOR.fly(sound, Double.NaN));
    for (double tolerance : new double[] {0, -1, Double.NaN}) {
      assertThrows(IllegalArgumentException.class, () -> propagator(OSCILLATOR, tolerance));
    }
  }

  @Test
  void aSecondThreadOnOnePropagatorFails() throws InterruptedException {
    Propagator<String, Point> propagator = started(OSCILLATOR);
    AtomicReference<Throwable> failure = new AtomicReference<>();
    Thread other =
        new Thread(
            () -> {
              try {
                OSCILLATOR.fly(propagator, 1);
              } catch (IllegalStateException expected) {
                failure.set(expected);
              }
            });
    other.start();
    other.join();
    assertEquals(Propagator.TWO_THREADS, String.valueOf(failure.get().getMessage()));
    Thread thief = new Thread(() -> propagator.restart(0));
    List<Event<String, Point>> theft =
        List.of(
            Event.note(
                "theft",
                Crossing.RISING,
                at -> {
                  if (at.time() > 0.5 && thief.getState() == Thread.State.NEW) {
                    thief.start();
                    while (thief.isAlive()) {
                      Thread.onSpinWait();
                    }
                  }
                  return 1;
                }));
    assertThrows(
        IllegalStateException.class, () -> propagator.propagate(OSCILLATOR.equations(), 1, theft));
  }
}
