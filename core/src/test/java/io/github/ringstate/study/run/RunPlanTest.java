package io.github.ringstate.study.run;

import static io.github.ringstate.study.run.Runs.limits;
import static io.github.ringstate.study.run.Runs.plan;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Unit;
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
    "98, true, SHORT",
    "180, true, FAILS",
    "262, true, SHORT",
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
}
