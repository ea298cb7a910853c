package io.github.ringstate.study.run;

import static io.github.ringstate.study.run.Runs.limits;
import static io.github.ringstate.study.run.Runs.loss;
import static io.github.ringstate.study.run.Runs.plan;
import static io.github.ringstate.study.run.Runs.study;
import static io.github.ringstate.study.run.Runs.wind;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.HeightVelocityCurve;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.quantity.Unit;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RunJudgementTest {

  private static final Optional<RunLimits> LIMITS = Optional.of(limits(24, 80));

  private static RunJudgement judged(
      RunStudy study, Optional<RunLimits> limits, double trackDeg, Optional<RunLoss> worst) {
    return RunJudgement.of(study, limits, Unit.DEGREE.toSi(trackDeg), worst);
  }

  private static double knots(OptionalDouble speed) {
    return Unit.KNOT.fromSi(speed.orElseThrow());
  }

  @ParameterizedTest
  @CsvSource({
    "HOLDS, HOLDS, HOLDS, FLY",
    "HOLDS, HOLDS_WITH_A_LIMIT, HOLDS, FLY_WITH_A_LIMIT",
    "NOT_AS_PLANNED, HOLDS_WITH_A_LIMIT, HOLDS, NOT_AS_PLANNED",
    "FAILS, HOLDS, HOLDS, DO_NOT_FLY",
    "NOT_AS_PLANNED, FAILS, HOLDS, DO_NOT_FLY"
  })
  void theWorstCheckGivesTheVerdict(Finding one, Finding two, Finding three, RunVerdict verdict) {
    assertEquals(verdict, RunJudgement.verdict(one, two, three));
    assertEquals(verdict, RunJudgement.verdict(three, one, two));
  }

  @Test
  void withoutPowerAtAnyAirspeedNothingIsFlown() {
    RunJudgement judged = judged(study(0, 0, 20), Optional.empty(), 0, Optional.empty());
    assertEquals(RunVerdict.DO_NOT_FLY, judged.verdict());
    assertEquals(AirspeedCheck.Reason.NO_AIRSPEED, judged.airspeed().reason());
  }

  @ParameterizedTest
  @CsvSource({
    // Wind north 20 kt, ground speed 20 kt: 40 kt of air against it, none with it. Worst loss of
    // half and of most, ft (-1: none); 500 ft, of which 50 are to be left.
    "0, -1, -1, FLY_WITH_A_LIMIT, KEPT, COVERED",
    "0, 100, 450, FLY_WITH_A_LIMIT, KEPT, COVERED",
    "0, 100, 450.1, FLY_WITH_A_LIMIT, KEPT, HALF_COVERED",
    "0, 450, Infinity, FLY_WITH_A_LIMIT, KEPT, HALF_COVERED",
    "0, 450.1, 451, DO_NOT_FLY, KEPT, NOT_COVERED",
    "0, Infinity, Infinity, DO_NOT_FLY, KEPT, NOT_COVERED",
    "180, 100, 450, NOT_AS_PLANNED, LOW, COVERED",
    "180, -1, -1, NOT_AS_PLANNED, LOW, COVERED",
    "180, 100, 450.1, NOT_AS_PLANNED, LOW, HALF_COVERED",
    "180, 450.1, 451, DO_NOT_FLY, LOW, NOT_COVERED"
  })
  void theVerdictFollowsFromAirspeedAndLoss(
      double track,
      double halfFt,
      double mostFt,
      RunVerdict verdict,
      AirspeedCheck.Reason airspeed,
      HeightCheck.Reason height) {
    RunJudgement judged = judged(study(20, 20, 20), LIMITS, track, loss(halfFt, mostFt));
    assertEquals(verdict, judged.verdict());
    assertEquals(airspeed, judged.airspeed().reason());
    assertEquals(height, judged.height().reason());
    // 24 kt of air with 20 kt of wind behind take 44 kt over the ground
    assertEquals(44, knots(judged.turn().groundSpeed()), 1e-9);
    if (verdict == RunVerdict.NOT_AS_PLANNED) {
      assertEquals(44, knots(judged.groundSpeedInstead()), 1e-9);
    } else {
      assertTrue(judged.groundSpeedInstead().isEmpty());
    }
    if (verdict == RunVerdict.FLY_WITH_A_LIMIT) {
      assertEquals(24, knots(judged.minimumAirspeed()), 1e-9);
    } else {
      assertTrue(judged.minimumAirspeed().isEmpty());
    }
  }

  @Test
  void aLimitIsOneThatThePlannedRunKeeps() {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 30; i++) {
      double wind = random.nextInt(40);
      RunStudy study = study(wind, wind + random.nextInt(15), random.nextInt(61));
      for (int track = 0; track <= 180; track += 20) {
        RunJudgement judged = judged(study, LIMITS, track, loss(100, 200));
        double direction = Unit.DEGREE.toSi(track);
        judged
            .minimumAirspeed()
            .ifPresent(
                limit -> assertTrue(study.plan().minimumAirspeed(direction) >= limit, "not kept"));
        // and at the speed that would be flown instead the airspeed holds
        judged
            .groundSpeedInstead()
            .ifPresent(
                speed -> {
                  RunPlan other = study.plan().withGroundSpeed(speed);
                  assertEquals(Finding.HOLDS, AirspeedCheck.of(other, LIMITS, direction).finding());
                });
      }
    }
  }

  @Test
  void aRunThatKeepsItsAirspeedInATurnAsWellIsFlown() {
    // 40 kt over the ground less 10 kt of wind: 30 kt with the wind behind.
    RunJudgement judged = judged(study(10, 10, 40), LIMITS, 0, Optional.empty());
    assertEquals(RunVerdict.FLY, judged.verdict());
    assertEquals(Finding.HOLDS, judged.turn().finding());
    assertEquals(30, Unit.KNOT.fromSi(judged.turn().airspeed()), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "30, 50, DO_NOT_FLY, BELOW_LOWEST",
    "499, 500, DO_NOT_FLY, BELOW_LOWEST",
    "500, 500, FLY, COVERED",
    "30, 20, DO_NOT_FLY, NOT_COVERED", // 50 ft are to be left below, and there are not
    "50, 20, FLY, COVERED"
  })
  void theHeightIsJudgedWhereNoRingStateIsMet(
      double height, double lowest, RunVerdict verdict, HeightCheck.Reason reason) {
    RunStudy brisk =
        new RunStudy(
            plan(DemoCraft.TRAINER, HeightVelocityCurve.NONE, wind(0, 0), 40, height, lowest));
    RunJudgement judged = judged(brisk, LIMITS, 0, Optional.empty());
    assertEquals(verdict, judged.verdict());
    assertEquals(reason, judged.height().reason());
    assertEquals(Math.max(lowest, 50), Unit.FOOT.fromSi(judged.height().needed()), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    // The trainer takes some 77 kW to hover: beyond 76 of take-off power it is not flown, with 70
    // continuous and 80 for take-off the hover is for minutes only.
    "76, 76, FAILS, DO_NOT_FLY",
    "70, 80, HOLDS_WITH_A_LIMIT, FLY_WITH_A_LIMIT",
    "80, 80, HOLDS, FLY"
  })
  void withoutThePowerToHoverNoRunIsFlown(
      double continuous, double takeOff, Finding finding, RunVerdict verdict) {
    Helicopter craft =
        DemoCraft.TRAINER
            .with(Helicopter.CONTINUOUS_POWER, 20)
            .with(Helicopter.TAKE_OFF_POWER, takeOff)
            .with(Helicopter.CONTINUOUS_POWER, continuous);
    RunStudy study = new RunStudy(plan(craft, 0, 0, 40));
    double hover = study.hoverPower().getAsDouble();
    assertTrue(hover > 76_000 && hover < 80_000);
    RunJudgement judged = judged(study, LIMITS, 0, Optional.empty());
    assertEquals(finding, judged.hover().finding());
    assertEquals(1 - hover / (1000 * takeOff), judged.hover().margin(), 1e-12);
    assertEquals(1 - hover / (1000 * continuous), judged.hover().continuousMargin(), 1e-12);
    assertEquals(verdict, judged.verdict());
  }

  @Test
  void theWorseOfTwoLossesIsBelowNeither() {
    RunLoss steady = new RunLoss(90, 100);
    RunLoss open = new RunLoss(60, Double.POSITIVE_INFINITY);
    assertEquals(new RunLoss(90, Double.POSITIVE_INFINITY), steady.worse(open));
    assertEquals(steady.worse(open), open.worse(steady));
  }

  @Test
  void moreHeightOrLessLossNeverMakesAVerdictStricter() {
    SplittableRandom random = new SplittableRandom(11);
    RunStudy study = study(15, 22, 25);
    Optional<RunLimits> limits = Optional.of(limits(24, 45));
    for (int track = 0; track < 360; track += 10) {
      for (int i = 0; i < 40; i++) {
        double half = random.nextDouble(600);
        double most = half + random.nextDouble(600);
        RunVerdict verdict = judged(study, limits, track, loss(half, most)).verdict();
        double less = random.nextDouble();
        RunVerdict easier = judged(study, limits, track, loss(less * half, less * most)).verdict();
        assertTrue(easier.compareTo(verdict) <= 0, track + ": " + half + ", " + most);
      }
    }
  }

  @Test
  void halfOfThePilotsCannotLoseMoreThanMostOfThem() {
    assertThrows(IllegalArgumentException.class, () -> new RunLoss(2, 1));
    assertThrows(IllegalArgumentException.class, () -> new RunLoss(Double.NaN, 1));
    assertThrows(IllegalArgumentException.class, () -> new RunLoss(1, Double.NaN));
  }

  @Test
  void tooMuchAirspeedIsNotAsPlannedAndSlowerOverTheGround() {
    // North wind 20 kt at 50 kt over the ground: 70 kt of air into the wind. With 60 kt allowed,
    // 40 kt over the ground are left.
    RunStudy study = study(20, 20, 50);
    Optional<RunLimits> limits = Optional.of(limits(24, 60));
    RunJudgement judged = judged(study, limits, 0, Optional.empty());
    assertEquals(AirspeedCheck.Reason.HIGH, judged.airspeed().reason());
    assertEquals(RunVerdict.NOT_AS_PLANNED, judged.verdict());
    assertEquals(40, knots(judged.groundSpeedInstead()), 1e-9);
    assertEquals(OptionalDouble.empty(), judged.minimumAirspeed());
    // gusts of 40 above lulls of 0: between 24 and 30 kt there is no ground speed for both
    AirspeedCheck none =
        AirspeedCheck.of(plan(DemoCraft.TRAINER, 20, 40, 50), Optional.of(limits(24, 30)), 0);
    assertEquals(
        new AirspeedCheck(Finding.FAILS, AirspeedCheck.Reason.HIGH, OptionalDouble.empty()), none);
  }
}
