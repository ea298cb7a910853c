package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.pilot.Cue;
import io.github.ringstate.pilot.Cues;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.pilot.NoRecovery;
import io.github.ringstate.pilot.Recognition;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RecognitionTest {

  private static final Encounter TRAINER = Encounter.of(DemoCraft.TRAINER);

  private static double time(Outcome outcome, EventKind kind) {
    return outcome.first(kind).orElseThrow().time();
  }

  private static Encounter withLag(double seconds) {
    return TRAINER.withCraft(DemoCraft.TRAINER.with(CraftLimits.VERTICAL_SPEED_LAG, seconds));
  }

  /**
   * Source: the closed form of a first-order lag tau behind a speed that changes evenly by r a
   * second: shown(t) = v(t) - r tau + (shown(0) - v(0) + r tau) exp(-t / tau); the speed is taken
   * as even between samples a hundredth of a second apart.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.3, 2, 6})
  void theIndicatorShowsTheVerticalSpeedThroughItsLag(double lag) {
    double h = 0.01;
    List<double[]> samples =
        Samples.of(
            withLag(lag),
            h,
            seen ->
                new double[] {seen.verticalSpeed(), seen.state(State.INDICATED_VERTICAL_SPEED)});
    assertTrue(samples.size() > 500);
    double shown = samples.get(0)[1];
    double fade = FastMath.exp(-h / lag);
    double apart = 0;
    for (int i = 1; i < samples.size(); i++) {
      double before = samples.get(i - 1)[0];
      double now = samples.get(i)[0];
      double lagging = (now - before) / h * lag;
      shown = now - lagging + (shown - before + lagging) * fade;
      assertEquals(shown, samples.get(i)[1], 2e-4);
      apart = Math.max(apart, Math.abs(now - samples.get(i)[1]));
    }
    assertTrue(apart > 0.2, "the lag is seen at all");
  }

  @Test
  void theSlowerTheIndicatorTheLaterItsCue() {
    Recognition sink = Recognition.afterCue(Cues.sinkShown(0, 5), 1);
    double last = 0;
    for (double lag : new double[] {0.1, 1, 2, 4}) {
      double cue = time(withLag(lag).withRecognition(sink).fly(), EventKind.CUE);
      assertTrue(cue > last, "lag " + lag + " s");
      last = cue;
    }
  }

  @Test
  void theCueFiresWhereTheIndicatorShowsTheThreshold() {
    Encounter encounter = TRAINER.withRecognition(Recognition.afterCue(Cues.sinkShown(1, 4), 1));
    double[] first =
        Samples.of(
                encounter,
                0.001,
                seen -> new double[] {seen.time(), seen.state(State.INDICATED_VERTICAL_SPEED)})
            .stream()
            .filter(sample -> sample[1] <= -5)
            .findFirst()
            .orElseThrow();
    assertEquals(first[0], time(encounter.fly(), EventKind.CUE), 0.0011);
  }

  @Test
  void aSmallerMarginIsNoticedEarlier() {
    double last = 0;
    for (double margin : new double[] {4, 5, 6, 7}) {
      double cue = noticed(Cues.sinkShown(0, margin));
      assertTrue(cue > last);
      last = cue;
    }
  }

  @Test
  void theFirstOfSeveralFiresWithTheEarliestAndAllTogetherWithTheLatest() {
    Cue early = Cues.sinkShown(0, 4);
    Cue late = Cues.sinkShown(0, 6);
    assertEquals(noticed(early), noticed(Cues.first(late, early)), 1e-6);
    assertEquals(noticed(late), noticed(Cues.together(late, early)), 1e-6);
  }

  private static double noticed(Cue cue) {
    return time(TRAINER.withRecognition(Recognition.afterCue(cue, 1)).fly(), EventKind.CUE);
  }

  @Test
  void theDelayCountsFromItsOwnClock() {
    Outcome boundary = TRAINER.withRecognition(Recognition.afterOnset(1.5)).fly();
    assertEquals(
        1.5, time(boundary, EventKind.RECOGNITION) - time(boundary, EventKind.ONSET), 1e-9);
    assertFalse(boundary.happened(EventKind.CUE));
    Outcome cue = TRAINER.withRecognition(Recognition.afterCue(Cues.sinkShown(0, 5), 1.5)).fly();
    assertEquals(1.5, time(cue, EventKind.RECOGNITION) - time(cue, EventKind.CUE), 1e-9);
    assertTrue(time(cue, EventKind.CUE) > time(cue, EventKind.ONSET));
    assertTrue(cue.altitudeLoss().orElseThrow() > boundary.altitudeLoss().orElseThrow());
  }

  @Test
  void aCueThatIsThereAtOnsetIsNoticedThen() {
    Outcome there =
        TRAINER.withRecognition(Recognition.afterCue(Cues.of("always", seen -> 1), 1)).fly();
    Outcome boundary = TRAINER.withRecognition(Recognition.afterOnset(1)).fly();
    assertEquals(boundary.altitudeLoss(), there.altitudeLoss());
    assertEquals(time(there, EventKind.ONSET), time(there, EventKind.CUE), 1e-9);
  }

  @Test
  void aCueThatNeverFiresIsADescentNobodyArrested() {
    Recognition never = Recognition.afterCue(Cues.of("never", seen -> -1), 0);
    Outcome outcome = TRAINER.withRecognition(never).fly();
    assertEquals(Ending.NOT_ARRESTED, outcome.ending());
    assertEquals(OptionalDouble.empty(), outcome.altitudeLoss());
    assertEquals(OptionalDouble.empty(), outcome.lossAfterRecognition());
    assertFalse(outcome.happened(EventKind.CUE));
    assertFalse(outcome.happened(EventKind.RECOGNITION));
    Outcome above = TRAINER.withHeight(50).withRecognition(never).fly();
    assertEquals(Ending.GROUND, above.ending());
    assertTrue(above.impactSpeed().orElseThrow() > 5);
    assertEquals(50, above.altitudeLoss().orElseThrow(), 1e-6);
    assertEquals(OptionalDouble.empty(), above.lossAfterRecognition());
  }

  /** The ring state of an undisturbed flight does not shake; vibration is no cue there. */
  @Test
  void vibrationIsFeltWhereTheThrustIsShaken() {
    Recognition vibration = Recognition.afterCue(Cues.vibration(0.02), 1);
    assertFalse(TRAINER.withRecognition(vibration).fly().happened(EventKind.CUE));
    Disturbances shaking = Disturbances.NONE.with(Disturbances.SHAKING, 5).withSeed(1);
    Outcome felt = TRAINER.withDisturbances(shaking).withRecognition(vibration).fly();
    assertTrue(felt.happened(EventKind.CUE));
    assertEquals(Ending.ARRESTED, felt.ending());
  }

  @Test
  void theStandardCueIsMeasuredFromTheDescentThatWasIntended() {
    for (Entry entry :
        List.of(new Settling(), new Steep(), new Downwind(), new TailwindApproach())) {
      Encounter encounter =
          TRAINER
              .withEntry(entry)
              .withRecognition(Recognition.afterCue(Cues.standard(entry.intendedDescent()), 0.5));
      Outcome outcome = encounter.fly();
      assertEquals(Ending.ARRESTED, outcome.ending(), entry.name());
      assertTrue(time(outcome, EventKind.CUE) - time(outcome, EventKind.ONSET) < 3, entry.name());
    }
    assertEquals(0, new Settling().intendedDescent());
    assertTrue(new Steep().intendedDescent() > new Downwind().intendedDescent());
  }

  @Test
  void aDelayThatEndsWithTheFlightLeavesNoRecognition() {
    Outcome ground = TRAINER.withHeight(10).withRecovery(new Lateral()).withDelay(30).fly();
    assertEquals(Ending.GROUND, ground.ending());
    assertFalse(ground.happened(EventKind.RECOGNITION));
    Outcome late =
        TRAINER
            .withRecovery(new NoRecovery())
            .withRecognition(Recognition.afterCue(Cues.of("always", seen -> 1), 60))
            .fly();
    assertEquals(Ending.NOT_ARRESTED, late.ending());
    assertTrue(late.happened(EventKind.RECOGNITION));
    assertEquals(new Forward().name(), TRAINER.recovery().name());
  }
}
