package io.github.ringstate.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Entry;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.encounter.FlightQuantity;
import io.github.ringstate.encounter.History;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.encounter.TailwindApproach;
import io.github.ringstate.pilot.NoRecovery;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class EncounterFinderTest {

  /** A receiver with attitude five times a second; its noise stands at the method. */
  private static final Instruments RECEIVER = Instruments.receiver();

  private static final double HALF_A_SECOND = 0.5;
  private static final double TEN_FEET = Unit.FOOT.toSi(10);

  /**
   * Entries that cross the boundary at once, with the nose standing still, so that what moves is
   * the recovery. The others creep along the boundary or flare into it.
   */
  private static final Set<String> STEADY =
      Stream.of(
              EntryKind.TAILWIND_APPROACH, EntryKind.SETTLING, EntryKind.STEEP, EntryKind.DOWNWIND)
          .map(EntryKind::name)
          .collect(Collectors.toSet());

  private static List<FoundEncounter> found(Encounter encounter, Recording recording) {
    return EncounterFinder.like(
            encounter, encounter.entry().wind(), 0.3, RECEIVER.groundSpeedDeviation())
        .find(VerticalMotion.of(recording));
  }

  static List<Encounter> encounters() {
    List<Encounter> all = new ArrayList<>();
    SplittableRandom random = new SplittableRandom(3);
    for (Helicopter craft : DemoCraft.ALL) {
      for (EntryKind entry : EntryKind.ALL) {
        Technique technique = random.nextBoolean() ? Technique.FORWARD : Technique.LATERAL;
        all.add(
            Encounter.of(craft)
                .withEntry(entry.standard())
                .withRecovery(technique.standard())
                .withDelay(random.nextDouble(0.5, 2.5)));
      }
    }
    return all;
  }

  @ParameterizedTest
  @MethodSource("encounters")
  void onsetAndLossAreWithinHalfASecondAndTenFeetOrAsFarOffAsIsSaid(Encounter encounter) {
    Outcome truth = encounter.fly();
    assertEquals(Ending.ARRESTED, truth.ending());
    List<FoundEncounter> all = found(encounter, RECEIVER.record(encounter, 1));
    assertEquals(1, all.size());
    FoundEncounter one = all.get(0);
    double onset = truth.onsetTime().orElseThrow();
    assertEquals(onset, one.onsetTime().value(), 4 * one.onsetTime().deviation());
    double loss = truth.altitudeLoss().orElseThrow();
    assertEquals(loss, one.altitudeLoss().value(), 4 * one.altitudeLoss().deviation());
    if (STEADY.contains(encounter.entry().name())) {
      assertEquals(onset, one.onsetTime().value(), HALF_A_SECOND);
      assertEquals(loss, one.altitudeLoss().value(), TEN_FEET);
      assertEquals(encounter.delay(), one.delay().orElseThrow().value(), 0.4);
    }
  }

  @ParameterizedTest
  @MethodSource("encounters")
  void whatMovesForTheEntryIsNotTakenForTheRecovery(Encounter encounter) {
    FoundEncounter one = found(encounter, RECEIVER.record(encounter, 1)).get(0);
    one.delay()
        .ifPresent(delay -> assertTrue(delay.value() > encounter.delay() - 0.6, delay::toString));
    one.movement()
        .flatMap(Movement::technique)
        .ifPresent(seen -> assertEquals(encounter.recovery().name(), seen.name()));
  }

  @Test
  void aFlightOfWhichNothingElseIsKnownHasANoiseToo() {
    // a straight line without noise has no most likely noise: it is as small as may be
    double[] time = IntStream.range(0, 100).asDoubleStream().toArray();
    double[] height = new double[time.length];
    Arrays.fill(height, 100);
    Noise found = NoiseEstimate.of(new Recording(time, Map.of(Channel.HEIGHT, height)), 1.5, 60);
    assertTrue(found.height() >= 1e-3 && found.height() < 0.1, found::toString);
  }

  @Test
  void withoutAttitudeOrControlsNothingIsSaidOfTheDelay() {
    Encounter encounter = Encounter.of(DemoCraft.TRAINER);
    Instruments bare =
        new Instruments(5, RECEIVER.noise(), RECEIVER.groundSpeedDeviation(), 0, 0.1, false);
    FoundEncounter one = found(encounter, bare.record(encounter, 1)).get(0);
    assertTrue(one.movement().isEmpty() && one.delay().isEmpty());
  }

  @Test
  void manyReadingsFarOffWithinADescentMakeItLessCertain() {
    Encounter encounter = Encounter.of(DemoCraft.TRAINER).withDelay(1);
    Recording clean = RECEIVER.record(encounter, 1);
    double[] heights = Rewritten.values(clean, Channel.HEIGHT);
    for (int k = 1; k < heights.length; k += 4) {
      heights[k] += k % 8 == 1 ? 200 : -300;
    }
    FoundEncounter one = found(encounter, clean).get(0);
    FoundEncounter other = found(encounter, Rewritten.with(clean, Channel.HEIGHT, heights)).get(0);
    // a quarter at five deviations and the rest at one: sqrt(25/4 + 3/4) of heights alone, and as
    // many vertical speeds at one, sqrt((7 + 1) / 2) = 2 at the least
    assertTrue(
        other.peakDescent().deviation() > 1.5 * one.peakDescent().deviation(),
        one.peakDescent() + " and " + other.peakDescent());
    // most of a loss's error is that of the onset, by the wind
    assertTrue(other.altitudeLoss().deviation() > 1.05 * one.altitudeLoss().deviation());
    double truth = encounter.fly().altitudeLoss().orElseThrow();
    assertEquals(truth, other.altitudeLoss().value(), 4 * other.altitudeLoss().deviation());
  }

  @Test
  void theLeverIsWrittenDownAsAShareOfItsTravel() {
    Helicopter craft = DemoCraft.TRAINER;
    Encounter encounter =
        Encounter.of(craft).withRecovery(Technique.AUTOROTATION.standard()).withDelay(1);
    Recording recording = RECEIVER.record(encounter, 1);
    double low = craft.si(CraftLimits.MINIMUM_COLLECTIVE);
    double high = craft.si(CraftLimits.MAXIMUM_COLLECTIVE);
    History flown = encounter.record(Simulator.precise()).history();
    for (int k = 0; k < recording.size(); k++) {
      double pitch = flown.at(recording.time(k)).get(FlightQuantity.COLLECTIVE);
      double lever = recording.value(Channel.COLLECTIVE, k);
      assertEquals(pitch, low + lever * (high - low), 1e-9);
      assertTrue(lever >= 0 && lever <= 1, "lever " + lever);
    }
  }

  static List<Entry> ordinary() {
    ParameterSet headwind = EntryKind.TAILWIND_APPROACH.numbers().with(TailwindApproach.WIND, -10);
    return Stream.of(6, 9, 12)
        .<Entry>map(angle -> new TailwindApproach(headwind.with(TailwindApproach.ANGLE, angle)))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("ordinary")
  void anApproachIntoTheWindIsNoEncounter(Entry entry) {
    Encounter encounter = Encounter.of(DemoCraft.TRAINER).withEntry(entry);
    assertEquals(Ending.NO_ONSET, encounter.fly().ending());
    for (int seed = 0; seed < 5; seed++) {
      assertEquals(List.of(), found(encounter, RECEIVER.record(encounter, seed)));
    }
  }

  @Test
  void aSinkThatAllThePowerDoesNotHoldIsToldFromTheRingState() {
    // a hover to 6 s, a sink that grows by 0.5 m/s2 to 2.5 m/s and is lost again from 15 s to 20 s:
    // a third of the hover induced velocity, outside the ring state by any criterion
    int size = 120;
    double[] time = new double[size];
    double[] height = new double[size];
    double[] still = new double[size];
    double[] torque = new double[size];
    for (int k = 0; k < size; k++) {
      time[k] = k / 5.0;
      height[k] =
          100 - sunk(time[k] - 6) + sunk(time[k] - 11) + sunk(time[k] - 15) - sunk(time[k] - 20);
      torque[k] = 1;
    }
    Recording recording =
        new Recording(
            time,
            Map.of(
                Channel.HEIGHT, height,
                Channel.GROUND_SPEED, still,
                Channel.TRACK, still,
                Channel.TORQUE, torque));
    Encounter craft = Encounter.of(DemoCraft.TRAINER).withEntry(EntryKind.SETTLING.standard());
    List<FoundEncounter> all = found(craft, recording);
    assertEquals(1, all.size());
    assertEquals(Verdict.POWER_ONLY, all.get(0).verdict());
    // 300 ft/min, 1.524 m/s, are reached 3.048 s after 6 s and 2.323 m below
    assertEquals(9.048, all.get(0).onsetTime().value(), 0.25);
    assertEquals(22.5 - 2.323, all.get(0).altitudeLoss().value(), 0.5);
  }

  /** What a sink of which the rate grows by 0.5 m/s2 takes from a height, m. */
  private static double sunk(double time) {
    return time > 0 ? 0.25 * time * time : 0;
  }

  /** When it began is then known no better than the readings around, two or more, are apart. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 2, 5})
  void aRecordingThatBeginsInTheRingStateLeavesItsOnsetOpen(double rate) {
    Encounter encounter = Encounter.of(DemoCraft.TRAINER).withRecovery(new NoRecovery());
    Recording whole =
        new Instruments(rate, RECEIVER.noise(), 0.1, 0, 0, false).record(encounter, 5);
    double onset = encounter.fly().onsetTime().orElseThrow();
    Recording cut = whole.part(whole.indexAt(onset + 0.3), whole.size());
    FoundEncounter one = found(encounter, cut).get(0);
    assertEquals(cut.time(0), one.onsetTime().value());
    assertTrue(one.onsetTime().deviation() > 0.39, one.onsetTime()::toString);
  }

  @Test
  void withoutGroundSpeedNothingCanBeFound() {
    Recording heights =
        new Recording(new double[] {0, 1, 2}, Map.of(Channel.HEIGHT, new double[] {9, 5, 1}));
    Encounter encounter = Encounter.of(DemoCraft.TRAINER);
    assertThrows(IllegalArgumentException.class, () -> found(encounter, heights));
  }
}
