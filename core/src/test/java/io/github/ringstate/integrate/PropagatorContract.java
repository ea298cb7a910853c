package io.github.ringstate.integrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.integrate.Event.Crossing;
import io.github.ringstate.integrate.Problem.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What every propagator must do with the problems of the catalogue. */
abstract class PropagatorContract {

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

  static List<Double> times(Propagator<String, Point> propagator) {
    List<Double> times = new ArrayList<>();
    for (int i = 0; i < propagator.log().size(); i++) {
      times.add(propagator.log().time(i));
    }
    return times;
  }

  @ParameterizedTest
  @MethodSource("problems")
  void theErrorAtTheEndFollowsTheTolerance(Problem problem) {
    double before = Double.POSITIVE_INFINITY;
    for (double tolerance = 1000 * tight(); tolerance > 0.9 * tight(); tolerance /= 10) {
      Propagator<String, Point> propagator = propagator(problem, tolerance);
      propagator.start(0, problem.start());
      assertNull(propagator.propagate(problem.equations(), problem.end(), List.of()));
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
    propagator.propagate(
        problem.equations(),
        problem.end(),
        List.of(Event.note("zero", Crossing.EITHER, problem.quantity())));
    assertTimes(problem.times(), propagator);
    for (int i = 0; i < problem.times().length; i++) {
      double[] exact = problem.solution().apply(problem.times()[i]);
      assertEquals(exact[0], propagator.log().state(i, 0), 1e3 * timeError());
    }
  }

  private void assertTimes(double[] exact, Propagator<String, Point> propagator) {
    List<Double> times = times(propagator);
    assertEquals(exact.length, times.size(), () -> "events at " + times);
    for (int i = 0; i < exact.length; i++) {
      assertEquals(exact[i], times.get(i), timeError());
    }
  }

  @ParameterizedTest
  @MethodSource("problems")
  void aLegEndsAtTheFirstPassageThatStopsItAndOnlyThen(Problem problem) {
    Propagator<String, Point> propagator = started(problem);
    Crossing first = problem.risesFirst() ? Crossing.RISING : Crossing.FALLING;
    String stop =
        propagator.propagate(
            problem.equations(),
            problem.end(),
            List.of(Event.stop("zero", first, problem.quantity())));
    assertEquals("zero", stop);
    assertEquals(problem.times()[0], propagator.time(), timeError());
    assertEquals(propagator.time(), propagator.log().time(0), 2e-10);
    assertTrue(error(problem, propagator) <= errorOverTolerance() * tight());
    assertEquals(propagator.time(), propagator.at(problem.equations()).time());
  }

  /** Falling at pi / 2 and 5 pi / 2, rising at 3 pi / 2. */
  @Test
  void onlyPassagesInTheRightDirectionCount() {
    Problem problem = Problem.oscillator();
    Propagator<String, Point> rising = started(problem);
    rising.propagate(
        problem.equations(), 10, List.of(Event.note("r", Crossing.RISING, problem.quantity())));
    assertTimes(new double[] {3 * Math.PI / 2}, rising);
    Propagator<String, Point> falling = started(problem);
    falling.propagate(
        problem.equations(), 10, List.of(Event.note("f", Crossing.FALLING, problem.quantity())));
    assertTimes(new double[] {Math.PI / 2, 5 * Math.PI / 2}, falling);
  }

  @Test
  void aPassageCountsOnlyWhereItsConditionHolds() {
    Problem problem = Problem.oscillator();
    Propagator<String, Point> propagator = started(problem);
    String stop =
        propagator.propagate(
            problem.equations(),
            10,
            List.of(
                Event.<String, Point>stop("zero", Crossing.EITHER, problem.quantity())
                    .when(at -> at.time() > 2)));
    assertEquals("zero", stop);
    assertEquals(3 * Math.PI / 2, propagator.time(), timeError());
  }

  /** The speed of the oscillator is zero at the start and falls, so -speed rises. */
  @Test
  void aQuantityThatIsZeroAtTheVeryStartDoesNotPassThere() {
    Problem problem = Problem.oscillator();
    Propagator<String, Point> propagator = started(problem);
    propagator.propagate(
        problem.equations(),
        4,
        List.of(
            Event.note("speed", Crossing.EITHER, at -> at.state()[1]),
            Event.note("back", Crossing.EITHER, at -> -at.state()[1])));
    List<Double> times = times(propagator);
    assertEquals(2, times.size(), () -> "events at " + times);
    assertEquals(Math.PI, times.get(0), timeError());
    assertEquals(Math.PI, times.get(1), timeError());
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-3, 1e-5})
  void aPassageJustInsideTheStartIsFound(double after) {
    Problem problem = Problem.fallWithDrag();
    Propagator<String, Point> propagator = started(problem);
    propagator.propagate(
        problem.equations(), 1, List.of(Event.stop("t", Crossing.RISING, at -> at.time() - after)));
    assertEquals(after, propagator.time(), timeError());
  }

  @Test
  void aPassageJustBeforeTheEndIsFoundAndOneJustBeyondIsNot() {
    Problem problem = Problem.oscillator();
    double margin = 10 * timeError();
    Propagator<String, Point> within = started(problem);
    String stop =
        within.propagate(
            problem.equations(),
            Math.PI / 2 + margin,
            List.of(Event.stop("zero", Crossing.FALLING, problem.quantity())));
    assertEquals("zero", stop);
    Propagator<String, Point> without = started(problem);
    assertNull(
        without.propagate(
            problem.equations(),
            Math.PI / 2 - margin,
            List.of(Event.stop("zero", Crossing.FALLING, problem.quantity()))));
    assertEquals(Math.PI / 2 - margin, without.time(), 1e-9);
    assertEquals(0, without.log().size());
  }

  /**
   * The parabola is below zero within r of its lowest point and changes by less than 2 a second.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.02, 0.003, 0.0006})
  void aShortVisitBeyondZeroIsSeenWhereItIsKnownHowFastTheQuantityChanges(double r) {
    Problem problem = Problem.oscillator();
    for (double middle : new double[] {0.2137, 0.5141, 0.7771}) {
      Event<String, Point> event =
          Event.<String, Point>note(
                  "visit",
                  Crossing.EITHER,
                  at -> (at.time() - middle) * (at.time() - middle) - r * r)
              .changingAtMost(2);
      Propagator<String, Point> propagator = started(problem);
      propagator.propagate(problem.equations(), 1, List.of(event));
      assertTimes(new double[] {middle - r, middle + r}, propagator);
      Propagator<String, Point> stopped = started(problem);
      stopped.propagate(
          problem.equations(),
          1,
          List.of(
              Event.<String, Point>stop("visit", Crossing.FALLING, event.value())
                  .changingAtMost(2)));
      assertEquals(middle - r, stopped.time(), timeError());
    }
  }

  @Test
  void twoPassagesAtOnceAreBothNoted() {
    Problem problem = Problem.oscillator();
    Propagator<String, Point> propagator = started(problem);
    propagator.propagate(
        problem.equations(),
        3,
        List.of(
            Event.note("one", Crossing.FALLING, at -> at.state()[0]),
            Event.note("other", Crossing.RISING, at -> -3 * at.state()[0])));
    assertTimes(new double[] {Math.PI / 2, Math.PI / 2}, propagator);
    assertTrue(!propagator.log().kind(0).equals(propagator.log().kind(1)));
  }

  @Test
  void ofTwoPassagesThatStopAtOnceOneEndsTheLegThere() {
    Problem problem = Problem.oscillator();
    Propagator<String, Point> propagator = started(problem);
    String stop =
        propagator.propagate(
            problem.equations(),
            3,
            List.of(
                Event.stop("one", Crossing.FALLING, at -> at.state()[0]),
                Event.stop("other", Crossing.RISING, at -> -3 * at.state()[0])));
    assertTrue("one".equals(stop) || "other".equals(stop));
    assertEquals(Math.PI / 2, propagator.time(), timeError());
  }

  /** Two quantities a millisecond apart: the later one, which stops, does not hide the earlier. */
  @Test
  void passagesWithinOneStepAreTakenInOrderOfTime() {
    Problem problem = Problem.oscillator();
    Propagator<String, Point> propagator = started(problem);
    String stop =
        propagator.propagate(
            problem.equations(),
            3,
            List.of(
                Event.stop("later", Crossing.RISING, at -> at.time() - 1.001),
                Event.note("earlier", Crossing.RISING, at -> at.time() - 1),
                Event.note("never", Crossing.RISING, at -> at.time() - 1.002)));
    assertEquals("later", stop);
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
      propagator.propagate(problem.equations(), end, List.of());
    }
    assertEquals(13, times.size());
    for (int i = 0; i < 13; i++) {
      assertEquals(0.25 * i, times.get(i));
    }
    assertTrue(worst[0] <= errorOverTolerance() * tight(), problem + ": " + worst[0]);
  }

  /** The least value of the cosine is -1, at pi. */
  @Test
  void theLeastValueOfTheWatchedQuantityIsKept() {
    Problem problem = Problem.oscillator();
    Propagator<String, Point> propagator = started(problem);
    assertEquals(1, propagator.least());
    propagator.propagate(
        problem.equations(), 4, List.of(Event.note("turns", Crossing.RISING, at -> at.state()[1])));
    assertEquals(-1, propagator.least(), errorOverTolerance() * tight());
  }

  @Test
  void goingBackToTheStartForgetsWhatHappened() {
    Problem problem = Problem.oscillator();
    Propagator<String, Point> propagator = started(problem);
    Problem.Counted equations = problem.equations();
    List<Event<String, Point>> events =
        List.of(Event.stop("zero", Crossing.FALLING, problem.quantity()));
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
    Problem problem = Problem.oscillator();
    Propagator<String, Point> propagator = started(problem);
    assertNull(propagator.propagate(problem.equations(), 0, List.of()));
    assertEquals(0, propagator.time());
    assertEquals(1, propagator.state(0));
  }

  @Test
  void whatIsNotANumberIsRefused() {
    Problem problem = Problem.oscillator();
    Problem broken =
        new Problem(
            "broken from 1 s on",
            new double[] {1},
            2,
            (t, y, rates) -> rates[0] = t < 1 ? 0 : Double.NaN,
            problem.solution(),
            problem.quantity(),
            true,
            0);
    Propagator<String, Point> propagator = propagator(broken, tight());
    propagator.start(0, broken.start());
    ArithmeticException failure =
        assertThrows(
            ArithmeticException.class,
            () -> propagator.propagate(broken.equations(), 2, List.of()));
    assertTrue(failure.getMessage().startsWith(Propagator.NOT_A_NUMBER));
    Propagator<String, Point> sound = started(problem);
    assertThrows(
        IllegalArgumentException.class,
        () -> sound.propagate(problem.equations(), Double.NaN, List.of()));
    for (double tolerance : new double[] {0, -1, Double.NaN}) {
      assertThrows(IllegalArgumentException.class, () -> propagator(problem, tolerance));
    }
  }

  @Test
  void aSecondThreadOnOnePropagatorFails() throws InterruptedException {
    Problem problem = Problem.oscillator();
    Propagator<String, Point> propagator = started(problem);
    AtomicReference<Throwable> failure = new AtomicReference<>();
    Thread other =
        new Thread(
            () -> {
              try {
                propagator.propagate(problem.equations(), 1, List.of());
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
        IllegalStateException.class, () -> propagator.propagate(problem.equations(), 1, theft));
  }
}
