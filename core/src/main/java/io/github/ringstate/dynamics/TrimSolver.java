package io.github.ringstate.dynamics;

import io.github.ringstate.quantity.OutOfRangeException;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.jspecify.annotations.Nullable;

/**
 * What keeps a flight from being steady, or from accelerating as asked: the three accelerations and
 * the rate of the induced velocity, as functions of pitch, bank, collective and induced velocity,
 * at a velocity through the air, heading north, the rotor at full speed.
 *
 * <p>Newton's method finds where they vanish in a handful of steps from any guess that is not far
 * off. Where it wanders, Levenberg and Marquardt's takes over, twenty times as slow and hard to
 * lead astray.
 */
final class TrimSolver {

  private static final int UNKNOWNS = 4;
  private static final double MAXIMUM_RESIDUAL = 1e-9;
  private static final double DIFFERENCE = 1e-6;
  private static final double ENOUGH = 1e-13;
  private static final int NEWTON_STEPS = 12;

  private final EquationsOfMotion motion;
  private final double forward;
  private final double sideways;
  private final double verticalSpeed;
  private final double[] acceleration;
  private final double scale;
  private final double[] state = new double[State.SIZE];

  /** Accelerations are along the nose, to the right and up, m/s2; none for steady flight. */
  TrimSolver(
      EquationsOfMotion motion,
      double forward,
      double sideways,
      double verticalSpeed,
      double... acceleration) {
    this.motion = motion;
    this.acceleration = acceleration.length == 0 ? new double[3] : acceleration;
    this.forward = forward;
    this.sideways = sideways;
    this.verticalSpeed = verticalSpeed;
    scale = motion.hoverInduced();
    state[State.ROTOR_SPEED] = motion.craft().rotor().nominalSpeed();
  }

  /**
   * Looks for the flight.
   *
   * @param guess pitch and bank, rad, collective, rad, induced velocity over that of the hover
   * @return the same of the flight
   * @throws MathRuntimeException if there is none nearby
   * @throws OutOfRangeException if the search leaves what the inflow model knows
   */
  double[] reached(double[] guess) {
    double[] newton = byNewton(guess);
    double[] found = newton != null && upright(newton) ? newton : byLeastSquares(guess);
    if (!upright(found)) {
      throw new ArithmeticException("no steady flight nearby but one upside down");
    }
    return found;
  }

  /** Upside down there is a steady flight too, with the thrust downward. */
  private static boolean upright(double[] x) {
    return Math.abs(x[0]) < 0.5 * Math.PI && Math.abs(x[1]) < 0.5 * Math.PI;
  }

  private double @Nullable [] byNewton(double[] guess) {
    double[] x = guess.clone();
    double[] residuals = residuals(x);
    try {
      for (int i = 0; i < NEWTON_STEPS; i++) {
        double[] step =
            new LUDecomposition(MatrixUtils.createRealMatrix(slopes(x)))
                .getSolver()
                .solve(new ArrayRealVector(residuals, false))
                .toArray();
        for (int j = 0; j < UNKNOWNS; j++) {
          x[j] -= step[j];
        }
        residuals = residuals(x);
        if (norm(residuals) < ENOUGH) {
          return x;
        }
      }
    } catch (MathRuntimeException | OutOfRangeException wandered) {
      return null;
    }
    return null;
  }

  private double[] byLeastSquares(double[] guess) {
    LeastSquaresProblem problem =
        new LeastSquaresBuilder()
            .start(guess)
            .target(new double[UNKNOWNS])
            .model(this::residuals, this::slopes)
            .checker((iteration, previous, current) -> current.getCost() < ENOUGH)
            .maxEvaluations(200)
            .maxIterations(200)
            .build();
    Optimum optimum =
        new LevenbergMarquardtOptimizer()
            .withCostRelativeTolerance(1e-15)
            .withParameterRelativeTolerance(1e-14)
            .withOrthoTolerance(1e-15)
            .optimize(problem);
    if (!(optimum.getResiduals().getNorm() < MAXIMUM_RESIDUAL)) {
      throw new ArithmeticException("no steady flight nearby");
    }
    return optimum.getPoint().toArray();
  }

  private double[] residuals(double[] x) {
    state[State.PITCH] = x[0];
    state[State.BANK] = x[1];
    state[State.COLLECTIVE] = x[2];
    state[State.INDUCED] = x[3] * scale;
    motion.inAir(state, forward, sideways, verticalSpeed);
    Motion m = motion.inBalance(state);
    return new double[] {
      (m.rate(State.SPEED_NORTH) - acceleration[0]) / 10,
      (m.rate(State.SPEED_EAST) - acceleration[1]) / 10,
      (m.rate(State.SPEED_UP) - acceleration[2]) / 10,
      m.rate(State.INDUCED) / (10 * scale)
    };
  }

  private double[][] slopes(double[] x) {
    double[][] matrix = new double[UNKNOWNS][UNKNOWNS];
    for (int j = 0; j < UNKNOWNS; j++) {
      double[] above = x.clone();
      double[] below = x.clone();
      above[j] += DIFFERENCE;
      below[j] -= DIFFERENCE;
      double[] high = residuals(above);
      double[] low = residuals(below);
      for (int i = 0; i < UNKNOWNS; i++) {
        matrix[i][j] = (high[i] - low[i]) / (2 * DIFFERENCE);
      }
    }
    return matrix;
  }

  private static double norm(double[] residuals) {
    double sum = 0;
    for (double residual : residuals) {
      sum += residual * residual;
    }
    return Math.sqrt(sum);
  }
}
