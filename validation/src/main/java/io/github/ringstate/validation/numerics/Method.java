package io.github.ringstate.validation.numerics;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.AdaptiveStepsizeIntegrator;
import org.hipparchus.ode.nonstiff.ClassicalRungeKuttaIntegrator;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.nonstiff.GraggBulirschStoerIntegrator;

/** The integrators under test, those of Hipparchus. */
public enum Method {
  /** Dormand and Prince of order 8, the library's yardstick. */
  DORMAND_PRINCE_853("Dormand-Prince 8(5,3)", 8, DormandPrince853Integrator::new),
  /** Dormand and Prince of order 5. */
  DORMAND_PRINCE_54("Dormand-Prince 5(4)", 5, DormandPrince54Integrator::new),
  /** Gragg, Bulirsch and Stoer's extrapolation, which chooses its order. */
  EXTRAPOLATION("Gragg-Bulirsch-Stoer", 0, GraggBulirschStoerIntegrator::new),
  /** The classical method of order 4 with a fixed step. */
  RUNGE_KUTTA_4(
      "classical Runge-Kutta",
      4,
      (shortest, longest, absolute, relative) -> {
        throw new UnsupportedOperationException("the classical method does not choose its step");
      });

  /** Makes an integrator of its shortest and longest step and both tolerances. */
  @FunctionalInterface
  private interface Adaptive {
    AdaptiveStepsizeIntegrator of(
        double shortest, double longest, double absolute, double relative);
  }

  private static final double EVENT_TOLERANCE = 1e-12;

  private final String label;
  private final int order;

  @SuppressWarnings("ImmutableEnumChecker") // constructors and a lambda that hold nothing
  private final Adaptive adaptive;

  Method(String label, int order, Adaptive adaptive) {
    this.label = label;
    this.order = order;
    this.adaptive = adaptive;
  }

  /**
   * The method's name.
   *
   * @return for people
   */
  public String label() {
    return label;
  }

  /**
   * The order of the method.
   *
   * @return the power of the step by which the error falls; 0 if the method varies it
   */
  public int order() {
    return order;
  }

  /**
   * Integrates with steps chosen by tolerance.
   *
   * @param problem the problem
   * @param tolerance the absolute and relative tolerance
   * @return what came of it
   */
  public Run withTolerance(Problem problem, double tolerance) {
    return run(problem, adaptive.of(1e-9, 10, tolerance, tolerance));
  }

  /**
   * Integrates with a fixed step.
   *
   * @param problem the problem
   * @param step the step, s
   * @return what came of it
   */
  public Run withStep(Problem problem, double step) {
    if (this == RUNGE_KUTTA_4) {
      return run(problem, new ClassicalRungeKuttaIntegrator(step));
    }
    AdaptiveStepsizeIntegrator integrator = adaptive.of(step, step, 1e6, 1e6);
    integrator.setInitialStepSize(step);
    return run(problem, integrator);
  }

  private static Run run(Problem problem, ODEIntegrator integrator) {
    int[] evaluations = {0};
    List<Double> times = new ArrayList<>();
    integrator.addEventDetector(new Detector(problem, times));
    OrdinaryDifferentialEquation equation =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return problem.start().length;
          }

          @Override
          public double[] computeDerivatives(double t, double[] y) {
            evaluations[0]++;
            return problem.rates().at(y);
          }
        };
    double[] last =
        integrator
            .integrate(equation, new ODEState(0, problem.start()), problem.end())
            .getPrimaryState();
    double[] exact = problem.solution().apply(problem.end());
    return new Run(
        largest(last, exact),
        times.size() == problem.times().length
            ? largest(times.stream().mapToDouble(Double::doubleValue).toArray(), problem.times())
            : Double.NaN,
        evaluations[0]);
  }

  /** The largest error; NaN if any number is. */
  private static double largest(double[] actual, double[] exact) {
    return IntStream.range(0, exact.length)
        .mapToDouble(i -> Math.abs(actual[i] - exact[i]))
        .reduce(0, Math::max);
  }

  /** Finds the problem's event, and turns the speed round where that is the event. */
  private static final class Detector implements ODEEventDetector, ODEEventHandler {

    private final Problem problem;
    private final List<Double> times;
    private double sign = 1;

    Detector(Problem problem, List<Double> times) {
      this.problem = problem;
      this.times = times;
    }

    @Override
    public AdaptableInterval getMaxCheckInterval() {
      return AdaptableInterval.of(0.1);
    }

    @Override
    public int getMaxIterationCount() {
      return 100;
    }

    @Override
    public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
      return new BracketingNthOrderBrentSolver(0, EVENT_TOLERANCE, 0, 5);
    }

    @Override
    public ODEEventHandler getHandler() {
      return this;
    }

    @Override
    public double g(ODEStateAndDerivative state) {
      return sign * problem.event().applyAsDouble(state.getPrimaryState());
    }

    @Override
    public Action eventOccurred(
        ODEStateAndDerivative state, ODEEventDetector detector, boolean increasing) {
      times.add(state.getTime());
      if (Double.isNaN(problem.restitution())) {
        return Action.CONTINUE;
      }
      // After a contact the height rises from zero; without this it would be an event again.
      sign = -sign;
      return Action.RESET_STATE;
    }

    @Override
    public ODEState resetState(ODEEventDetector detector, ODEStateAndDerivative state) {
      double[] y = state.getPrimaryState();
      return new ODEState(state.getTime(), new double[] {0, -problem.restitution() * y[1]});
    }
  }
}
