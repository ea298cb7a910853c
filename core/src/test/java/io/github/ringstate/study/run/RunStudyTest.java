package io.github.ringstate.study.run;

import static io.github.ringstate.study.run.Runs.plan;
import static io.github.ringstate.study.run.Runs.study;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.HeightVelocityCurve;
import io.github.ringstate.dynamics.AtSeaLevel;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.encounter.Downwind;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Settling;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.PilotStudy;
import io.github.ringstate.study.Progress;
import io.github.ringstate.study.Sampling;
import java.util.List;
import org.junit.jupiter.api.Test;

class RunStudyTest {

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

  @Test
  void powerMarginsAreThoseOfTheSteadyFlight() {
    // Against the flight dynamics: trimmed flight and its shaft power.
    RunStudy study = study(10, 10, 30);
    RunTrack track = study.track(Unit.DEGREE.toSi(180));
    double airspeed = Unit.KNOT.toSi(20);
    double descent = Unit.FOOT_PER_MINUTE.toSi(100);
    EquationsOfMotion motion = AtSeaLevel.calm(DemoCraft.TRAINER);
    Trim trim = Trim.find(motion, airspeed, -descent);
    double power = motion.at(0, trim.state(motion, airspeed, -descent)).loads().shaftPower();
    assertEquals(power, track.power().getAsDouble(), 1e-3);
    // 82 and 87 kW: the trainer's limits as 'craft trainer' prints them, at sea level
    assertEquals(1 - power / 82_000, track.continuousMargin(), 1e-8);
    assertEquals(1 - power / 87_000, track.takeOffMargin(), 1e-8);
  }

  @Test
  void theBoundaryMarginIsTheSinkThatReachesTheOnset() {
    // The model's axial onset is at 0.50 hover induced velocities (its own parameter N); vh by
    // momentum theory, sqrt(T / (2 rho A)): 600 kg, radius 3.9 m, 1.225 kg/m3.
    double hover = Math.sqrt(600 * 9.80665 / (2 * 1.225 * Math.PI * 3.9 * 3.9));
    RunTrack track = study(20, 20, 20).track(Unit.DEGREE.toSi(180));
    assertEquals(0, track.minimumAirspeed(), 1e-12);
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
  void tracksLieSymmetricallyAboutTheWind() {
    RunPlan plan = plan(DemoCraft.TRAINER, 15, 20, 25);
    RunWind wind = plan.wind();
    RunWind turned =
        new RunWind(Unit.DEGREE.toSi(243), wind.speed(), wind.gust(), wind.allowance());
    List<RunTrack> tracks =
        new RunStudy(plan(DemoCraft.TRAINER, HeightVelocityCurve.NONE, turned, 25, 500, 500))
            .tracks();
    assertEquals(3, Unit.DEGREE.fromSi(tracks.get(0).triangle().track()), 1e-9);
    assertEquals(353, Unit.DEGREE.fromSi(tracks.get(35).triangle().track()), 1e-9);
    assertEquals(
        tracks.get(23).minimumAirspeed(), tracks.get(25).minimumAirspeed(), 1e-9); // 233 and 253
  }

  /** Arithmetic: 20 kt over the ground against 20 kt of wind, and what gusts leave downwind. */
  @Test
  void aMishapBeginsAsTheTrackIsFlown() {
    RunStudy study = study(20, 20, 20);
    Downwind turn = downwind(study, 0);
    assertEquals(40, turn.numbers().get(Downwind.GROUND_SPEED), 1e-9);
    assertEquals(40, turn.numbers().get(Downwind.WIND), 1e-9);
    assertEquals(100, turn.numbers().get(Downwind.DESCENT), 1e-9);
    RunTrack across = study(4, 4, 7).track(Unit.DEGREE.toSi(90));
    Settling settling =
        (Settling) study(4, 4, 7).encounter(across, RunMishap.SETTLING).orElseThrow().entry();
    // sqrt(4^2 + 7^2) = 8.0623, to hundredths
    assertEquals(8.06, settling.numbers().get(Settling.WIND), 1e-12);
  }

  private static Downwind downwind(RunStudy study, double track) {
    return (Downwind)
        study.encounter(study.track(track), RunMishap.TURN_DOWNWIND).orElseThrow().entry();
  }
}
