package io.github.ringstate.study.run;

import static io.github.ringstate.study.run.Runs.limits;
import static io.github.ringstate.study.run.Runs.plan;
import static io.github.ringstate.study.run.Runs.wind;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.HeightVelocityCurve;
import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RunPlanTest {

  @ParameterizedTest
  @CsvSource({
    // Wind from north 15 kt, gusts 25, hence lulls 5. Arithmetic: with the wind behind at 20 kt a
    // gust of 20 leaves no air at all; against it a lull of 5 leaves 25 and a gust of 25 gives 45;
    // across it a lull leaves sqrt(20^2 + 5^2), a gust sqrt(20^2 + 25^2).
    "180, 0, 15",
    "0, 25, 45",
    "90, 20.6155281280883, 32.0156211871642"
  })
  void gustsAndLullsMoveTheAirspeedAsArithmeticSays(double track, double least, double greatest) {
    RunPlan plan = plan(DemoCraft.TRAINER, 15, 25, 20);
    double direction = Unit.DEGREE.toSi(track);
    assertEquals(least, Unit.KNOT.fromSi(plan.minimumAirspeed(direction)), 1e-9);
    assertEquals(greatest, Unit.KNOT.fromSi(plan.maximumAirspeed(direction)), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 40, 110, 180, 250})
  void noWindBetweenLullAndGustLeavesLessAirThanTheMinimumAirspeed(int track) {
    RunPlan plan = plan(DemoCraft.TRAINER, 15, 27, 18);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= 2400; i++) {
      RunPlan steady = plan(DemoCraft.TRAINER, 3 + i / 100.0, 3 + i / 100.0, 18);
      least = Math.min(least, steady.triangle(Unit.DEGREE.toSi(track)).airspeed());
    }
    // the wind is searched in hundredths of a knot
    assertEquals(least, plan.minimumAirspeed(Unit.DEGREE.toSi(track)), Unit.KNOT.toSi(0.005));
  }

  @ParameterizedTest
  @CsvSource({
    // Wind from north 40 kt, 5 kt over the ground. Arithmetic: the tailwind is more than 5 kt where
    // its cosine is more than 1/8, on tracks within 82.8 deg of south.
    // At 60 kt over the ground, the most that is accepted, 20 kt from ahead are left due south.
    "97, false, HOLDS",
    "98, true, NOT_AS_PLANNED",
    "180, true, FAILS",
    "262, true, NOT_AS_PLANNED",
    "263, false, HOLDS"
  })
  void anAirspeedFromBehindIsNoneToRelyOn(double track, boolean overtaken, Finding finding) {
    RunPlan plan = plan(DemoCraft.TRAINER, 40, 40, 5);
    double direction = Unit.DEGREE.toSi(track);
    assertEquals(overtaken, plan.isOvertaken(direction));
    // 35 kt at the least, in whatever direction
    RunLimits limits = limits(24, 80);
    assertFalse(limits.below(plan.minimumAirspeed(direction)));
    assertEquals(overtaken, limits.below(plan, direction));
    assertEquals(0, new RunStudy(plan).airspeedDownwind());
    assertEquals(finding, AirspeedCheck.of(plan, Optional.of(limits), direction).finding());
  }

  @Test
  void aGustBelowTheMeanIsRefused() {
    assertThrows(OutOfRangeException.class, () -> plan(DemoCraft.TRAINER, 20, 19, 20));
  }

  @ParameterizedTest
  @CsvSource({"-1, 10", "101, 101", "NaN, 10", "10, NaN"})
  void aWindOutOfRangeIsRefused(double wind, double gust) {
    assertThrows(OutOfRangeException.class, () -> plan(DemoCraft.TRAINER, wind, gust, 20));
  }

  @Test
  void calmAirIsNoPromiseOfStillAir() {
    // 25 kt over the ground, 3 kt of air or drift from any direction: 22 to 28 kt on every track,
    // and by arithmetic a hover over the ground may have 3 kt from behind
    RunWind calm = RunWind.calm(RunWind.ALLOWANCE);
    RunPlan run = plan(DemoCraft.TRAINER, HeightVelocityCurve.NONE, calm, 25, 500, 500);
    for (int track = 0; track < 360; track += 30) {
      double direction = Unit.DEGREE.toSi(track);
      assertEquals(22, Unit.KNOT.fromSi(run.minimumAirspeed(direction)), 1e-9);
      assertEquals(28, Unit.KNOT.fromSi(run.maximumAirspeed(direction)), 1e-9);
      assertFalse(run.isOvertaken(direction));
      assertTrue(run.withGroundSpeed(0).isOvertaken(direction));
      assertEquals(0, run.withGroundSpeed(0).minimumAirspeed(direction));
    }
  }

  @Test
  void moreWindBehindNeverLeavesMoreAirspeedThanTheRunNeeds() {
    // up to the ground speed, each knot of wind behind takes a knot of air, by arithmetic
    double before = Double.POSITIVE_INFINITY;
    for (int wind = 0; wind <= 20; wind++) {
      double least = plan(DemoCraft.TRAINER, wind, wind, 20).minimumAirspeed(Math.PI);
      assertEquals(20 - wind, Unit.KNOT.fromSi(least), 1e-9);
      assertTrue(least < before);
      before = least;
    }
  }

  @Test
  void theCurveIsReadByCalibratedAirspeed() {
    // 40 kt up to 400 ft. At 8000 ft the standard density ratio is 0.7860 (U.S. Standard Atmosphere
    // 1976): 40 / sqrt(0.7860) = 45.12 kt of true airspeed.
    HeightVelocityCurve curve =
        new HeightVelocityCurve(
            List.of(
                new HeightVelocityCurve.Point(Unit.KNOT.toSi(40), Unit.FOOT.toSi(400)),
                new HeightVelocityCurve.Point(Unit.KNOT.toSi(40), Unit.FOOT.toSi(0))));
    RunPlan low = plan(DemoCraft.TRAINER, curve, wind(0, 0), 25, 300, 300);
    RunPlan thin =
        new RunPlan(
            low.craft(),
            curve,
            StandardAtmosphere.at(Unit.FOOT.toSi(8000)),
            low.wind(),
            low.groundSpeed(),
            low.descent(),
            low.height(),
            low.lowestHeight(),
            low.margin());
    // the density at sea level is that of the standard to ten digits
    assertEquals(40, Unit.KNOT.fromSi(low.minimumByCurve().getAsDouble()), 1e-6);
    assertEquals(45.12, Unit.KNOT.fromSi(thin.minimumByCurve().getAsDouble()), 0.005);
    assertTrue(plan(DemoCraft.TRAINER, curve, wind(0, 0), 25, 401, 300).minimumByCurve().isEmpty());
  }

  /** Arithmetic: a gust as fast as the run leaves no air, and does not overtake it. */
  @Test
  void aGustAsFastAsTheRunDoesNotOvertakeIt() {
    double south = Unit.DEGREE.toSi(180);
    RunPlan run = plan(DemoCraft.TRAINER, 20, 20, 20);
    assertFalse(run.isOvertaken(south));
    assertTrue(plan(DemoCraft.TRAINER, 20, 20.01, 20).isOvertaken(south));
    // 17 kt from behind and 3 kt of allowance
    RunWind most = new RunWind(0, Unit.KNOT.toSi(17), Unit.KNOT.toSi(17), Unit.KNOT.toSi(3));
    RunPlan allowed = plan(DemoCraft.TRAINER, HeightVelocityCurve.NONE, most, 20, 500, 500);
    assertFalse(allowed.isOvertaken(south));
    assertTrue(allowed.withGroundSpeed(Unit.KNOT.toSi(19.99)).isOvertaken(south));
  }

  /** A compass rose: the other way of a direction, from 0 on and below 360. */
  @ParameterizedTest
  @CsvSource({"0, 180", "90, 270", "179, 359", "180, 0", "270, 90", "360, 180"})
  void downwindIsTheOtherWay(double from, double downwind) {
    RunWind wind = new RunWind(Unit.DEGREE.toSi(from), 5, 5, 0);
    assertEquals(downwind, Unit.DEGREE.fromSi(wind.downwind()), 1e-9);
  }

  @Test
  void airThatGustsIsNotCalm() {
    assertTrue(RunWind.calm(2).isCalm());
    assertFalse(wind(0, 1).isCalm());
  }
}
