package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.PowerLawWind;
import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A wind of one's own is trimmed in, followed by the entry, and met at heights above the ground.
 */
class OwnWindTest {

  private static final double SHEAR = 0.2;
  private static final double TAILWIND = TailwindApproach.WIND.unit().toSi(8);

  private static Encounter standard(double height) {
    Encounter encounter = Encounter.of(DemoCraft.TRAINER).withDelay(1.5);
    return height > 0 ? encounter.withHeight(height) : encounter;
  }

  private static List<Double> bits(Encounter encounter) {
    Outcome precise = encounter.fly();
    BulkFlight fast = new BulkFlight(Approach.fly(encounter, Simulator.fast()));
    fast.fly(encounter.recovery(), encounter.recognition());
    assertTrue(precise.altitudeLoss().isPresent());
    List<Double> numbers = new ArrayList<>();
    numbers.add(precise.altitudeLoss().orElseThrow());
    numbers.add(precise.onsetTime().orElseThrow());
    numbers.add(precise.timeToArrest().orElse(Double.NaN));
    precise.occurrences().forEach(occurrence -> numbers.add(occurrence.time()));
    numbers.add(fast.altitudeLoss());
    numbers.add(fast.peakDescent());
    return numbers;
  }

  static Stream<Entry> entries() {
    return Stream.of(
        new TailwindApproach(),
        EntryKind.SETTLING.with(Settling.WIND, 4),
        EntryKind.STEEP.with(Steep.WIND, 3),
        new Downwind());
  }

  /** The same wind, said by whoever: a lambda is not known to be the same at all heights. */
  @ParameterizedTest
  @MethodSource("entries")
  void aWindLikeThatOfTheEntryGivesTheSameFlightToTheBit(Entry entry) {
    WindField like = entry.wind();
    WindField own = (time, north, east, up, air) -> like.velocity(time, north, east, up, air);
    for (double height : new double[] {0, 120}) {
      Encounter builtIn = standard(height).withEntry(entry);
      assertEquals(bits(builtIn), bits(builtIn.withWind(own)));
    }
  }

  /** The wind of the disturbances' shear, by {@link PowerLawWind}, as one's own. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 60, 120})
  void aWindLikeTheBuiltInShearGivesTheSameFlightToTheBit(double height) {
    Encounter calm = standard(height);
    Encounter builtIn = calm.withDisturbances(Disturbances.NONE.with(Disturbances.SHEAR, SHEAR));
    PowerLawWind profile = PowerLawWind.of(new Wind(1, 0), SHEAR);
    double atOnset = profile.speedRatio(height > 0 ? height : Unit.FOOT.toSi(300));
    Encounter own =
        calm.withWind(
            (time, north, east, up, air) -> {
              air[0] = TAILWIND * (profile.speedRatio(Math.max(up, 0)) / atOnset);
              air[1] = 0;
              air[2] = 0;
            });
    assertEquals(bits(builtIn), bits(own));
    assertNotEquals(bits(calm), bits(own));
    double reference = TAILWIND / atOnset;
    Encounter law = calm.withWind(PowerLawWind.of(new Wind(reference, 0), SHEAR));
    assertEquals(
        own.fly().altitudeLoss().orElseThrow(), law.fly().altitudeLoss().orElseThrow(), 1e-6);
  }

  /**
   * A start is a steady flight: nothing accelerates at first, whatever the wind where it starts.
   */
  @ParameterizedTest
  @MethodSource("entries")
  void theEntryIsTrimmedInTheWindWhereItStarts(Entry entry) {
    WindField slanted =
        (time, north, east, up, air) -> {
          air[0] = 2 + 0.01 * up;
          air[1] = 1.5 - 0.004 * up;
          air[2] = 0.3;
        };
    Encounter encounter = standard(150).withEntry(entry).withWind(slanted);
    double[] greatest = new double[1];
    double[] sideways = new double[1];
    Trajectory first =
        new Trajectory(
            100,
            (phase, motion) -> {
              for (int i : new int[] {State.SPEED_NORTH, State.SPEED_EAST, State.SPEED_UP}) {
                greatest[0] = Math.max(greatest[0], Math.abs(motion.rate(i)));
              }
              sideways[0] = motion.sidewaysGroundSpeed();
            });
    encounter.fly(Simulator.precise(), first);
    assertTrue(greatest[0] < 1e-7, greatest[0] + " m/s2");
    assertEquals(0, sideways[0], 1e-9, "the track is straight ahead over the ground");
  }

  /** Geometry: over the ground the speeds are those that the entry names, in any wind. */
  @Test
  void anApproachKeepsItsGroundSpeedAndAHoverItsPoint() {
    Encounter arriving = standard(0).withWind(new Wind(5, 2));
    double ground = TailwindApproach.GROUND_SPEED.unit().toSi(30);
    assertArrayEquals(new double[] {ground, ground - 5}, firstSpeeds(arriving), 1e-12);
    assertArrayEquals(new double[] {0, -5}, firstSpeeds(arriving.withEntry(new Settling())), 1e-12);
  }

  private static double[] firstSpeeds(Encounter encounter) {
    return Samples.of(
            encounter, 100, motion -> new double[] {motion.groundSpeed(), motion.forwardAirspeed()})
        .get(0);
  }

  /** Every height that the wind is asked for is above the ground, and onset is at its own. */
  @Test
  void heightsCountFromTheGroundThroughout() {
    List<Double> asked = new ArrayList<>();
    WindField noted =
        (time, north, east, up, air) -> {
          asked.add(up);
          air[0] = TAILWIND * (1 + 0.002 * up);
          air[1] = 0;
          air[2] = 0;
        };
    Outcome outcome = standard(100).withWind(noted).fly();
    assertEquals(100, outcome.occurrences().get(0).height(), 1e-9);
    double lowest = asked.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    double greatest = asked.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    assertEquals(100 - outcome.altitudeLoss().orElseThrow(), lowest, 0.5);
    assertTrue(greatest > 100 && greatest < 200, greatest + " m");
    asked.clear();
    Outcome without = standard(0).withWind(noted).fly();
    lowest = asked.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    assertEquals(Unit.FOOT.toSi(300) - without.altitudeLoss().orElseThrow(), lowest, 0.5);
  }

  @Test
  void encountersInEqualWindsAreEqual() {
    assertEquals(standard(0).withWind(new Wind(3, 1)), standard(0).withWind(new Wind(3, 1)));
    assertNotEquals(standard(0).withWind(new Wind(3, 1)), standard(0));
  }
}
