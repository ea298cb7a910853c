package io.github.ringstate.integrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.integrate.Event.Crossing;
import io.github.ringstate.integrate.Problem.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class FastPropagatorTest extends PropagatorContract {

  @Override
  Propagator<String, Point> propagator(Problem problem, double tolerance) {
    return fast(problem, tolerance);
  }

  private static FastPropagator<String, Point> fast(Problem problem, double tolerance) {
    double[] scales = new double[problem.start().length];
    Arrays.fill(scales, 1);
    FastSettings<Point> settings = FastSettings.plain(scales, tolerance);
    if (problem.decay() > 0) {
      settings = settings.withStiff(scales.length - 1, at -> problem.decay());
    }
    FastPropagator<String, Point> propagator = new FastPropagator<>(settings);
    propagator.start(0, problem.start());
    return propagator;
  }

  @Override
  double tight() {
    return 1e-8;
  }

  /** Errors of some hundred steps add up. */
  @Override
  double errorOverTolerance() {
    return 300;
  }

  @Override
  double timeError() {
    return 1e-6;
  }

  static Stream<Problem> smooth() {
    return problems().filter(problem -> problem.decay() == 0);
  }

  private static double errorOfEqualSteps(Problem problem, int steps, double excess) {
    double[] scales = new double[problem.start().length];
    Arrays.fill(scales, 1);
    BogackiShampine<Point> step =
        new BogackiShampine<>(scales, problem.decay() > 0 ? scales.length - 1 : -1);
    Equations<Point> equations = problem.equations();
    System.arraycopy(problem.start(), 0, step.state(), 0, scales.length);
    step.begin(equations, 0);
    double h = problem.end() / steps;
    for (int i = 0; i < steps; i++) {
      step.attempt(equations, i * h, h, excess);
      step.moveOn();
    }
    double[] exact = problem.solution().apply(problem.end());
    double error = 0;
    for (int i = 0; i < exact.length; i++) {
      error = Math.max(error, Math.abs(step.state()[i] - exact[i]));
    }
    return error;
  }

  /** The pair is of order 3: Bogacki and Shampine, Applied Mathematics Letters 2, 1989. */
  @ParameterizedTest
  @MethodSource("smooth")
  void stepsAreOfTheThirdOrder(Problem problem) {
    double order =
        FastMath.log(errorOfEqualSteps(problem, 200, 0) / errorOfEqualSteps(problem, 800, 0))
            / FastMath.log(4);
    assertEquals(3, order, 0.15, problem.name());
  }

  /** Steps of 3 to 12 times what the plain method bears for this decay. */
  @Test
  void aDecayThatIsSolvedExactlyAllowsLongStepsOfTheThirdOrder() {
    Problem problem = Problem.followedCosine();
    double coarse = errorOfEqualSteps(problem, 25, problem.decay());
    double fine = errorOfEqualSteps(problem, 100, problem.decay());
    assertTrue(coarse < 1e-2, "error " + coarse);
    double order = FastMath.log(coarse / fine) / FastMath.log(4);
    assertTrue(order > 2.2, "order " + order + " from " + coarse + " to " + fine);
    double plain = errorOfEqualSteps(problem, 25, 0);
    assertTrue(plain > 1e6, "the plain method is stable: " + plain);
  }

  /**
   * The estimate is of order 2, so the error of one step falls with the third power of the step.
   */
  @Test
  void theErrorEstimateFallsWithTheThirdPowerOfTheStep() {
    BogackiShampine<Point> step = new BogackiShampine<>(new double[] {1, 1}, -1);
    System.arraycopy(OSCILLATOR.start(), 0, step.state(), 0, 2);
    step.begin(OSCILLATOR.equations(), 0);
    double order =
        FastMath.log(
                step.attempt(OSCILLATOR.equations(), 0, 0.02, 0)
                    / step.attempt(OSCILLATOR.equations(), 0, 0.01, 0))
            / FastMath.log(2);
    assertEquals(3, order, 0.05);
  }

  /** Within a step the cubic errs by the fourth power of the step. */
  @Test
  void betweenItsEndsAStepLiesOnTheSolution() {
    double order = FastMath.log(errorInTheMiddle(0.4) / errorInTheMiddle(0.1)) / FastMath.log(4);
    assertTrue(order > 3.5, "order " + order);
  }

  private static double errorInTheMiddle(double h) {
    Problem problem = Problem.logisticGrowth();
    BogackiShampine<Point> step = new BogackiShampine<>(new double[] {1}, -1);
    step.state()[0] = problem.start()[0];
    step.begin(problem.equations(), 0);
    step.attempt(problem.equations(), 0, h, 0);
    return Math.abs(step.within(h, 0.5)[0] - problem.solution().apply(0.5 * h)[0]);
  }

  /**
   * v' = -c (v - 1) from v = 0: v = 1 - exp(-c t). A plain method would need c t / 2.5 steps of
   * three evaluations; once the rest is small the decay is solved exactly and steps are long. (The
   * pair's estimate vanishes where decay times step is one, so that a first step of 0.02 s would be
   * let pass at a rate of 50.)
   */
  @ParameterizedTest
  @ValueSource(doubles = {70, 500, 5000})
  void aDecayToRestIsFollowedWithFewSteps(double rate) {
    Problem problem =
        new Problem(
            "decay to rest",
            new double[] {0},
            20,
            (t, y, rates) -> rates[0] = -rate * (y[0] - 1),
            t -> new double[] {1 - FastMath.exp(-rate * t)},
            at -> at.state()[0] - 0.5,
            true,
            rate,
            FastMath.log(2) / rate);
    FastPropagator<String, Point> propagator = fast(problem, 1e-4);
    Problem.Counted equations = problem.equations();
    propagator.propagate(
        equations, 20, List.of(Event.note("half", Crossing.RISING, problem.quantity())));
    assertEquals(1, propagator.state(0), 1e-4);
    assertEquals(problem.times()[0], propagator.log().time(0), 2e-3 / rate);
    assertTrue(equations.count() < 0.2 * 3 * rate * 20 / 2.5, "" + equations.count());
  }

  @ParameterizedTest
  @MethodSource("problems")
  void goingOnFromACheckpointGivesTheSameBits(Problem problem) {
    Problem.Counted equations = problem.equations();
    Problem.Counted others = problem.equations();
    FastPropagator<String, Point> kept = fast(problem, 1e-5);
    kept.propagateShared(equations, problem.end(), List.of());
    int whole = equations.count();
    int saved = 0;
    for (double until = 0.05; until < problem.end(); until += 0.37) {
      int before = equations.count();
      kept.restart(until);
      kept.propagateShared(equations, until, List.of());
      saved += equations.count() - before < 0.2 * whole ? 1 : 0;
      kept.propagate(others, problem.end(), List.of());
      FastPropagator<String, Point> anew = fast(problem, 1e-5);
      anew.propagateShared(equations, until, List.of());
      anew.propagate(others, problem.end(), List.of());
      for (int i = 0; i < problem.start().length; i++) {
        assertEquals(anew.state(i), kept.state(i), 0, problem + " at " + until);
      }
      assertEquals(anew.least(), kept.least(), 0);
    }
    assertTrue(saved > 10, "hardly anything is kept: " + saved);
  }

  @Test
  void onlyASharedFirstLegIsKept() {
    Problem.Counted equations = OSCILLATOR.equations();
    FastPropagator<String, Point> propagator = fast(OSCILLATOR, 1e-5);
    propagator.propagate(equations, 5, List.of());
    propagator.propagateShared(equations, 10, List.of());
    propagator.restart(9);
    assertEquals(0, propagator.time());
    propagator.propagateShared(equations, 10, List.of());
    propagator.restart(9);
    assertNotEquals(0, propagator.time());
  }

  /** The oscillator is below zero for pi of the first 2 pi seconds. */
  @Test
  void howLongTheConditionHeldIsCounted() {
    FastPropagator<String, Point> propagator =
        new FastPropagator<>(
            new FastSettings<>(new double[] {1, 1}, 1e-8, 0, -1, at -> 0, at -> at.state()[0] < 0));
    propagator.start(0, OSCILLATOR.start());
    OSCILLATOR.fly(propagator, 2 * Math.PI);
    assertEquals(Math.PI, propagator.timed(), 0.01);
    FastPropagator<String, Point> without = fast(OSCILLATOR, 1e-8);
    OSCILLATOR.fly(without, 2 * Math.PI);
    assertEquals(0, without.timed());
  }

  @Test
  void theLeastValueIsThatWithinStepsToo() {
    FastPropagator<String, Point> propagator = fast(OSCILLATOR, 1e-3);
    List<Double> ends = new ArrayList<>();
    propagator.listen((node, at) -> ends.add(at.state()[0]));
    OSCILLATOR.fly(propagator, 4);
    double least = ends.stream().mapToDouble(end -> end).min().orElseThrow();
    // coarse steps pass over the least value of the cosine, -1, but the cubic does not
    assertTrue(least > propagator.least() + 1e-4, least + " and " + propagator.least());
    // ten steps of an error of a thousandth each
    assertEquals(-1, propagator.least(), 1e-2);
  }

  /** The same: it is below zero from pi / 2 on, so a second of it is over at pi / 2 + 1. */
  @Test
  void aPropagationIsGivenUpOnceTheConditionHeldForTooLong() {
    FastPropagator<String, Point> propagator =
        new FastPropagator<>(
            new FastSettings<>(new double[] {1, 1}, 1e-8, 0, -1, at -> 0, at -> at.state()[0] < 0));
    propagator.patience(1);
    propagator.start(0, OSCILLATOR.start());
    assertFalse(propagator.isGivenUp());
    OSCILLATOR.fly(propagator, 2 * Math.PI);
    assertTrue(propagator.isGivenUp());
    double time = propagator.time();
    assertEquals(0.5 * Math.PI + 1, time, 0.02);
    OSCILLATOR.fly(propagator, 2 * Math.PI);
    assertEquals(time, propagator.time());
    propagator.restart(0);
    assertFalse(propagator.isGivenUp());
  }

  @Test
  void stepsOfAnotherToleranceAreFewerOrMoreAndOfTheOldKindAfterARestart() {
    Problem.Counted equations = OSCILLATOR.equations();
    FastPropagator<String, Point> propagator = fast(OSCILLATOR, 1e-5);
    double[] times = {1, 8, 0.125, 1};
    double[] ends = new double[times.length];
    int[] counts = new int[times.length];
    for (int i = 0; i < ends.length; i++) {
      propagator.restart(0);
      if (times[i] != 1) {
        propagator.scaleTolerance(times[i]);
      }
      int before = equations.count();
      propagator.propagate(equations, 20, List.of());
      counts[i] = equations.count() - before;
      ends[i] = propagator.state(0);
    }
    assertTrue(counts[1] < 0.7 * counts[0], counts[1] + " of " + counts[0]);
    assertTrue(counts[2] > 1.4 * counts[0], counts[2] + " of " + counts[0]);
    assertEquals(counts[0], counts[3]);
    assertEquals(ends[0], ends[3]);
    double exact = FastMath.cos(20);
    // eight times the error a step, on fewer steps
    assertEquals(exact, ends[1], 8 * 20 * 100 * 1e-5 / 4);
    assertTrue(Math.abs(ends[2] - exact) < 0.5 * Math.abs(ends[0] - exact));
  }

  @Test
  void aToleranceThatIsNotPositiveIsRefused() {
    FastPropagator<String, Point> propagator = fast(OSCILLATOR, 1e-5);
    for (double times : new double[] {0, -1, Double.NaN}) {
      assertThrows(IllegalArgumentException.class, () -> propagator.scaleTolerance(times));
    }
  }
}
