package io.github.ringstate.validation.numerics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MethodTest {

  static Stream<Problem> problems() {
    return Stream.of(Problems.fallWithDrag(40), Problems.oscillator(), Problems.bouncingBall());
  }

  @ParameterizedTest
  @MethodSource("problems")
  void aRightHandSideThatIsWrongByOnePerCentGivesAnErrorThatNoToleranceCovers(Problem right) {
    Problem wrong =
        new Problem(
            right.name(),
            right.start(),
            right.end(),
            state -> {
              double[] rates = right.rates().at(state);
              rates[1] *= 1.01;
              return rates;
            },
            right.solution(),
            right.event(),
            right.restitution(),
            right.times());

    Run run = Method.DORMAND_PRINCE_853.withTolerance(wrong, 1e-10);

    assertTrue(run.error() > 1e-3, () -> "error " + run.error());
    assertTrue(run.eventError() > 1e-3, () -> "event error " + run.eventError());
  }

  /** The closed forms against their own differential equation, by central differences. */
  @ParameterizedTest
  @MethodSource("problems")
  void theClosedFormSolvesTheEquation(Problem problem) {
    double h = 1e-5;
    for (double t : new double[] {0.3, 1.7, 2.2, 4.1}) {
      double[] before = problem.solution().apply(t - h);
      double[] at = problem.solution().apply(t);
      double[] after = problem.solution().apply(t + h);
      double[] rates = problem.rates().at(at);
      for (int i = 0; i < at.length; i++) {
        assertEquals(rates[i], (after[i] - before[i]) / (2 * h), 1e-5, problem.name() + " at " + t);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("problems")
  void theEventHappensAtEachOfItsTimes(Problem problem) {
    for (double time : problem.times()) {
      double[] state = problem.solution().apply(time);
      assertEquals(0, problem.event().applyAsDouble(state), 1e-11, problem.name());
    }
  }

  @Test
  void aLooseToleranceGivesAnInaccurateResult() {
    for (Method method : List.of(Method.DORMAND_PRINCE_54, Method.DORMAND_PRINCE_853)) {
      double loose = method.withTolerance(Problems.fallWithDrag(40), 1e-4).error();
      double tight = method.withTolerance(Problems.fallWithDrag(40), 1e-10).error();
      assertTrue(loose > 1000 * tight, method.label());
    }
  }
}
