package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.Every;
import io.github.ringstate.Soak;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.Autorotation;
import io.github.ringstate.pilot.CollectiveOnly;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What instructors say of the ring state. Unless a source stands beside it, a fact here is common
 * practice, no source. The light craft is flown near full weight at sea level on a standard day,
 * from the standard entry where nothing else is said. Prompt is within a quarter of a second of
 * onset; at half a second the model's forward recovery loses up to 85 ft, more than is stated.
 */
class TradeFactsTest {

  private static double lossFeet(Encounter encounter) {
    return Unit.FOOT.fromSi(encounter.fly().altitudeLoss().orElseThrow());
  }

  private static Encounter light(double mass, Recovery recovery) {
    return Encounter.of(DemoCraft.TRAINER.with(Helicopter.MASS, mass)).withRecovery(recovery);
  }

  private static Encounter settling(double mass, Recovery recovery) {
    return light(mass, recovery).withEntry(new Settling());
  }

  private static double[] losses(Encounter encounter, double step, int count) {
    return IntStream.range(0, count)
        .parallel()
        .mapToDouble(i -> lossFeet(encounter.withDelay(i * step)))
        .toArray();
  }

  /** Common practice, no source. */
  @ParameterizedTest
  @ValueSource(doubles = {600, 610, 620})
  void aPromptForwardRecoveryLoses50To80FeetAndALittleMoreAfterAQuarterSecond(double mass) {
    double loss = lossFeet(light(mass, new Forward()).withDelay(0));
    assertTrue(loss >= 50 && loss <= 80, loss + " ft at once");
    double later = lossFeet(light(mass, new Forward()).withDelay(0.25));
    assertTrue(later > 80 && later < 85, later + " ft after a quarter of a second");
  }

  /** Common practice, no source. */
  @ParameterizedTest
  @ValueSource(doubles = {600, 610, 620})
  void forwardRecoveryOneAndAHalfToTwoSecondsLaterLosesAtLeastHalfAsMuchAgain(double mass) {
    for (double prompt : new double[] {0, 0.25, 0.5}) {
      double loss = lossFeet(light(mass, new Forward()).withDelay(prompt));
      for (double later : new double[] {1.5, 2}) {
        double late = lossFeet(light(mass, new Forward()).withDelay(prompt + later));
        assertTrue(late >= 1.5 * loss, loss + " ft, " + later + " s later " + late + " ft");
      }
    }
  }

  /**
   * Common practice, no source: while the sink runs away, each second costs more than the last.
   * From a hover.
   */
  @ParameterizedTest
  @ValueSource(doubles = {600, 610, 620})
  void eachSecondCostsMoreThanTheLastWhileTheSinkRunsAway(double mass) {
    for (Recovery recovery : List.of(new Forward(), new Lateral())) {
      // in the first half second the ring is only being formed, and a pull comes before it
      double[] losses = losses(settling(mass, recovery), 0.5, 6);
      for (int i = 2; i < 5; i++) {
        double bend = losses[i + 1] - 2 * losses[i] + losses[i - 1];
        assertTrue(bend > 0, recovery.name() + " bends by " + bend + " ft at " + 0.5 * i + " s");
      }
    }
  }

  /** Instructors' statements of 20 to 50 ft; common practice, no source. */
  @ParameterizedTest
  @ValueSource(doubles = {600, 610, 620})
  void aPromptLateralRecoveryLoses20To50Feet(double mass) {
    for (double delay : new double[] {0, 0.25}) {
      double loss = lossFeet(light(mass, new Lateral()).withDelay(delay));
      assertTrue(loss >= 20 && loss <= 50, loss + " ft after " + delay + " s");
    }
    for (double delay : new double[] {0, 0.25, 0.5}) {
      double loss = lossFeet(settling(mass, new Lateral()).withDelay(delay));
      assertTrue(loss >= 20 && loss <= 50, loss + " ft after " + delay + " s, from a hover");
    }
    double later = lossFeet(settling(mass, new Lateral()).withDelay(1));
    assertTrue(later > 50 && later < 60, later + " ft after a second, from a hover");
  }

  /**
   * Collective alone is left out where it comes from a tailwind approach: in the model it does not
   * arrest the trainer after 4.5 s, and does after 5.6 s, at 1,900 ft below the onset.
   */
  static Stream<Arguments> craftEntriesAndRecoveries() {
    List<Entry> entries =
        List.of(new Settling(), new Steep(), new Downwind(), new TailwindApproach());
    return Stream.concat(
        Every.of(DemoCraft.ALL, entries, List.of(new Forward(), new Lateral(), new Autorotation())),
        Every.of(DemoCraft.ALL, entries.subList(0, 3), List.of(new CollectiveOnly())));
  }

  /** Common practice, no source. A descent that is not arrested at all loses more than any loss. */
  @Tag("soak")
  @ParameterizedTest
  @MethodSource("craftEntriesAndRecoveries")
  void moreDelayNeverLosesLess(Helicopter craft, Entry entry, Recovery recovery) {
    Encounter encounter = Encounter.of(craft).withEntry(entry).withRecovery(recovery);
    double step = Soak.isWhole() ? 0.1 : 0.5;
    double[] losses =
        IntStream.rangeClosed(0, Soak.isWhole() ? 60 : 12)
            .parallel()
            .mapToDouble(
                i ->
                    encounter
                        .withDelay(step * i)
                        .fly()
                        .altitudeLoss()
                        .orElse(Double.POSITIVE_INFINITY))
            .toArray();
    for (int i = 1; i < losses.length; i++) {
      assertTrue(
          losses[i] >= losses[i - 1] - 1e-6,
          "from " + losses[i - 1] + " to " + losses[i] + " m at " + step * i + " s");
    }
  }

  /** A late collective increase does not arrest the sink (army handbook, second-hand). */
  @Test
  void collectiveAloneAtFullWeightAndHighDensityAltitudeDoesNotArrestADevelopedRingState() {
    Encounter encounter =
        light(620, new CollectiveOnly())
            .withAir(StandardAtmosphere.at(Unit.FOOT.toSi(8000)))
            .withDelay(6);
    assertEquals(Ending.NOT_ARRESTED, encounter.fly().ending());
    assertEquals(Ending.ARRESTED, encounter.withRecovery(new Forward()).fly().ending());
    assertEquals(Ending.ARRESTED, encounter.withRecovery(new Lateral()).fly().ending());
  }

  static Stream<Helicopter> craftAndMasses() {
    return DemoCraft.ALL.stream()
        .flatMap(
            craft ->
                Stream.of(Helicopter.MINIMUM_MASS, Helicopter.MASS, Helicopter.MAXIMUM_MASS)
                    .map(mass -> craft.with(Helicopter.MASS, craft.numbers().get(mass))));
  }

  /** Upper end of effective translational lift in the handbooks, 16 to 24 kt (second-hand). */
  @ParameterizedTest
  @MethodSource("craftAndMasses")
  void above24KnotsOfAirspeedThereIsNoRingState(Helicopter craft) {
    double hover = craft.hoverInducedVelocity(StandardAtmosphere.at(0));
    HeaveDamping boundary = new HeaveDamping(RingStateInflow.standard());
    double reach = Unit.KNOT.fromSi(boundary.reach().orElseThrow() * hover);
    assertTrue(reach < 24, "the boundary reaches " + reach + " kt");
    double beyond = Unit.KNOT.toSi(24) / hover;
    assertEquals(List.of(), boundary.bands(beyond));
  }

  @ParameterizedTest
  @MethodSource("craftAndMasses")
  void hoveringIntoAHeadwindOf25KnotsAndSettlingMeetsNoRingState(Helicopter craft) {
    ParameterSet windy = ParameterSet.standard(Settling.PARAMETERS).with(Settling.WIND, 25);
    Outcome outcome = Encounter.of(craft).withEntry(new Settling(windy)).fly();
    assertEquals(Ending.NO_ONSET, outcome.ending());
    assertTrue(outcome.altitudeLoss().isEmpty() && outcome.peakDescent().isEmpty());
  }

  /** At least 300 ft/min (rotorcraft handbooks, second-hand). */
  @ParameterizedTest
  @MethodSource("craftAndMasses")
  void theRingStateBeginsAtMoreThan300FeetPerMinute(Helicopter craft) {
    double hover = craft.hoverInducedVelocity(StandardAtmosphere.at(0));
    HeaveDamping boundary = new HeaveDamping(RingStateInflow.standard());
    double reach = boundary.reach().orElseThrow();
    for (double x = 0; x < reach; x += reach / 40) {
      double onset = -boundary.bands(x).get(0).onset() * hover;
      assertTrue(Unit.FOOT_PER_MINUTE.fromSi(onset) > 300, onset + " m/s at " + x);
    }
    double met = Encounter.of(craft).fly().occurrences().get(0).verticalSpeed();
    assertTrue(Unit.FOOT_PER_MINUTE.fromSi(-met) > 300, met + " m/s at onset");
  }

  /** One sample of where a lateral recovery went. */
  private static double sideways(Helicopter craft) {
    Encounter lateral = Encounter.of(craft).withRecovery(new Lateral()).withDelay(2);
    List<Double> speeds = Samples.of(lateral, 0.05, Motion::sidewaysAirspeed);
    return speeds.get(speeds.size() - 1);
  }

  /** The side that the tail rotor pushes to; common practice, no source. */
  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void lateralRecoveryGoesRightUnderACounterClockwiseRotorAndLeftUnderAClockwiseOne(
      Helicopter craft) {
    assertTrue(sideways(craft.with(RotationSense.COUNTER_CLOCKWISE)) > 5);
    assertTrue(sideways(craft.with(RotationSense.CLOCKWISE)) < -5);
  }

  @ParameterizedTest
  @MethodSource("craftEntriesAndRecoveries")
  void theSenseOfRotationMirrorsAnEncounterAndChangesNoLoss(
      Helicopter craft, Entry entry, Recovery recovery) {
    Encounter encounter = Encounter.of(craft).withEntry(entry).withRecovery(recovery).withDelay(2);
    RotationSense other =
        craft.sense() == RotationSense.CLOCKWISE
            ? RotationSense.COUNTER_CLOCKWISE
            : RotationSense.CLOCKWISE;
    Outcome plain = encounter.fly();
    Outcome mirrored = encounter.withCraft(craft.with(other)).fly();
    assertEquals(plain.ending(), mirrored.ending());
    assertEquals(plain.altitudeLoss().orElse(-1), mirrored.altitudeLoss().orElse(-1), 1e-6);
  }

  /** Common practice, no source; of the entry from a hover. */
  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void lateralRecoveryLosesLessThanForwardRecoveryAtEqualDelay(Helicopter craft) {
    for (double delay = 0; delay <= 6; delay += 0.5) {
      Encounter encounter = Encounter.of(craft).withDelay(delay);
      double forward = lossFeet(encounter.withRecovery(new Forward()));
      double lateral = lossFeet(encounter.withRecovery(new Lateral()));
      assertTrue(lateral < forward, delay + " s: lateral " + lateral + ", forward " + forward);
    }
  }

  /** Common practice, no source: the glide costs most. */
  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void autorotationLosesMoreThanForwardRecovery(Helicopter craft) {
    for (double delay : new double[] {0, 1, 2, 4}) {
      Encounter encounter = Encounter.of(craft).withDelay(delay);
      assertTrue(
          lossFeet(encounter.withRecovery(new Autorotation()))
              > lossFeet(encounter.withRecovery(new Forward())));
    }
  }
}
