package io.github.ringstate.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.Wind;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RunStudyTest {

  /** Wind from north; speeds in kt, descent 100 ft/min, 500 ft above ground. */
  private static RunPlan plan(Helicopter craft, double wind, double gust, double groundSpeed) {
    return new RunPlan(
        craft,
        StandardAtmosphere.at(0),
        0,
        Unit.KNOT.toSi(wind),
        Unit.KNOT.toSi(gust),
        Unit.KNOT.toSi(groundSpeed),
        Unit.FOOT_PER_MINUTE.toSi(100),
        Unit.FOOT.toSi(500),
        Unit.FOOT.toSi(50));
  }

  private static RunStudy study(double wind, double gust, double groundSpeed) {
    return new RunStudy(plan(DemoCraft.TRAINER, wind, gust, groundSpeed));
  }

  @Test
  void thereIsATrackEveryTenDegreesAndTracksMirroredInTheWindTakeTheSame() {
    List<RunTrack> tracks = study(15, 20, 25).tracks();
    assertEquals(36, tracks.size());
    for (int i = 1; i < 18; i++) {
      RunTrack one = tracks.get(i);
      RunTrack other = tracks.get(36 - i);
      assertEquals(one.triangle().airspeed(), other.triangle().airspeed(), 1e-12);
      assertEquals(one.triangle().crosswind(), -other.triangle().crosswind(), 1e-12);
      assertEquals(one.continuousMargin(), other.continuousMargin(), 1e-6);
    }
  }

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
    assertEquals(least, Unit.KNOT.fromSi(plan.leastAirspeed(direction)), 1e-9);
    assertEquals(greatest, Unit.KNOT.fromSi(plan.greatestAirspeed(direction)), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 40, 110, 180, 250})
  void noWindBetweenLullAndGustLeavesLessAirThanTheLeastAirspeed(int track) {
    RunPlan plan = plan(DemoCraft.TRAINER, 15, 27, 18);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= 2400; i++) {
      RunPlan steady = plan(DemoCraft.TRAINER, 3 + i / 100.0, 3 + i / 100.0, 18);
      least = Math.min(least, steady.triangle(Unit.DEGREE.toSi(track)).airspeed());
    }
    // the wind is searched in hundredths of a knot
    assertEquals(least, plan.leastAirspeed(Unit.DEGREE.toSi(track)), Unit.KNOT.toSi(0.005));
  }

  @Test
  void powerMarginsAreThoseOfTheSteadyFlight() {
    // Against the flight dynamics: trimmed flight and its shaft power.
    RunStudy study = study(10, 10, 30);
    RunTrack track = study.track(Unit.DEGREE.toSi(180));
    double airspeed = Unit.KNOT.toSi(20);
    double descent = Unit.FOOT_PER_MINUTE.toSi(100);
    EquationsOfMotion motion =
        new EquationsOfMotion(
            DemoCraft.TRAINER,
            StandardAtmosphere.at(0),
            Wind.CALM,
            RingStateInflow.standard(),
            false);
    Trim trim = Trim.find(motion, airspeed, -descent);
    double power = motion.at(0, trim.state(motion, airspeed, -descent)).loads().shaftPower();
    assertEquals(power, track.power().getAsDouble(), 1e-3);
    // 82 and 87 kW: the trainer's limits as 'craft trainer' prints them, at sea level
    assertEquals(1 - power / 82_000, track.continuousMargin(), 1e-8);
    assertEquals(1 - power / 87_000, track.shortTimeMargin(), 1e-8);
  }

  @Test
  void theBoundaryMarginIsTheSinkThatReachesTheOnset() {
    // The model's axial onset is at 0.50 hover induced velocities (its own parameter N); vh by
    // momentum theory, sqrt(T / (2 rho A)): 600 kg, radius 3.9 m, 1.225 kg/m3.
    double hover = Math.sqrt(600 * 9.80665 / (2 * 1.225 * Math.PI * 3.9 * 3.9));
    RunTrack track = study(20, 20, 20).track(Unit.DEGREE.toSi(180));
    assertEquals(0, track.leastAirspeed(), 1e-12);
    assertEquals(
        0.50 * hover - Unit.FOOT_PER_MINUTE.toSi(100),
        track.boundaryMargin().getAsDouble(),
        0.005 * hover);
    // Beyond about 0.8 vh edgewise the boundary is closed.
    assertTrue(study(0, 0, 30).track(0).boundaryMargin().isEmpty());
  }

  @Test
  void groundSpeedHeldThroughATurnDownwindLeadsIntoTheRingState() {
    // A fresh wind behind a slow run is the classic case (common practice, no source).
    RunStudy study = study(20, 20, 20);
    Encounter held = study.encounter(study.track(0), RunMishap.TURN_DOWNWIND).orElseThrow();
    assertTrue(held.fly().onsetTime().isPresent());
    // With the run much faster than the wind, airspeed is left downwind.
    RunStudy fast = study(10, 10, 50);
    Encounter kept = fast.encounter(fast.track(0), RunMishap.TURN_DOWNWIND).orElseThrow();
    assertEquals(Outcome.NO_ONSET, kept.fly());
  }

  @ParameterizedTest
  @CsvSource({
    // Wind from north 40 kt, 5 kt over the ground. Arithmetic: the tailwind is more than 5 kt where
    // its cosine is more than 1/8, on tracks within 82.8 deg of south.
    // At 60 kt over the ground, the most that is accepted, 20 kt from ahead are left due south.
    "97, false, HEIGHT_COVERS_THE_TURN",
    "98, true, AIRSPEED_LOW",
    "180, true, AIRSPEED_LOW_AT_ANY_GROUND_SPEED",
    "262, true, AIRSPEED_LOW",
    "263, false, HEIGHT_COVERS_THE_TURN"
  })
  void anAirspeedFromBehindIsNoneToRelyOn(
      double track, boolean overtaken, RunJudgement.Ground ground) {
    RunPlan plan = plan(DemoCraft.TRAINER, 40, 40, 5);
    double direction = Unit.DEGREE.toSi(track);
    assertEquals(overtaken, plan.isOvertaken(direction));
    // 35 kt at the least, in whatever direction
    RunLimits limits = new RunLimits(24, 80);
    assertFalse(limits.below(plan.leastAirspeed(direction)));
    assertEquals(overtaken, limits.below(plan, direction));
    RunStudy study = new RunStudy(plan);
    assertEquals(0, study.airspeedDownwind());
    assertEquals(ground, judged(study, Optional.of(limits), track, loss(100, 200)).ground());
  }

  @Test
  void settlingIsReckonedWithOnlyWhereTheAirspeedIsLow() {
    RunStudy study = study(20, 20, 20);
    assertTrue(study.encounter(study.track(Unit.DEGREE.toSi(180)), RunMishap.SETTLING).isPresent());
    assertTrue(study.encounter(study.track(0), RunMishap.SETTLING).isEmpty());
  }

  @Test
  void theTableOfInflowChangesNoLossByMoreThanTheSpreadIsGood() {
    // The same pilots by the exact inflow and by its table (whose error is stated as 4e-6 vh).
    RunStudy study = study(20, 20, 20);
    Encounter held = study.encounter(study.track(0), RunMishap.TURN_DOWNWIND).orElseThrow();
    PilotStudy table = study.pilots(held, Technique.FORWARD, PilotState.DISTRACTED, 7);
    PilotStudy exact = new PilotStudy(held, table.pilots(), table.delays(), table.seed());
    Sampling sampling = Sampling.of(20);
    assertEquals(
        exact.fly(sampling, Progress.SILENT).quantile(0.5, 0.9).value(),
        table.fly(sampling, Progress.SILENT).quantile(0.5, 0.9).value(),
        0.05);
  }

  @Test
  void theLimitsAreTheEdgesOfThePowerAndTheBoundary() {
    RunStudy study = study(10, 15, 25);
    double wanted = Unit.FOOT_PER_MINUTE.toSi(800);
    RunLimits limits = RunLimits.find(study, wanted, 0).orElseThrow();
    assertFalse(keeps(study, limits.leastKt() - 1, wanted));
    for (int knots = limits.leastKt(); knots <= limits.greatestKt(); knots++) {
      assertTrue(keeps(study, knots, wanted), knots + " kt");
    }
    assertEquals(24, RunLimits.find(study, wanted, Unit.KNOT.toSi(24)).orElseThrow().leastKt());
  }

  @Test
  void theGreatestAirspeedIsTheLastWithThePower() {
    for (Helicopter craft : DemoCraft.ALL) {
      RunStudy study = new RunStudy(plan(craft, 0, 0, 20));
      int greatest = RunLimits.find(study, 0, 0).orElseThrow().greatestKt();
      double available = craft.continuousPower(StandardAtmosphere.at(0));
      assertTrue(study.power(Unit.KNOT.toSi(greatest)).getAsDouble() <= available);
      OptionalDouble beyond = study.power(Unit.KNOT.toSi(greatest + 1));
      // 160 kt: 60 kt over the ground into a wind of 100, beyond which no run leads
      assertTrue(
          greatest == 160 || beyond.isEmpty() || beyond.getAsDouble() > available,
          craft.name() + ": " + greatest);
    }
  }

  @Test
  void noRunWithContinuousPowerLeftIsTooFast() {
    // 60 kt over the ground against gusts of 55: 115 kt by arithmetic, and with the twin's 960 kW
    // there is power left at each of them.
    RunStudy study = new RunStudy(plan(DemoCraft.TWIN, 40, 55, 60));
    RunTrack against = study.track(0);
    assertEquals(115, Unit.KNOT.fromSi(against.greatestAirspeed()), 1e-9);
    assertTrue(against.continuousMargin() > 0);
    RunLimits limits = RunLimits.find(study, 0, 0).orElseThrow();
    assertFalse(limits.above(against.greatestAirspeed()));
  }

  private static boolean keeps(RunStudy study, int knots, double wanted) {
    OptionalDouble margin = study.boundaryMargin(Unit.KNOT.toSi(knots));
    double power = study.power(Unit.KNOT.toSi(knots)).getAsDouble();
    return (margin.isEmpty() || margin.getAsDouble() >= wanted) && power <= 82_000;
  }

  @Test
  void withoutPowerAtAnyAirspeedThereAreNoLimits() {
    // 30 kW: induced power alone at 90 kt and less, by momentum theory T^2 / (2 rho A V), and the
    // blades' profile power of some 25 kW together are more than that; beyond, so are these and the
    // drag of the fuselage, rho f V^3 / 2.
    RunPlan weak = plan(DemoCraft.TRAINER.with(Helicopter.CONTINUOUS_POWER, 30), 0, 0, 20);
    RunStudy study = new RunStudy(weak);
    assertEquals(Optional.empty(), RunLimits.find(study, 0, 0));
    assertEquals(
        RunVerdict.DO_NOT_FLY, judged(study, Optional.empty(), 0, Optional.empty()).verdict());
  }

  @ParameterizedTest
  @CsvSource({
    // track, loss of half and of most, ft (-1: none), verdict, ground; wind north 20 kt, ground
    // speed 20 kt, 500 ft, of which 50 are to be left
    "0, -1, -1, FLY_WITH_A_LIMIT, TURN_LOW",
    "0, 100, 450, FLY, HEIGHT_COVERS_THE_TURN",
    "0, 100, 450.1, FLY_WITH_A_LIMIT, HEIGHT_COVERS_THE_TURN_OF_HALF",
    "0, 450, Infinity, FLY_WITH_A_LIMIT, HEIGHT_COVERS_THE_TURN_OF_HALF",
    "0, 450.1, 451, DO_NOT_FLY, TURN_LOSES_THE_HEIGHT",
    "0, Infinity, Infinity, DO_NOT_FLY, TURN_LOSES_THE_HEIGHT",
    "180, 100, 450, FLY_WITH_A_LIMIT, AIRSPEED_LOW",
    "180, 100, 450.1, DO_NOT_FLY, AIRSPEED_LOW_AND_HEIGHT_LOST",
    "180, 100, Infinity, DO_NOT_FLY, AIRSPEED_LOW_AND_HEIGHT_LOST"
  })
  void theVerdictFollowsFromAirspeedAndLoss(
      double track, double halfFt, double mostFt, RunVerdict verdict, RunJudgement.Ground ground) {
    RunStudy study = study(20, 20, 20);
    RunJudgement judged =
        judged(study, Optional.of(new RunLimits(24, 80)), track, loss(halfFt, mostFt));
    assertEquals(verdict, judged.verdict());
    assertEquals(ground, judged.ground());
    assertEquals(verdict == RunVerdict.FLY_WITH_A_LIMIT, judged.leastAirspeedKt().isPresent());
  }

  @Test
  void aRunThatKeepsItsAirspeedInATurnAsWellIsFlown() {
    // 40 kt over the ground less 10 kt of wind: 30 kt with the wind behind.
    RunStudy study = study(10, 10, 40);
    RunJudgement judged = judged(study, Optional.of(new RunLimits(24, 80)), 0, Optional.empty());
    assertEquals(RunVerdict.FLY, judged.verdict());
    assertEquals(RunJudgement.Ground.MARGINS_HOLD, judged.ground());
  }

  private static RunJudgement judged(
      RunStudy study, Optional<RunLimits> limits, double trackDeg, Optional<RunLoss> loss) {
    return RunJudgement.of(study, limits, study.track(Unit.DEGREE.toSi(trackDeg)), loss, loss);
  }

  @ParameterizedTest
  @CsvSource({
    // track, loss of half and of most on the worst track, ft; wind north 20 kt, ground speed 20 kt
    "0, 100, 450, FLY, HEIGHT_COVERS_THE_TURN",
    "0, 460, 470, DO_NOT_FLY, TURN_LOSES_THE_HEIGHT",
    "180, 100, 460, DO_NOT_FLY, AIRSPEED_LOW_AND_HEIGHT_LOST"
  })
  void aTrackThatMissesTheRingStateOrLosesLessThereIsJudgedAsTheWorstTrack(
      double track, double halfFt, double mostFt, RunVerdict verdict, RunJudgement.Ground ground) {
    RunStudy study = study(20, 20, 20);
    for (Optional<RunLoss> own : List.of(loss(-1, -1), loss(90, 95))) {
      RunJudgement judged =
          RunJudgement.of(
              study,
              Optional.of(new RunLimits(24, 80)),
              study.track(Unit.DEGREE.toSi(track)),
              own,
              loss(halfFt, mostFt));
      assertEquals(verdict, judged.verdict());
      assertEquals(ground, judged.ground());
      assertEquals(loss(halfFt, mostFt), judged.loss());
    }
    // where no turn takes the airspeed down, the worst track is none of its business
    RunStudy brisk = study(10, 10, 40);
    assertEquals(
        RunJudgement.Ground.MARGINS_HOLD,
        RunJudgement.of(
                brisk,
                Optional.of(new RunLimits(24, 80)),
                brisk.track(0),
                Optional.empty(),
                loss(halfFt, mostFt))
            .ground());
  }

  private static Optional<RunLoss> loss(double halfFt, double mostFt) {
    // a hair less, so that 450 and 50 are 500 whatever the rounding
    return mostFt < 0
        ? Optional.empty()
        : Optional.of(new RunLoss(Unit.FOOT.toSi(halfFt - 1e-9), Unit.FOOT.toSi(mostFt - 1e-9)));
  }

  @Test
  void withoutThePowerToHoverNoRunIsFlownWithoutALimit() {
    // 80 kW of short-time power hover the trainer, which takes some 77; 70 do not.
    Helicopter weak =
        DemoCraft.TRAINER
            .with(Helicopter.CONTINUOUS_POWER, 70)
            .with(Helicopter.SHORT_TIME_POWER, 70);
    RunStudy study = new RunStudy(plan(weak, 20, 20, 20));
    assertTrue(study.hoverPower().getAsDouble() > 70_000);
    for (Optional<RunLoss> loss : List.of(loss(-1, -1), loss(100, 300))) {
      RunJudgement judged = judged(study, Optional.of(new RunLimits(24, 80)), 0, loss);
      assertEquals(RunVerdict.FLY_WITH_A_LIMIT, judged.verdict());
      assertEquals(RunJudgement.Ground.NO_HOVER, judged.ground());
      assertEquals(24, judged.leastAirspeedKt().getAsDouble());
    }
  }

  @ParameterizedTest
  @CsvSource({
    // track, loss of half and of most, ft; wind north 20 kt, ground speed 20 kt, hence 40 kt of air
    // against it and none with it; greatest airspeed to keep, kt
    "180, 80, 100, 450, AIRSPEED_LOW_AND_NO_HOVER",
    "0, 80, 100, 460, TURN_OF_HALF_AND_NO_HOVER",
    "0, 30, 100, 450, AIRSPEED_HIGH_AND_NO_HOVER"
  })
  void withoutThePowerToHoverNothingElseMayBeShort(
      double track, int greatest, double halfFt, double mostFt, RunJudgement.Ground ground) {
    Helicopter weak =
        DemoCraft.TRAINER
            .with(Helicopter.CONTINUOUS_POWER, 70)
            .with(Helicopter.SHORT_TIME_POWER, 70);
    Optional<RunLimits> limits = Optional.of(new RunLimits(24, greatest));
    RunJudgement judged =
        judged(new RunStudy(plan(weak, 20, 20, 20)), limits, track, loss(halfFt, mostFt));
    assertEquals(ground, judged.ground());
    assertEquals(RunVerdict.DO_NOT_FLY, judged.verdict());
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
    Optional<RunLimits> limits = Optional.of(new RunLimits(24, 45));
    for (int track = 0; track < 360; track += RunStudy.TRACK_STEP) {
      for (int i = 0; i < 200; i++) {
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
    Optional<RunLimits> limits = Optional.of(new RunLimits(24, 60));
    RunJudgement judged = judged(study, limits, 0, Optional.empty());
    assertEquals(RunJudgement.Ground.AIRSPEED_HIGH, judged.ground());
    assertEquals(40, Unit.KNOT.fromSi(judged.greatestGroundSpeed().getAsDouble()), 1e-9);
    assertEquals(
        RunJudgement.Ground.AIRSPEED_HIGH_AND_HEIGHT_LOST,
        judged(study, limits, 0, loss(100, 460)).ground());
  }

  @Test
  void theShortestWayOutIsLeftNoLaterThanTheDescentIsArrested() {
    RunStudy study = study(20, 20, 20);
    Encounter held = study.encounter(study.track(0), RunMishap.TURN_DOWNWIND).orElseThrow();
    Escape escape = Escape.shortest(held).orElseThrow();
    Outcome outcome = held.withRecovery(escape.technique().standard()).fly();
    assertEquals(Ending.ARRESTED, outcome.ending());
    assertTrue(escape.exposure() > 0);
    assertTrue(escape.exposure() <= outcome.timeToArrest().getAsDouble());
  }

  @Test
  void theSidewaysWayOutFollowsTheTailRotor() {
    // To the right for a rotor turning counter-clockwise from above, to the left for the others
    // (common practice, no source).
    for (Helicopter craft : List.of(DemoCraft.TRAINER, DemoCraft.UTILITY)) {
      RunStudy study = new RunStudy(plan(craft, 20, 20, 20));
      Encounter settling = study.encounter(study.track(Math.PI), RunMishap.SETTLING).orElseThrow();
      Escape escape = Escape.shortest(settling).orElseThrow();
      assertEquals(Technique.LATERAL, escape.technique());
      assertEquals(craft.sense().tailPush() * Math.PI / 2, escape.turn());
    }
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
