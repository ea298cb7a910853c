package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.PowerLawWind;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DisturbancesTest {

  private static final Encounter TRAINER =
      Encounter.of(DemoCraft.TRAINER).withEntry(new Settling()).withRecovery(new Lateral());

  private static final Encounter WINDY =
      TRAINER.withEntry(EntryKind.SETTLING.with(Settling.WIND, 5));

  private static Disturbances with(Parameter parameter, double value) {
    return Disturbances.NONE.with(parameter, value).withSeed(5);
  }

  private static double loss(Encounter encounter) {
    return encounter.fly().altitudeLoss().orElseThrow();
  }

  @Test
  void disturbancesThatAreOffLeaveTheFlightAsItIsToTheLastBit() {
    Disturbances off = new Disturbances(ParameterSet.standard(Disturbances.PARAMETERS), 77);
    assertFalse(off.any());
    assertFalse(off.random());
    assertEquals(TRAINER.fly(), TRAINER.withDisturbances(off).fly());
    WindField mean = new Wind(3, 0);
    assertEquals(mean, off.wind(mean, OptionalDouble.of(50), DemoCraft.TRAINER.rotor()));
  }

  @Test
  void gustsAndShakingAreTheSameForASeedAndOthersForAnother() {
    for (Parameter parameter : List.of(Disturbances.GUST_WIND, Disturbances.SHAKING)) {
      Disturbances some = with(parameter, 10);
      assertTrue(some.any() && some.random());
      Encounter disturbed = TRAINER.withDisturbances(some);
      assertEquals(disturbed.fly(), disturbed.fly());
      assertNotEquals(loss(TRAINER), loss(disturbed));
      assertNotEquals(loss(disturbed), loss(TRAINER.withDisturbances(some.withSeed(6))));
    }
  }

  @Test
  void shakingIsFeltInTheRingStateAndHardlyInTheHover() {
    List<double[]> felt =
        Samples.of(
            TRAINER.withDisturbances(with(Disturbances.SHAKING, 5)).withDelay(4),
            0.05,
            seen -> new double[] {seen.axialOverHover(), seen.roughness()});
    assertTrue(felt.get(0)[1] < 0.001, "in the hover");
    double[] strongest = Collections.max(felt, Comparator.comparingDouble(sample -> sample[1]));
    assertEquals(-1.2, strongest[0], 0.1);
    assertEquals(0.05, strongest[1], 0.005);
  }

  @Test
  void shearChangesAFlightInWindAndNoneInCalm() {
    Disturbances shear = with(Disturbances.SHEAR, 0.28);
    assertTrue(shear.any());
    assertFalse(shear.random());
    assertEquals(loss(TRAINER), loss(TRAINER.withDisturbances(shear)), 1e-6);
    assertNotEquals(loss(WINDY), loss(WINDY.withDisturbances(shear)), 1e-3);
    assertNotEquals(
        loss(WINDY.withHeight(60)), loss(WINDY.withHeight(60).withDisturbances(shear)), 1e-3);
  }

  /** Source: the power law itself; see {@link PowerLawWind}. */
  @Test
  void theShearedWindIsThatOfTheEntryAtOnsetAndFollowsThePowerLaw() {
    Disturbances shear = with(Disturbances.SHEAR, 0.25);
    double[] air = new double[3];
    WindField field = shear.wind(new Wind(-8, 2), OptionalDouble.of(64), DemoCraft.TRAINER.rotor());
    field.velocity(0, 0, 0, 64, air);
    assertEquals(-8, air[0], 1e-12);
    field.velocity(0, 0, 0, 4, air);
    assertEquals(-4, air[0], 1e-12, "(4 / 64)^(1 / 4) is a half");
    assertEquals(1, air[1], 1e-12);
    WindField nowhere =
        shear.wind(new Wind(-8, 2), OptionalDouble.empty(), DemoCraft.TRAINER.rotor());
    double onset = Unit.FOOT.toSi(300);
    nowhere.velocity(0, 0, 0, onset, air);
    assertEquals(-8, air[0], 1e-12, "without ground onset counts as at 300 ft");
    nowhere.velocity(0, 0, 0, onset - 20, air);
    assertTrue(air[0] > -8);
  }

  @Test
  void withShearTheOnsetIsStillAtItsHeight() {
    Outcome outcome = WINDY.withHeight(60).withDisturbances(with(Disturbances.SHEAR, 0.28)).fly();
    assertEquals(60, outcome.occurrences().get(0).height(), 1e-9);
    assertEquals(EventKind.ONSET, outcome.occurrences().get(0).kind());
  }

  /** One flight from its start to its end: nothing may jump where onset divides it. */
  @ParameterizedTest
  @CsvSource({
    "settling, 4, 30",
    "settling, 8, 10",
    "settling, 8, 60",
    "steep, 12, 5",
    "steep, 20, 30",
    "downwind, 20, 10",
    "downwind, 12, 30"
  })
  void withShearTheEntryEndsAtTheHeightAndInTheWindOfOnset(String entry, double knots, double at) {
    EntryKind kind = EntryKind.named(entry).orElseThrow();
    double step = 0.002;
    double[] before = {Double.NaN, 0, 0};
    boolean[] joined = {false};
    Trajectory trajectory =
        new Trajectory(
            step,
            (phase, seen) -> {
              if (!phase.equals("entry") && !joined[0]) {
                joined[0] = true;
                assertEquals(before[0] + step * before[1], seen.height(), 2e-3, "height");
                assertEquals(before[2], seen.forwardAirspeed(), 0.02, "airspeed");
              }
              before[0] = seen.height();
              before[1] = seen.verticalSpeed();
              before[2] = seen.forwardAirspeed();
            });
    TRAINER
        .withEntry(kind.with(kind.wind(), knots))
        .withHeight(at)
        .withDisturbances(with(Disturbances.SHEAR, 0.28))
        .fly(Simulator.precise(), trajectory);
    assertTrue(joined[0], "the entry leads into the ring state");
  }

  /**
   * The wind of the entry is that at onset, so whatever it is above, a headwind there that is
   * faster than the boundary reaches keeps a craft that hovers over one point out of the ring
   * state.
   */
  @ParameterizedTest
  @ValueSource(doubles = {10, 30, 100})
  void aWindFasterThanTheBoundaryReachesLeadsToNoOnsetWithShearEither(double height) {
    double wind = Unit.KNOT.toSi(12);
    double hover = DemoCraft.TRAINER.hoverInducedVelocity(StandardAtmosphere.at(0));
    assertTrue(TRAINER.boundary().reach().orElseThrow() * hover < wind);
    Encounter windy =
        TRAINER.withEntry(EntryKind.SETTLING.with(Settling.WIND, 12)).withHeight(height);
    assertEquals(Ending.NO_ONSET, windy.fly().ending());
    assertEquals(
        Ending.NO_ONSET, windy.withDisturbances(with(Disturbances.SHEAR, 0.28)).fly().ending());
  }

  @Test
  void aWindThatComesRoundTurnsAHeadwindIntoATailwind() {
    Disturbances turn = with(Disturbances.WIND_TURN, -180);
    assertTrue(turn.any());
    assertFalse(turn.random());
    double[] air = new double[3];
    WindField field = turn.wind(new Wind(-8, 0), OptionalDouble.empty(), DemoCraft.TRAINER.rotor());
    field.velocity(0, 0, 0, 0, air);
    assertEquals(-8, air[0], 1e-12);
    field.velocity(10, 0, 0, 0, air);
    assertEquals(8, air[0], 1e-12);
    assertNotEquals(loss(WINDY), loss(WINDY.withDisturbances(turn)), 1e-3);
    assertEquals(loss(TRAINER), loss(TRAINER.withDisturbances(turn)), 1e-9);
  }

  @Test
  void aSharedApproachIsThatOfTheFlightAlone() {
    Encounter encounter = WINDY.withHeight(60).withDisturbances(with(Disturbances.SHEAR, 0.28));
    Approach approach = Approach.fly(encounter, Simulator.precise());
    assertEquals(
        encounter.withDelay(2).fly(),
        encounter.withDelay(2).fly(approach, Simulator.precise(), null));
  }

  /**
   * Altitude loss is height at onset less the lowest height after it, so by definition it is not
   * negative, and a craft that climbs has not failed to arrest a descent. In gusts as strong as
   * these an updraught carries the disc of some flights into the boundary while the craft climbs.
   */
  @ParameterizedTest
  @ValueSource(strings = {"settling", "downwind"})
  void aCraftThatClimbsInAnUpdraughtHasNotBegunToLoseHeight(String entry) {
    Encounter rough =
        TRAINER
            .withEntry(entry.equals("settling") ? new Settling() : new Downwind())
            .withRecovery(new Forward())
            .withDelay(0);
    int climbing = 0;
    for (long seed = 0; seed < 100; seed++) {
      Encounter one =
          rough.withDisturbances(with(Disturbances.GUST_WIND, 45).withSeed(seed * 7919 + 3));
      Approach approach = Approach.fly(one, Simulator.fast());
      if (approach.onset()) {
        // where the climb ends, to what a fast flight locates it
        assertTrue(approach.state()[State.SPEED_UP] < 1e-3, "climbs at onset, seed " + seed);
        climbing += approach.state()[State.SPEED_UP] > -1e-3 ? 1 : 0;
        BulkFlight flight = new BulkFlight(approach);
        assertEquals(Ending.ARRESTED, flight.fly(one.recovery(), one.recognition()));
        assertTrue(flight.altitudeLoss() >= 0, "gains height, seed " + seed);
      }
    }
    assertTrue(climbing > 0, "no flight climbed into the boundary");
  }
}
