package io.github.ringstate.analysis.linear;

import static io.github.ringstate.analysis.linear.Coordinate.BANK;
import static io.github.ringstate.analysis.linear.Coordinate.COLLECTIVE;
import static io.github.ringstate.analysis.linear.Coordinate.ENGINE;
import static io.github.ringstate.analysis.linear.Coordinate.HEAVE;
import static io.github.ringstate.analysis.linear.Coordinate.INFLOW;
import static io.github.ringstate.analysis.linear.Coordinate.PITCH;
import static io.github.ringstate.analysis.linear.Coordinate.RING;
import static io.github.ringstate.analysis.linear.Coordinate.ROTOR_SPEED;
import static io.github.ringstate.analysis.linear.Coordinate.SURGE;
import static io.github.ringstate.analysis.linear.Coordinate.SWAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.CraftBody;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.AtSeaLevel;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Leg;
import io.github.ringstate.dynamics.Propagators;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.rotor.Rotor;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LinearModelTest {

  private static final List<Coordinate> FLIGHT =
      List.of(SURGE, SWAY, HEAVE, INFLOW, ROTOR_SPEED, RING, ENGINE);

  /** The state after a time, by the linear model: the series of the matrix exponential. */
  private static double[] linear(LinearModel model, double[] from, double time) {
    int n = from.length;
    int steps = 4000;
    double step = time / steps;
    DMatrixRMaj x = DMatrixRMaj.wrap(n, 1, from.clone());
    DMatrixRMaj term = new DMatrixRMaj(n, 1);
    DMatrixRMaj next = new DMatrixRMaj(n, 1);
    for (int i = 0; i < steps; i++) {
      CommonOps_DDRM.mult(model.a(), x, term);
      for (int k = 0; k < n; k++) {
        term.data[k] += model.rates()[k];
      }
      for (int order = 1; order <= 4; order++) {
        double factor = order == 1 ? step : step / order;
        CommonOps_DDRM.scale(factor, term);
        CommonOps_DDRM.addEquals(x, term);
        CommonOps_DDRM.mult(model.a(), term, next);
        term.setTo(next);
      }
    }
    return x.data;
  }

  private static double[] nonlinear(EquationsOfMotion equations, double[] from, double time) {
    return Leg.fly(Propagators.dormandPrince(1e-12), equations, 0, from, time, List.of()).state();
  }

  /** A small step of the collective, flown by the equations and by their linear model. */
  @ParameterizedTest
  @CsvSource({"0, 0", "0, -2", "15, 0", "25, -4", "40, 0"})
  void theModelAnswersASmallStepAsTheEquationsDo(double airspeed, double verticalSpeed) {
    EquationsOfMotion equations = AtSeaLevel.calm(DemoCraft.UTILITY);
    double[] state =
        Trim.find(equations, airspeed, verticalSpeed).state(equations, airspeed, verticalSpeed);
    LinearModel model =
        LinearModel.about(
            equations,
            state,
            List.of(SURGE, SWAY, HEAVE, INFLOW, ROTOR_SPEED, ENGINE),
            List.of(COLLECTIVE));
    assertTrue(model.error() < 1e-3, "error " + model.error());
    assertEquals(1, model.b().getNumCols());
    double step = 1e-4;
    double[] stepped = state.clone();
    stepped[State.COLLECTIVE] += step;
    for (int i = 0; i < model.rates().length; i++) {
      model.rates()[i] += step * model.b().get(i, 0);
    }
    for (double time : new double[] {0.05, 0.5, 2}) {
      double[] flown = nonlinear(equations, stepped, time);
      double[] expected = linear(model, new double[6], time);
      for (int i = 0; i < expected.length; i++) {
        int place = model.coordinates().get(i).place();
        double scale = i == 4 ? 1e-3 : 1e-4;
        assertEquals(
            expected[i],
            flown[place] - state[place],
            0.01 * Math.abs(expected[i]) + scale,
            model.coordinates().get(i) + " after " + time + " s");
      }
    }
  }

  /** In the ring a small disturbance follows the model of the side on which it is made. */
  @ParameterizedTest
  @CsvSource({"DEEPENING, -5", "DEEPENING, -7", "DISSOLVING, -5", "DISSOLVING, -7"})
  void eachSideOfTheRingHasItsModel(RingSide side, double verticalSpeed) {
    EquationsOfMotion equations = AtSeaLevel.calm(DemoCraft.TRAINER);
    double[] trimmed = Trim.find(equations, 0, verticalSpeed).state(equations, 0, verticalSpeed);
    double[] state = side.of(equations, trimmed);
    LinearModel model = LinearModel.about(equations, state, FLIGHT, List.of(COLLECTIVE));
    double push = 0.02;
    double[] pushed = state.clone();
    pushed[State.SPEED_UP] += push;
    double[] from = new double[FLIGHT.size()];
    from[2] = push;
    double time = 0.1;
    double[] flown = nonlinear(equations, pushed, time);
    double[] expected = linear(model, from, time);
    assertEquals(expected[2], flown[State.SPEED_UP] - state[State.SPEED_UP], 4e-4);
    assertEquals(expected[3], flown[State.INDUCED] - state[State.INDUCED], 4e-3);
    assertEquals(expected[5], flown[State.RING] - state[State.RING], 1e-3);
  }

  private static Mode mode(LinearModel model, String name) {
    return model.modes().stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow();
  }

  /** A ring that dissolves holds what the descent has: it runs away more slowly. */
  @Test
  void insideTheRingTheSinkRunsAwayAndADissolvingRingHoldsItBack() {
    EquationsOfMotion equations = AtSeaLevel.calm(DemoCraft.TRAINER);
    double[] trimmed = Trim.find(equations, 0, -5).state(equations, 0, -5);
    Map<RingSide, Double> growth = new EnumMap<>(RingSide.class);
    for (RingSide side : RingSide.values()) {
      double[] state = side.of(equations, trimmed);
      Mode heave = mode(LinearModel.about(equations, state, FLIGHT, List.of()), "heave");
      assertTrue(heave.grows());
      assertEquals(Math.log(2) / heave.real(), heave.doubleTime().orElseThrow(), 1e-12);
      assertTrue(heave.halfTime().isEmpty());
      growth.put(side, heave.real());
    }
    assertTrue(growth.get(RingSide.DISSOLVING) < growth.get(RingSide.DEEPENING), "" + growth);
  }

  /**
   * Derivatives of the vertical acceleration in hover with the inflow settled (Padfield, Helicopter
   * Flight Dynamics, ch. 4, from memory, and by hand from blade elements and momentum theory):
   *
   * <p>Zw = -2 a s A rho Vtip l0 / ((16 l0 + a s) m)
   *
   * <p>Ztheta = (8/3) a s A rho Vtip^2 l0 / ((16 l0 + a s) m), up positive here
   *
   * <p>These are what momentum theory gives; a measured damping, in level flight, is among the
   * checks of the validation report.
   */
  @Test
  void dampingAndCollectiveInHoverAreThoseOfMomentumTheory() {
    Helicopter ideal =
        DemoCraft.TWIN
            .with(Rotor.TWIST, 0)
            .with(Rotor.TIP_LOSS, 1)
            .with(Rotor.ROOT_CUTOUT, 0)
            .with(Rotor.BLADE_LOADING_LIMIT, 0.25)
            .with(CraftBody.DOWNLOAD, 0)
            .with(CraftBody.TAIL_ARM, 30);
    EquationsOfMotion equations = AtSeaLevel.calm(ideal);
    double[] hover = AtSeaLevel.hover(equations);
    LinearModel heave =
        LinearModel.about(equations, hover, List.of(HEAVE), List.of(INFLOW, COLLECTIVE));
    LinearModel lag =
        LinearModel.about(equations, hover, List.of(INFLOW), List.of(HEAVE, COLLECTIVE));
    double byInflow = heave.b().get(0, 0) / lag.a().get(0, 0);
    double damping = heave.a().get(0, 0) - byInflow * lag.b().get(0, 0);
    double power = heave.b().get(0, 1) - byInflow * lag.b().get(0, 1);
    double density = StandardAtmosphere.at(0).density();
    double tip = ideal.si(Rotor.TIP_SPEED);
    double area = Math.PI * ideal.si(Rotor.RADIUS) * ideal.si(Rotor.RADIUS);
    double inflow = Math.sqrt(ideal.mass() * 9.80665 / (2 * density * area)) / tip;
    double as = ideal.si(Rotor.LIFT_SLOPE) * ideal.si(Rotor.SOLIDITY);
    double expected = -2 * as * area * density * tip * inflow / ((16 * inflow + as) * ideal.mass());
    assertEquals(expected, damping, 0.005 * Math.abs(expected));
    double expectedPower = -4.0 / 3 * tip * expected;
    assertEquals(expectedPower, power, 0.005 * expectedPower);
  }

  /** What is held at once and exactly by attitude stays: the rates of the speeds vanish. */
  @Test
  void holdingTheSpeedsLeavesTheVerticalMotion() {
    EquationsOfMotion equations = AtSeaLevel.calm(DemoCraft.HEAVY);
    double[] state = Trim.find(equations, 10, -3).state(equations, 10, -3);
    LinearModel whole =
        LinearModel.about(
            equations,
            state,
            List.of(SURGE, SWAY, HEAVE, INFLOW),
            List.of(PITCH, BANK, COLLECTIVE));
    LinearModel held = whole.holding(List.of(SURGE, SWAY), List.of(PITCH, BANK));
    assertEquals(List.of(HEAVE, INFLOW), held.coordinates());
    assertEquals(List.of(COLLECTIVE), held.inputs());
    // by hand: the attitude that cancels what one m/s up does to the speeds
    double a = whole.b().get(0, 0);
    double b = whole.b().get(0, 1);
    double c = whole.b().get(1, 0);
    double d = whole.b().get(1, 1);
    double p = whole.a().get(0, 2);
    double q = whole.a().get(1, 2);
    double pitch = -(d * p - b * q) / (a * d - b * c);
    double bank = -(a * q - c * p) / (a * d - b * c);
    assertEquals(
        whole.a().get(2, 2) + whole.b().get(2, 0) * pitch + whole.b().get(2, 1) * bank,
        held.a().get(0, 0),
        1e-9);
  }

  /**
   * By hand: 0 = 10 + 2 w + 2 p + 4 c holds the surge by p = -(5 + w + 2 c), and the heave then is
   * 20 + 4 w + p + 5 c = 15 + 3 w + 3 c.
   */
  @Test
  void holdingOneSpeedOfTwoIsArithmetic() {
    LinearModel held =
        model(new double[][] {{2, 4}, {1, 5}}).holding(List.of(SURGE), List.of(PITCH));
    assertEquals(List.of(HEAVE), held.coordinates());
    assertEquals(List.of(COLLECTIVE), held.inputs());
    assertEquals(3, held.a().get(0, 0), 1e-14);
    assertEquals(3, held.b().get(0, 0), 1e-14);
    assertEquals(15, held.rates()[0], 1e-14);
    LinearModel loose = model(new double[][] {{0, 4}, {1, 5}});
    assertThrows(ArithmeticException.class, () -> loose.holding(List.of(SURGE), List.of(PITCH)));
  }

  private static LinearModel model(double[][] b) {
    return new LinearModel(
        List.of(SURGE, HEAVE),
        List.of(PITCH, COLLECTIVE),
        new DMatrixRMaj(new double[][] {{1, 2}, {3, 4}}),
        new DMatrixRMaj(b),
        new double[] {10, 20},
        0);
  }
}
