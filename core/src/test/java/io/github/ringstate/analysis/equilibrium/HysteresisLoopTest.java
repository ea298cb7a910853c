package io.github.ringstate.analysis.equilibrium;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.analysis.equilibrium.HysteresisLoop.Sample;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A flight by the equations of motion against the curve that continuation found. */
class HysteresisLoopTest {

  /**
   * Vertical speed of a steady descent that the flight follows late, by the time in which a
   * disturbance dies away, on the upper or lower stable part of the curve.
   */
  private static double followed(
      EquilibriumCurve curve, double collective, double rate, boolean upper) {
    Equilibrium here = steady(curve, collective, upper);
    return steady(curve, collective + rate / here.growth(), upper).verticalSpeed();
  }

  private static Equilibrium steady(EquilibriumCurve curve, double collective, boolean upper) {
    List<Equilibrium> points = curve.points().stream().filter(Equilibrium::stable).toList();
    double fold = curve.folds().get(upper ? 0 : 1).verticalSpeed();
    for (int i = 1; i < points.size(); i++) {
      Equilibrium one = points.get(i - 1);
      Equilibrium other = points.get(i);
      boolean here =
          upper
              ? one.verticalSpeed() > fold && other.verticalSpeed() > fold
              : one.verticalSpeed() < fold && other.verticalSpeed() < fold;
      if (here && one.collective() >= collective && other.collective() < collective) {
        double part = (collective - one.collective()) / (other.collective() - one.collective());
        double speed = one.verticalSpeed() + part * (other.verticalSpeed() - one.verticalSpeed());
        double growth = one.growth() + part * (other.growth() - one.growth());
        return new Equilibrium(collective, 0, 0, speed, 0, 0, 0, 1, 0, 0, 0, growth);
      }
    }
    throw new IllegalArgumentException("no steady descent at " + collective);
  }

  /**
   * With airspeed too, or nothing would show that the attitude holds it; more slowly then, for the
   * lag that {@link #followed} leaves out grows with the square of the rate.
   */
  @ParameterizedTest
  @CsvSource({"0, 0.02", "3, 0.01"})
  void theSinkJumpsBeyondTheFoldsAndFollowsTheStableDescentsElsewhere(
      double airspeed, double degreesPerSecond) {
    double rate = Unit.DEGREE.toSi(degreesPerSecond);
    DescentCase descents = DescentCase.of(DemoCraft.UTILITY).withAirspeed(airspeed);
    EquilibriumCurve curve = EquilibriumCurve.againstCollective(descents);
    HysteresisLoop loop = HysteresisLoop.fly(descents, rate).orElseThrow();
    double down = curve.folds().get(0).collective();
    double up = curve.folds().get(1).collective();
    double beyond = Unit.DEGREE.toSi(0.5);
    assertTrue(loop.jumpDown().collective() < down);
    assertTrue(loop.jumpDown().collective() > down - beyond);
    assertTrue(loop.jumpUp().collective() > up);
    assertTrue(loop.jumpUp().collective() < up + beyond);
    // from 0.4 deg above the upper collective of a fold to 0.4 below the lower, a minute, and back
    double minutes = 60 + (up - down + Unit.DEGREE.toSi(0.8)) / rate;
    List<Sample> lowering = loop.lowering();
    List<Sample> raising = loop.raising();
    assertEquals(0, lowering.get(0).time(), 1e-9);
    assertEquals(up + Unit.DEGREE.toSi(0.4), lowering.get(0).collective(), 1e-9);
    assertEquals(minutes, lowering.get(lowering.size() - 1).time(), 0.21);
    assertEquals(minutes, raising.get(0).time(), 0.21);
    assertEquals(2 * minutes, raising.get(raising.size() - 1).time(), 0.21);
    double clear = Unit.DEGREE.toSi(0.2);
    double hover = curve.points().get(0).collective();
    int compared = 0;
    for (Sample sample : loop.lowering()) {
      if (sample.collective() > down + clear && sample.collective() < hover - clear) {
        assertEquals(
            followed(curve, sample.collective(), -rate, true), sample.verticalSpeed(), 0.1);
        compared++;
      }
    }
    for (Sample sample : loop.raising()) {
      if (sample.collective() < up - clear && sample.collective() > down) {
        assertEquals(
            followed(curve, sample.collective(), rate, false), sample.verticalSpeed(), 0.1);
        compared++;
      }
    }
    assertTrue(compared > 200);
    Sample settled = loop.lowering().get(loop.lowering().size() - 1);
    assertEquals(
        steady(curve, settled.collective(), false).verticalSpeed(), settled.verticalSpeed(), 0.01);
    Sample back = loop.raising().get(loop.raising().size() - 1);
    assertTrue(back.verticalSpeed() > 0, "the loop is closed: it climbs as at first");
    assertEquals(loop.lowering().get(0).verticalSpeed(), back.verticalSpeed(), 0.1);
  }
}
