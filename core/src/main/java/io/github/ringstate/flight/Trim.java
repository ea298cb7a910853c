package io.github.ringstate.flight;

import io.github.ringstate.quantity.OutOfRangeException;
import org.hipparchus.analysis.MultivariateMatrixFunction;
import org.hipparchus.analysis.MultivariateVectorFunction;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.jspecify.annotations.Nullable;

/**
 * A steady flight: the attitude, collective and induced velocity at which nothing accelerates.
 *
 * @param pitch pitch attitude, rad, positive nose up
 * @param bank bank, rad, positive to the right
 * @param collective blade pitch at three quarters of the radius, rad
 * @param induced induced velocity, m/s
 */
public record Trim(double pitch, double bank, double collective, double induced) {

  /** Part of the message when there is no trim; the speeds stand behind it. */
  public static final String NO_STEADY_FLIGHT = " has no steady flight at an airspeed of ";

  private static final double GREATEST_RESIDUAL = 1e-9;
  private static final double DIFFERENCE = 1e-6;
  private static final int UNKNOWNS = 4;

  /**
   * Looks for the steady flight at an airspeed and vertical speed, heading north, the rotor at full
   * speed.
   *
   * <p>Four equations (three accelerations and the rate of the induced velocity vanish) in four
   * unknowns, by Levenberg-Marquardt. Whether the engine has the power and the collective the
   * travel is not asked; a flight that starts without them is steady for no time.
   *
   * @param motion the equations of motion; their wind may be any
   * @param airspeed the speed through the air along the nose, m/s
   * @param verticalSpeed the vertical speed, m/s, positive up
   * @return the trim
   * @throws IllegalStateException if there is none, for instance because the blades stall
   */
  public static Trim find(EquationsOfMotion motion, double airspeed, double verticalSpeed) {
    double scale = motion.hoverInduced();
    // The thrust of a steady flight is near the weight, so this is near the induced velocity.
    double steadyInduced =
        motion.inflow().induced(Math.abs(airspeed) / scale, verticalSpeed / scale);
    double[] state = new double[State.SIZE];
    state[State.ROTOR_SPEED] = motion.craft().rotor().nominalSpeed();
    ControlLaw hold = (seen, controls) -> {};
    MultivariateVectorFunction residuals =
        x -> {
          state[State.PITCH] = x[0];
          state[State.BANK] = x[1];
          state[State.COLLECTIVE] = x[2];
          state[State.INDUCED] = x[3] * scale;
          inAir(motion, state, airspeed, verticalSpeed);
          Motion m = motion.at(0, state, hold);
          return new double[] {
            m.rate(State.SPEED_NORTH) / 10,
            m.rate(State.SPEED_EAST) / 10,
            m.rate(State.SPEED_UP) / 10,
            m.rate(State.INDUCED) / (10 * scale)
          };
        };
    MultivariateMatrixFunction jacobian =
        x -> {
          double[][] matrix = new double[UNKNOWNS][UNKNOWNS];
          for (int j = 0; j < UNKNOWNS; j++) {
            double[] above = x.clone();
            double[] below = x.clone();
            above[j] += DIFFERENCE;
            below[j] -= DIFFERENCE;
            double[] high = residuals.value(above);
            double[] low = residuals.value(below);
            for (int i = 0; i < UNKNOWNS; i++) {
              matrix[i][j] = (high[i] - low[i]) / (2 * DIFFERENCE);
            }
          }
          return matrix;
        };
    LeastSquaresOptimizer optimizer =
        new LevenbergMarquardtOptimizer()
            .withCostRelativeTolerance(1e-15)
            .withParameterRelativeTolerance(1e-14)
            .withOrthoTolerance(1e-15);
    LeastSquaresProblem problem =
        new LeastSquaresBuilder()
            .start(new double[] {0, 0, 0.15, steadyInduced})
            .target(new double[UNKNOWNS])
            .model(residuals, jacobian)
            .checker((iteration, previous, current) -> current.getCost() < 1e-13)
            .maxEvaluations(200)
            .maxIterations(200)
            .build();
    double[] x;
    try {
      Optimum optimum = optimizer.optimize(problem);
      if (!(optimum.getResiduals().getNorm() < GREATEST_RESIDUAL)) {
        throw none(motion, airspeed, verticalSpeed, null);
      }
      x = optimum.getPoint().toArray();
    } catch (MathRuntimeException | OutOfRangeException wandered) {
      throw none(motion, airspeed, verticalSpeed, wandered);
    }
    return new Trim(x[0], x[1], x[2], x[3] * scale);
  }

  private static IllegalStateException none(
      EquationsOfMotion motion,
      double airspeed,
      double verticalSpeed,
      @Nullable RuntimeException cause) {
    return new IllegalStateException(
        motion.craft().name()
            + NO_STEADY_FLIGHT
            + airspeed
            + " m/s and a vertical speed of "
            + verticalSpeed
            + " m/s in this air",
        cause);
  }

  /**
   * A state vector that flies this trim, at the origin of the earth frame, heading north.
   *
   * @param motion the equations of motion whose trim this is
   * @param airspeed the speed through the air along the nose, m/s
   * @param verticalSpeed the vertical speed, m/s, positive up
   * @return the state, in the order of {@link State}
   */
  public double[] state(EquationsOfMotion motion, double airspeed, double verticalSpeed) {
    double[] state = new double[State.SIZE];
    state[State.PITCH] = pitch;
    state[State.BANK] = bank;
    state[State.COLLECTIVE] = collective;
    state[State.INDUCED] = induced;
    state[State.ROTOR_SPEED] = motion.craft().rotor().nominalSpeed();
    state[State.SHOWN_VERTICAL_SPEED] = verticalSpeed;
    inAir(motion, state, airspeed, verticalSpeed);
    return state;
  }

  private static void inAir(
      EquationsOfMotion motion, double[] state, double airspeed, double verticalSpeed) {
    double[] wind = new double[3];
    motion.wind().velocity(0, state[State.NORTH], state[State.EAST], state[State.UP], wind);
    state[State.SPEED_NORTH] = airspeed + wind[0];
    state[State.SPEED_EAST] = wind[1];
    state[State.SPEED_UP] = verticalSpeed + wind[2];
  }
}
