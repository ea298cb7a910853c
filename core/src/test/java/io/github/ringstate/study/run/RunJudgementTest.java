package io.github.ringstate.study.run;

import static io.github.ringstate.study.run.Runs.limits;
import static io.github.ringstate.study.run.Runs.loss;
import static io.github.ringstate.study.run.Runs.plan;
import static io.github.ringstate.study.run.Runs.study;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RunJudgementTest {

  private static final Optional<RunLimits> LIMITS = Optional.of(limits(24, 80));

  /** 80 kW of take-off power hover the trainer, which takes some 77; 70 do not. */
  private static final Helicopter NO_HOVER =
      DemoCraft.TRAINER.with(Helicopter.CONTINUOUS_POWER, 70).with(Helicopter.TAKE_OFF_POWER, 70);

  private static RunJudgement judged(
      RunStudy study, Optional<RunLimits> limits, double trackDeg, Optional<RunLoss> loss) {
    return RunJudgement.of(study, limits, study.track(Unit.DEGREE.toSi(trackDeg)), loss, loss);
  }

  @ParameterizedTest
  @CsvSource({
    "HOLDS, HOLDS, HOLDS, FLY",
    "HOLDS, HOLDS_WITH_A_LIMIT, HOLDS, FLY_WITH_A_LIMIT",
    "HOLDS, SHORT, HOLDS, FLY_WITH_A_LIMIT",
    "SHORT, HOLDS_WITH_A_LIMIT, HOLDS, FLY_WITH_A_LIMIT",
    "HOLDS, HOLDS_WITH_A_LIMIT, SHORT, FLY_WITH_A_LIMIT",
    "SHORT, SHORT, HOLDS, DO_NOT_FLY",
    "SHORT, HOLDS, SHORT, DO_NOT_FLY",
    "HOLDS, SHORT, SHORT, DO_NOT_FLY",
    "FAILS, HOLDS, HOLDS, DO_NOT_FLY",
    "HOLDS, FAILS, SHORT, DO_NOT_FLY"
  })
  void theWorstCheckGivesTheVerdictAndTwoShortAreAsBadAsOneThatFails(
      Finding airspeed, Finding height, Finding hover, RunVerdict verdict) {
    assertEquals(verdict, RunJudgement.verdict(airspeed, height, hover));
    assertEquals(verdict, RunJudgement.verdict(hover, airspeed, height));
  }

  @Test
  void noFindingIsMadeMilderByAWorseOne() {
    Finding[] all = Finding.values();
    for (Finding one : all) {
      for (Finding other : all) {
        for (Finding worse : all) {
          if (worse.compareTo(other) >= 0) {
            assertTrue(
                RunJudgement.verdict(one, worse).compareTo(RunJudgement.verdict(one, other)) >= 0,
                one + ", " + other + ", " + worse);
          }
        }
      }
    }
  }

  @Test
  void withoutPowerAtAnyAirspeedNothingIsFlown() {
    RunJudgement judged = judged(study(0, 0, 20), Optional.empty(), 0, Optional.empty());
    assertEquals(RunVerdict.DO_NOT_FLY, judged.verdict());
    assertEquals(AirspeedCheck.Reason.NO_AIRSPEED, judged.airspeed().reason());
  }

  @ParameterizedTest
  @CsvSource({
    // track, loss of half and of most, ft (-1: none), verdict, airspeed, height; wind north 20 kt,
    // ground speed 20 kt, 500 ft, of which 50 are to be left
    "0, -1, -1, FLY_WITH_A_LIMIT, KEPT, LOW_IN_A_TURN",
    "0, 100, 450, FLY, KEPT, COVERED",
    "0, 100, 450.1, FLY_WITH_A_LIMIT, KEPT, NOT_COVERED",
    "0, 450, Infinity, FLY_WITH_A_LIMIT, KEPT, NOT_COVERED",
    "0, 450.1, 451, DO_NOT_FLY, KEPT, NOT_COVERED",
    "0, Infinity, Infinity, DO_NOT_FLY, KEPT, NOT_COVERED",
    "180, 100, 450, FLY_WITH_A_LIMIT, LOW, COVERED",
    "180, 100, 450.1, DO_NOT_FLY, LOW, NOT_COVERED",
    "180, 100, Infinity, DO_NOT_FLY, LOW, NOT_COVERED"
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
    assertEquals(
        verdict == RunVerdict.FLY_WITH_A_LIMIT
            ? OptionalDouble.of(LIMITS.orElseThrow().minimum())
            : OptionalDouble.empty(),
        judged.minimumAirspeed());
  }

  @Test
  void aRunThatKeepsItsAirspeedInATurnAsWellIsFlown() {
    // 40 kt over the ground less 10 kt of wind: 30 kt with the wind behind.
    RunJudgement judged = judged(study(10, 10, 40), LIMITS, 0, Optional.empty());
    assertEquals(RunVerdict.FLY, judged.verdict());
    assertEquals(HeightCheck.Reason.NO_RING_STATE, judged.height().reason());
  }

  @ParameterizedTest
  @CsvSource({
    // track, loss of half and of most on the worst track, ft; wind north 20 kt, ground speed 20 kt
    "0, 100, 450, FLY, COVERED",
    "0, 460, 470, DO_NOT_FLY, NOT_COVERED",
    "180, 100, 460, DO_NOT_FLY, NOT_COVERED"
  })
  void aTrackThatMissesTheRingStateOrLosesLessThereIsJudgedAsTheWorstTrack(
      double track, double halfFt, double mostFt, RunVerdict verdict, HeightCheck.Reason height) {
    RunStudy study = study(20, 20, 20);
    for (Optional<RunLoss> own : List.of(loss(-1, -1), loss(90, 95))) {
      RunJudgement judged =
          RunJudgement.of(
              study, LIMITS, study.track(Unit.DEGREE.toSi(track)), own, loss(halfFt, mostFt));
      assertEquals(verdict, judged.verdict());
      assertEquals(height, judged.height().reason());
      assertEquals(loss(halfFt, mostFt), judged.height().loss());
    }
    // where no turn takes the airspeed down, the worst track is none of its business
    RunStudy brisk = study(10, 10, 40);
    assertEquals(
        HeightCheck.Reason.NO_RING_STATE,
        RunJudgement.of(brisk, LIMITS, brisk.track(0), Optional.empty(), loss(halfFt, mostFt))
            .height()
            .reason());
  }

  @Test
  void withoutThePowerToHoverNoRunIsFlownWithoutALimit() {
    RunStudy study = new RunStudy(plan(NO_HOVER, 20, 20, 20));
    assertTrue(study.hoverPower().getAsDouble() > 70_000);
    for (Optional<RunLoss> loss : List.of(loss(-1, -1), loss(100, 300))) {
      RunJudgement judged = judged(study, LIMITS, 0, loss);
      assertEquals(RunVerdict.FLY_WITH_A_LIMIT, judged.verdict());
      assertEquals(Finding.SHORT, judged.hover().finding());
      assertEquals(1 - study.hoverPower().getAsDouble() / 70_000, judged.hover().margin(), 1e-12);
      assertEquals(24, Unit.KNOT.fromSi(judged.minimumAirspeed().getAsDouble()), 1e-9);
    }
  }

  @ParameterizedTest
  @CsvSource({
    // track, loss of half and of most, ft; wind north 20 kt, ground speed 20 kt, hence 40 kt of air
    // against it and none with it; greatest airspeed to keep, kt
    "180, 80, 100, 450",
    "0, 80, 100, 460",
    "0, 30, 100, 450"
  })
  void withoutThePowerToHoverNothingElseMayBeShort(
      double track, int greatest, double halfFt, double mostFt) {
    Optional<RunLimits> limits = Optional.of(limits(24, greatest));
    RunStudy study = new RunStudy(plan(NO_HOVER, 20, 20, 20));
    assertEquals(
        RunVerdict.DO_NOT_FLY, judged(study, limits, track, loss(halfFt, mostFt)).verdict());
    // the trainer as it is has the power, and a limit
    RunJudgement strong = judged(study(20, 20, 20), limits, track, loss(halfFt, mostFt));
    assertEquals(RunVerdict.FLY_WITH_A_LIMIT, strong.verdict());
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
  void tooMuchAirspeedIsLimitedByGroundSpeed() {
    // North wind 20 kt at 50 kt over the ground: 70 kt of air into the wind. With 60 kt allowed,
    // 40 kt over the ground are left.
    RunStudy study = study(20, 20, 50);
    Optional<RunLimits> limits = Optional.of(limits(24, 60));
    RunJudgement judged = judged(study, limits, 0, Optional.empty());
    assertEquals(AirspeedCheck.Reason.HIGH, judged.airspeed().reason());
    assertEquals(40, Unit.KNOT.fromSi(judged.maximumGroundSpeed().getAsDouble()), 1e-9);
    assertEquals(OptionalDouble.empty(), judged.minimumAirspeed());
    RunJudgement lost = judged(study, limits, 0, loss(100, 460));
    assertEquals(RunVerdict.DO_NOT_FLY, lost.verdict());
    assertEquals(OptionalDouble.empty(), lost.maximumGroundSpeed());
    // gusts of 40 above lulls of 0: between 24 and 30 kt there is no ground speed for both
    AirspeedCheck none =
        AirspeedCheck.of(plan(DemoCraft.TRAINER, 20, 40, 50), Optional.of(limits(24, 30)), 0);
    assertEquals(
        new AirspeedCheck(Finding.FAILS, AirspeedCheck.Reason.HIGH, OptionalDouble.empty()), none);
  }
}
