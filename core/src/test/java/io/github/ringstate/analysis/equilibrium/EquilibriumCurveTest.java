package io.github.ringstate.analysis.equilibrium;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.CraftBody;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.rotor.Rotor;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.hipparchus.optim.univariate.UnivariatePointValuePair;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class EquilibriumCurveTest {

  static Stream<DescentCase> vertical() {
    return DemoCraft.ALL.stream().map(DescentCase::of);
  }

  static Stream<DescentCase> cases() {
    return Stream.concat(vertical(), Stream.of(DescentCase.of(DemoCraft.UTILITY).withAirspeed(3)));
  }

  private static EquilibriumCurve curve(DescentCase descents) {
    return EquilibriumCurve.againstCollective(descents);
  }

  /** The other way: {@link Trim}, which looks for the collective at a given vertical speed. */
  @ParameterizedTest
  @MethodSource("cases")
  void everyDescentIsTheTrimAtItsVerticalSpeed(DescentCase descents) {
    EquationsOfMotion equations = descents.equations();
    List<Equilibrium> powered =
        curve(descents).points().stream()
            .filter(point -> Math.abs(point.rotorSpeed() - 1) < 1e-9)
            .toList();
    assertTrue(powered.size() > 50);
    for (Equilibrium point : powered) {
      Trim trim = Trim.find(equations, point.airspeed(), point.verticalSpeed());
      assertEquals(trim.collective(), point.collective(), 1e-8);
      assertEquals(trim.bank(), point.bank(), 1e-8);
      assertEquals(trim.pitch(), point.pitch(), 1e-8);
      assertEquals(trim.induced(), point.induced(), 1e-6);
    }
  }

  /** At the upper fold the collective of the trims is least: a search for it, without slopes. */
  @ParameterizedTest
  @MethodSource("cases")
  void theUpperFoldIsWhereTheTrimsNeedLeastCollective(DescentCase descents) {
    EquilibriumCurve curve = curve(descents);
    assertEquals(2, curve.folds().size());
    assertTrue(curve.foldError() < 1e-8, "error " + curve.foldError());
    Equilibrium fold = curve.folds().get(0);
    EquationsOfMotion equations = descents.equations();
    UnivariatePointValuePair least =
        new BrentOptimizer(1e-9, 1e-14)
            .optimize(
                new MaxEval(200),
                new UnivariateObjectiveFunction(
                    speed -> Trim.find(equations, descents.airspeed(), speed).collective()),
                GoalType.MINIMIZE,
                new SearchInterval(1.2 * fold.verticalSpeed(), 0.8 * fold.verticalSpeed()));
    assertEquals(least.getValue(), fold.collective(), 1e-11);
    // as well as a least value can be located
    assertEquals(least.getPoint(), fold.verticalSpeed(), 1e-4);
  }

  /** A disturbance neither grows nor dies away at a fold, and grows between the two alone. */
  @ParameterizedTest
  @MethodSource("cases")
  void descentsBetweenTheFoldsAreUnstable(DescentCase descents) {
    EquilibriumCurve curve = curve(descents);
    double upper = curve.folds().get(0).verticalSpeed();
    double lower = curve.folds().get(1).verticalSpeed();
    for (Equilibrium fold : curve.folds()) {
      assertEquals(0, fold.growth(), 1e-5);
    }
    for (Equilibrium point : curve.points()) {
      double speed = point.verticalSpeed();
      assertEquals(speed > upper || speed < lower, point.stable(), "at " + speed + " m/s");
    }
  }

  /**
   * The fold of the whole craft is not that of the inflow. In descent the drag of the underside
   * holds the craft up, more so the faster it sinks, so the thrust T falls by q = rho S |V| / (1 -
   * download) for each m/s less. By hand: T depends on collective and total inflow s w(z) alone,
   * where s is the hover induced velocity of T; the collective is least where dT/dV = dT/dinflow
   * d(s w)/dV, so where the slope of w is (q / (dT/dinflow) - w s q / 2T) / (1 - z s q / 2T). A
   * long tail arm leaves the bank out, which by its change is a tenth of the effect otherwise.
   */
  @ParameterizedTest
  @MethodSource("vertical")
  void theDragOfTheBodyMovesTheOnsetIntoTheRing(DescentCase banked) {
    Helicopter craft = banked.craft().with(CraftBody.TAIL_ARM, 30);
    DescentCase descents = new DescentCase(craft, banked.air(), banked.inflow(), banked.airspeed());
    Equilibrium fold = curve(descents).folds().get(0);
    double density = descents.air().density();
    double perInflow = craft.rotor().thrustPerInflow(density, craft.si(Rotor.TIP_SPEED));
    double scale = fold.verticalSpeed() / fold.axial();
    double thrust = 2 * density * craft.rotor().area() * scale * scale;
    double q =
        density
            * craft.si(CraftBody.UNDERSIDE_AREA)
            * Math.abs(fold.verticalSpeed())
            / (1 - craft.si(CraftBody.DOWNLOAD));
    double z = fold.axial();
    double w = fold.induced() / scale + z;
    double perThrust = scale * q / (2 * thrust);
    double expected = (q / perInflow - w * perThrust) / (1 - z * perThrust);
    double slope = descents.inflow().slope(fold.edgewise(), z);
    assertEquals(expected, slope, 0.03 * Math.abs(slope));
    assertTrue(z < -0.505 && z > -0.515, "onset at " + z);
  }

  /** The same fold, reached in mass at a collective and in collective at a mass. */
  @Test
  void aFoldInMassIsTheFoldInCollectiveAtThatMass() {
    DescentCase descents = DescentCase.of(DemoCraft.TWIN);
    double collective = curve(descents).folds().get(0).collective() + 0.002;
    List<EquilibriumCurve> curves = EquilibriumCurve.against(descents, collective, Varied.MASS);
    assertEquals(1, curves.size());
    List<Equilibrium> folds = curves.get(0).folds();
    assertEquals(2, folds.size());
    List<Equilibrium> points = curves.get(0).points();
    double own = descents.craft().mass();
    for (int i = 1; i < points.size(); i++) {
      double step = Math.abs(points.get(i).mass() - points.get(i - 1).mass());
      assertTrue(step < 0.051 * own, "step of " + step);
    }
    double lightest = descents.craft().si(Helicopter.MINIMUM_MASS);
    double heaviest = descents.craft().si(Helicopter.MAXIMUM_MASS);
    assertTrue(
        points.stream()
            .skip(1)
            .limit(points.size() - 2)
            .allMatch(p -> p.mass() > lightest && p.mass() < heaviest));
    assertTrue(folds.get(0).verticalSpeed() > folds.get(1).verticalSpeed(), "in their order");
    for (int i = 0; i < 2; i++) {
      Helicopter loaded = descents.craft().with(Helicopter.MASS, folds.get(i).mass());
      Equilibrium other = curve(DescentCase.of(loaded)).folds().get(i);
      assertEquals(collective, other.collective(), 1e-8);
      assertEquals(folds.get(i).verticalSpeed(), other.verticalSpeed(), 1e-6);
    }
  }

  /** At a collective of three descents the curve in airspeed joins the lower two. */
  @Test
  void withAirspeedTheTwoFastDescentsMeet() {
    DescentCase descents = DescentCase.of(DemoCraft.UTILITY);
    double collective = curve(descents).folds().get(0).collective() + 0.002;
    List<EquilibriumCurve> curves = EquilibriumCurve.against(descents, collective, Varied.AIRSPEED);
    assertEquals(2, curves.size());
    assertTrue(curves.get(0).folds().isEmpty());
    List<Equilibrium> slow = curves.get(0).points();
    assertTrue(slow.stream().allMatch(Equilibrium::stable));
    // from a little backwards on, in steps of at most a twentieth of the hover induced velocity
    double scale = descents.equations().hoverInduced();
    assertTrue(slow.get(0).airspeed() <= -0.02 * scale && slow.get(0).airspeed() > -0.08 * scale);
    for (int i = 1; i < slow.size(); i++) {
      double step = slow.get(i).airspeed() - slow.get(i - 1).airspeed();
      assertTrue(step > 0 && step < 0.051 * scale, "step of " + step);
    }
    double fastest = slow.get(slow.size() - 1).airspeed() / scale;
    assertTrue(fastest >= 2 && fastest < 2.051, "to " + fastest);
    Equilibrium fold = curves.get(1).folds().get(0);
    Equilibrium other = curve(descents.withAirspeed(fold.airspeed())).folds().get(1);
    assertEquals(collective, other.collective(), 1e-8);
    assertEquals(fold.verticalSpeed(), other.verticalSpeed(), 1e-5);
  }

  /** Among others that one where it was asked: whatever the airspeed of the case. */
  @Test
  void aCurveInAirspeedPassesTheDescentsAtTheAirspeedOfTheCase() {
    DescentCase descents = DescentCase.of(DemoCraft.UTILITY).withAirspeed(3);
    EquilibriumCurve atAirspeed = curve(descents);
    double collective = atAirspeed.folds().get(0).collective() + 0.002;
    List<Equilibrium> there = crossings(atAirspeed.points(), Equilibrium::collective, collective);
    assertEquals(3, there.size());
    List<Equilibrium> passed = new ArrayList<>();
    for (EquilibriumCurve one : EquilibriumCurve.against(descents, collective, Varied.AIRSPEED)) {
      passed.addAll(crossings(one.points(), Equilibrium::airspeed, 3));
    }
    assertEquals(3, passed.size());
    for (Equilibrium each : there) {
      assertTrue(
          passed.stream()
              .anyMatch(other -> Math.abs(other.verticalSpeed() - each.verticalSpeed()) < 1),
          "none at " + each.verticalSpeed() + " m/s");
    }
  }

  /** The points of a curve behind which a number crosses a value. */
  private static List<Equilibrium> crossings(
      List<Equilibrium> points, ToDoubleFunction<Equilibrium> number, double value) {
    List<Equilibrium> crossings = new ArrayList<>();
    for (int i = 1; i < points.size(); i++) {
      if (number.applyAsDouble(points.get(i - 1)) < value
          != number.applyAsDouble(points.get(i)) < value) {
        crossings.add(points.get(i - 1));
      }
    }
    return crossings;
  }

  /** With less power than the exit needs, the rotor slows: the lower fold is not the inflow's. */
  @Test
  void withoutThePowerTheRotorSlowsAtTheLowerFold() {
    Equilibrium fold = curve(DescentCase.of(DemoCraft.TRAINER)).folds().get(1);
    assertTrue(fold.rotorSpeed() < 0.98, "rotor speed " + fold.rotorSpeed());
    assertEquals(87e3, fold.power(), 50);
    assertFalse(curve(DescentCase.of(DemoCraft.UTILITY)).folds().get(1).rotorSpeed() < 0.999);
  }
}
