package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.Every;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.pilot.Autorotation;
import io.github.ringstate.pilot.ControlLaw;
import io.github.ringstate.pilot.Cue;
import io.github.ringstate.pilot.Cues;
import io.github.ringstate.pilot.Phase;
import io.github.ringstate.pilot.Phases;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.ParameterSet;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class EncounterTest {

  private static final Encounter LIGHT = Encounter.of(DemoCraft.TRAINER).withEntry(new Settling());

  static Stream<Arguments> entriesAndRecoveries() {
    return Every.of(
        List.of(new Settling(), new Steep(), new Downwind(), new TailwindApproach()),
        Technique.ALL.stream().map(Technique::standard).toList());
  }

  /** What an outcome says, against samples of the flight that it sums up. */
  @ParameterizedTest
  @MethodSource("entriesAndRecoveries")
  void anOutcomeSaysWhatTheSamplesOfItsFlightSay(Entry entry, Recovery recovery) {
    double[] fastest = new double[1];
    double[] lowest = new double[1];
    double[] before = {Double.NaN, Double.NaN};
    Set<String> phases = new LinkedHashSet<>();
    Trajectory trajectory =
        new Trajectory(
            0.002,
            (phase, motion) -> {
              phases.add(phase);
              if (!Double.isNaN(before[0])) {
                double climbed = 0.001 * (before[1] + motion.verticalSpeed());
                assertEquals(before[0] + climbed, motion.height(), 1e-4, "a jump of height");
              }
              before[0] = motion.height();
              before[1] = motion.verticalSpeed();
              if (!phase.equals("entry")) {
                fastest[0] = Math.max(fastest[0], -motion.verticalSpeed());
                lowest[0] = Math.min(lowest[0], motion.height());
              }
            });
    Encounter encounter = LIGHT.withEntry(entry).withRecovery(recovery).withDelay(1.5);
    Outcome outcome = encounter.fly(Simulator.precise(), trajectory);
    assertEquals(encounter.fly(), outcome, "a trajectory changes nothing");
    assertEquals(fastest[0], outcome.peakDescent().orElseThrow(), 0.01);
    List<String> expected = new ArrayList<>(List.of("entry", "unrecognised"));
    recovery.phases().forEach(phase -> expected.add(phase.name()));
    assertTrue(expected.containsAll(phases), phases::toString);
    Occurrence onset = outcome.first(EventKind.ONSET).orElseThrow();
    Occurrence recognition = outcome.first(EventKind.RECOGNITION).orElseThrow();
    assertEquals(0, onset.height(), 1e-9);
    assertEquals(onset.time(), outcome.onsetTime().orElseThrow(), 1e-9);
    assertEquals(1.5, recognition.time() - onset.time(), 1e-9);
    if (outcome.ending() == Ending.ARRESTED) {
      Occurrence arrest = outcome.first(EventKind.ARREST).orElseThrow();
      assertEquals(-lowest[0], outcome.altitudeLoss().orElseThrow(), 1e-3);
      assertEquals(-arrest.height(), outcome.altitudeLoss().orElseThrow(), 1e-9);
      assertEquals(
          recognition.height() - arrest.height(),
          outcome.lossAfterRecognition().orElseThrow(),
          1e-9);
      assertEquals(arrest.time() - onset.time(), outcome.timeToArrest().orElseThrow(), 1e-9);
      assertEquals(0, arrest.verticalSpeed(), 1e-8);
    } else {
      assertEquals(
          outcome.happened(EventKind.ARREST) ? Ending.ARREST_NOT_LASTING : Ending.NOT_ARRESTED,
          outcome.ending());
      assertTrue(outcome.altitudeLoss().isEmpty() && outcome.timeToArrest().isEmpty());
    }
    assertTrue(outcome.impactSpeed().isEmpty());
  }

  @ParameterizedTest
  @MethodSource("entriesAndRecoveries")
  void whatHappenedIsTold(Entry entry, Recovery recovery) {
    double before = 0;
    for (Occurrence seen : LIGHT.withEntry(entry).withRecovery(recovery).fly().occurrences()) {
      assertTrue(seen.time() >= before, seen + " before " + before);
      before = seen.time();
    }
  }

  @Test
  void aForwardRecoveryTellsItsStory() {
    List<EventKind> kinds =
        LIGHT.withDelay(2).fly().occurrences().stream().map(Occurrence::kind).toList();
    assertEquals(EventKind.ONSET, kinds.get(0));
    assertEquals(EventKind.RECOGNITION, kinds.get(1));
    assertEquals(EventKind.ARREST, kinds.get(kinds.size() - 1));
    assertEquals(2, kinds.stream().filter(kind -> kind == EventKind.PHASE_END).count());
    assertEquals(1, kinds.stream().filter(kind -> kind == EventKind.FASTEST_DESCENT).count());
    assertTrue(kinds.indexOf(EventKind.RING_STATE_LEFT) > 1);
    assertTrue(kinds.indexOf(EventKind.RING_STATE_ENTERED_AGAIN) < 0);
  }

  @Test
  void thrustBelowHalfOfTheWeightIsTold() {
    assertTrue(LIGHT.withRecovery(new Autorotation()).fly().happened(EventKind.LOW_THRUST));
    assertFalse(LIGHT.fly().happened(EventKind.LOW_THRUST));
  }

  @Test
  void timeSinceRecognitionIsNegativeBeforeItAndCountsFromIt() {
    List<Double> counted = new ArrayList<>();
    ControlLaw count =
        (seen, controls) -> {
          counted.add(seen.sinceRecognition());
          assertEquals(seen.sinceRecognition(), seen.sinceTechniqueBegan(), 1e-9);
          assertTrue(seen.sincePhaseBegan() <= seen.sinceRecognition() + 1e-9);
        };
    Recovery counting =
        new Phases(
            "counting",
            List.of(
                Phase.of("first", count, seen -> seen.sincePhaseBegan() - 0.75),
                Phase.last("second", count)));
    Cue waiting =
        Cues.of(
            "waiting",
            seen -> {
              assertTrue(seen.sinceRecognition() < 0);
              return -3 - seen.verticalSpeed();
            });
    double[] second = {Double.NaN};
    Outcome outcome =
        LIGHT
            .withRecognition(Recognition.afterCue(waiting, 0.5))
            .withRecovery(counting)
            .fly(
                Simulator.precise(),
                new Trajectory(
                    0.01,
                    (phase, motion) -> {
                      if (phase.equals("second") && Double.isNaN(second[0])) {
                        second[0] = motion.time();
                      }
                    }));
    double recognised = outcome.first(EventKind.RECOGNITION).orElseThrow().time();
    assertTrue(counted.stream().allMatch(time -> time >= 0));
    assertEquals(recognised + 0.75, second[0], 0.0101);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, -0.1, 60.1, Double.POSITIVE_INFINITY})
  void aDelayOutsideItsRangeIsRefused(double delay) {
    OutOfRangeException refusal =
        assertThrows(OutOfRangeException.class, () -> LIGHT.withDelay(delay));
    assertEquals(Recognition.DELAY, refusal.quantity());
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.MIN_VALUE, 1e-17, 1e-12, 1e-10, 1e-8})
  void theShortestDelaysLoseWhatNoDelayLoses(double delay) {
    Outcome none = LIGHT.withDelay(0).fly();
    Outcome some = LIGHT.withDelay(delay).fly();
    assertEquals(Ending.ARRESTED, some.ending());
    assertEquals(none.altitudeLoss().orElseThrow(), some.altitudeLoss().orElseThrow(), 1e-6);
  }

  private static Outcome slowSteep(double descent) {
    ParameterSet numbers =
        ParameterSet.standard(Steep.PARAMETERS)
            .with(Steep.APPROACH_AIRSPEED, 10)
            .with(Steep.DESCENT, descent);
    return LIGHT.withEntry(new Steep(numbers)).fly();
  }

  /** At 10 kt a light craft's ring state lies between about 1,100 and 1,700 ft/min. */
  @ParameterizedTest
  @ValueSource(doubles = {1200, 1300, 1400})
  void anEntryThatStartsInTheRingStateBeginsWithOnset(double descent) {
    Outcome outcome = slowSteep(descent);
    assertEquals(0, outcome.onsetTime().orElseThrow());
    assertEquals(Ending.ARRESTED, outcome.ending());
    assertTrue(outcome.altitudeLoss().orElseThrow() > 1);
  }

  @Test
  void anEntryThatCrossesTheBoundaryWhileTheSinkEasesBeginsWhenItBuilds() {
    Outcome outcome = slowSteep(1000);
    double onset = outcome.onsetTime().orElseThrow();
    assertTrue(onset > 0 && onset < 3, "onset at " + onset + " s");
    assertEquals(Ending.ARRESTED, outcome.ending());
  }

  @Test
  void anEntryThatNeverMeetsTheRingStateSaysSo() {
    ParameterSet fast = ParameterSet.standard(Steep.PARAMETERS).with(Steep.FINAL_AIRSPEED, 25);
    Outcome outcome = LIGHT.withEntry(new Steep(fast)).fly();
    assertEquals(Ending.NO_ONSET, outcome.ending());
    assertTrue(outcome.onsetTime().isEmpty());
    assertEquals(List.of(), outcome.occurrences());
  }

  @Test
  void anEncounterIsChangedInOnePlaceAtATime() {
    Helicopter other = DemoCraft.TWIN;
    assertEquals(other, LIGHT.withCraft(other).craft());
    assertEquals(LIGHT, LIGHT.withCraft(other).withCraft(DemoCraft.TRAINER));
    assertEquals(3, LIGHT.withDelay(3).delay());
    assertEquals(20, LIGHT.withHeight(20).height().orElseThrow());
    assertTrue(LIGHT.height().isEmpty());
  }
}
