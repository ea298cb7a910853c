package io.github.ringstate.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Entry;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.encounter.FlightQuantity;
import io.github.ringstate.encounter.History;
import io.github.ringstate.encounter.Instant;
import io.github.ringstate.pilot.PilotView;
import io.github.ringstate.quantity.Unit;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.polynomials.PolynomialFunction;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class RecordedOnsetTest {

  private static final Wind BEHIND = new Wind(4, 1);
  private static final RecordedOnset ONSET = new RecordedOnset(BEHIND, 5, 1.5, -4, -0.6, 0.2, -0.8);

  private static EquationsOfMotion equations(WindField wind) {
    Encounter encounter = Encounter.of(DemoCraft.TRAINER);
    return new EquationsOfMotion(
        encounter.craft(), encounter.air(), wind, encounter.inflow(), false);
  }

  /** The wind of the encounter may be another than that of the entry, and go up. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1.5})
  void theCraftMovesAtFirstAsRecorded(double updraught) {
    EquationsOfMotion motion =
        equations(
            (time, north, east, height, result) -> {
              BEHIND.velocity(time, north, east, height, result);
              result[2] = updraught;
            });
    Motion first = motion.at(0, ONSET.start(motion).state());
    // the equations of motion themselves are the second method
    assertEquals(5, first.state(State.SPEED_NORTH), 1e-12);
    assertEquals(1.5, first.state(State.SPEED_EAST), 1e-12);
    assertEquals(-4, first.state(State.SPEED_UP), 1e-12);
    assertEquals(-0.6, first.rate(State.SPEED_NORTH), 1e-7);
    assertEquals(0.2, first.rate(State.SPEED_EAST), 1e-7);
    assertEquals(-0.8, first.rate(State.SPEED_UP), 1e-7);
    assertEquals(0, first.rate(State.INDUCED), 1e-6);
  }

  /** Entries in a wind that stays the same, in which the controls are at rest after the onset. */
  static List<EntryKind> entries() {
    return List.of(
        EntryKind.TAILWIND_APPROACH,
        EntryKind.SETTLING,
        EntryKind.STEEP,
        EntryKind.QUICK_STOP,
        EntryKind.SHORT_HOVER,
        EntryKind.PHOTO_DRIFT);
  }

  /**
   * However the craft came there. The bound follows from the acceleration, which is known to 0.5
   * m/s2: over the 1.5 s until the pilot acts and the second until the recovery tells, 6 ft, and
   * 2.5 m/s too much or too little for the 2 s of the way back, 16 ft.
   */
  @ParameterizedTest
  @MethodSource("entries")
  void aFlightFromTheRecordedOnsetLosesWhatWasLost(EntryKind entry) {
    Encounter flown = Encounter.of(DemoCraft.TRAINER).withEntry(entry.standard()).withDelay(1.5);
    Wind wind = (Wind) flown.entry().wind();
    Recording recording = Instruments.receiver().record(flown, 1);
    VerticalMotion motion = VerticalMotion.of(recording);
    FoundEncounter found = EncounterFinder.like(flown, wind, 0.3, 0.1).find(motion).get(0);
    RecordedOnset onset = RecordedOnset.of(motion, found, wind).orElseThrow();
    double truth = flown.fly().altitudeLoss().orElseThrow();
    double model = flown.withEntry(onset).fly().altitudeLoss().orElseThrow();
    assertEquals(truth, model, Unit.FOOT.toSi(22));
    // matched, the speed at the movement is known to 0.2 m/s, over some 5 s until the arrest 3 ft,
    // and the onset to 0.3 s at 7 m/s, 7 ft
    RecordedOnset matched = MatchedOnset.of(flown, onset, motion, found);
    double closer = flown.withEntry(matched).fly().altitudeLoss().orElseThrow();
    assertEquals(truth, closer, Unit.FOOT.toSi(10));
    VerticalMotion vague = VerticalMotion.of(recording, Noise.of(100, 10, 10, 3));
    assertTrue(RecordedOnset.of(vague, found, wind).isEmpty(), "an acceleration that is not known");
  }

  /** A hover over one point that slides backwards with the wind that it faced. */
  @Test
  void theNosePointsWhereItIsRecordedOrWhereTheCraftFlewThroughTheAir() {
    Encounter flown =
        Encounter.of(DemoCraft.TRAINER).withEntry(EntryKind.PHOTO_DRIFT.standard()).withDelay(1);
    Wind wind = (Wind) flown.entry().wind();
    Recording recording = Instruments.receiver().record(flown, 1);
    RecordedOnset tailFirst = onset(flown, recording, wind);
    assertTrue(tailFirst.ahead() < -5 && tailFirst.forward() < 0, tailFirst::toString);
    assertEquals(wind.north(), tailFirst.wind().north(), 0.02 * wind.speed());
    double[] west = new double[recording.size()];
    Arrays.fill(west, FastMath.toRadians(270));
    // it slides south, so to the left of a nose to the west, and so blows the wind
    RecordedOnset toTheLeft = onset(flown, Rewritten.with(recording, Channel.HEADING, west), wind);
    assertEquals(tailFirst.ahead(), toTheLeft.sideways(), 0.1);
    assertEquals(0, toTheLeft.ahead(), 0.3);
    assertEquals(wind.north(), toTheLeft.wind().east(), 1e-9);
    assertEquals(0, toTheLeft.wind().north(), 1e-9);
  }

  private static RecordedOnset onset(Encounter flown, Recording recording, Wind wind) {
    VerticalMotion motion = VerticalMotion.of(recording);
    return EncounterFinder.like(flown, wind, 0.3, 0.1).find(motion).stream()
        .findFirst()
        .flatMap(found -> RecordedOnset.of(motion, found, wind))
        .orElseThrow();
  }

  /** Heights and velocities over the ground, powers of the time, five a second to 20 s. */
  private static Recording steady(double[] north, double[] east, double heading) {
    double[] time = IntStream.range(0, 101).mapToDouble(k -> k / 5.0).toArray();
    Map<Channel, double[]> values = new EnumMap<>(Channel.class);
    for (Channel channel :
        List.of(Channel.HEIGHT, Channel.GROUND_SPEED, Channel.TRACK, Channel.HEADING)) {
      values.put(channel, new double[time.length]);
    }
    for (int k = 0; k < time.length; k++) {
      double n = new PolynomialFunction(north).value(time[k]);
      double e = new PolynomialFunction(east).value(time[k]);
      values.get(Channel.HEIGHT)[k] = 200 - 1.5 * time[k] - 0.05 * time[k] * time[k];
      values.get(Channel.GROUND_SPEED)[k] = FastMath.hypot(n, e);
      values.get(Channel.TRACK)[k] = FastMath.atan2(e, n);
      values.get(Channel.HEADING)[k] = heading;
    }
    return new Recording(time, values);
  }

  private static FoundEncounter encounter(
      double onset, double height, Optional<Movement> movement) {
    Estimate some = new Estimate(onset, 0.1);
    return new FoundEncounter(
        0, some, height, Optional.empty(), movement, Optional.empty(), some, some, Verdict.NO_END);
  }

  private static RecordedOnset at(double onset, Recording recording, Wind wind) {
    FoundEncounter found = encounter(onset, 150, Optional.empty());
    VerticalMotion motion = VerticalMotion.of(recording, new Noise(0.01, 0.01, 0.01, 0.01, 0, 60));
    return RecordedOnset.of(motion, found, wind).orElseThrow();
  }

  /**
   * By hand, between two readings: along a nose whose heading has the cosine 0.6 and the sine 0.8,
   * and to its right.
   */
  @Test
  void speedsAndAccelerationsAreTurnedToTheNoseAtTheOnset() {
    Recording flight =
        steady(new double[] {6, -0.4}, new double[] {5, -0.1}, FastMath.atan2(0.8, 0.6));
    RecordedOnset onset = at(10.1, flight, new Wind(2, -1));
    // over the ground 1.96 and 3.99 m/s
    assertEquals(0.6 * 1.96 + 0.8 * 3.99, onset.ahead(), 1e-9);
    assertEquals(0.6 * 3.99 - 0.8 * 1.96, onset.sideways(), 1e-9);
    assertEquals(-0.6 * 0.4 - 0.8 * 0.1, onset.forward(), 1e-9);
    assertEquals(-0.6 * 0.1 + 0.8 * 0.4, onset.right(), 1e-9);
    assertEquals(0.6 * 2 - 0.8 * 1, onset.wind().north(), 1e-12);
    assertEquals(-0.6 * 1 - 0.8 * 2, onset.wind().east(), 1e-12);
    assertEquals(-1.5 - 0.1 * 10.1, onset.verticalSpeed(), 0.01);
    assertEquals(1.5 + 0.1 * 10.1, onset.intendedDescent(), 0.01);
    assertEquals(-0.1, onset.up(), 0.02);
    assertEquals(0, new RecordedOnset(Wind.CALM, 0, 0, 1, 0, 0, 0).intendedDescent());
  }

  /** Within 0.75 s of the first and the last reading, and after the last. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.1, 19.9, 20.05})
  void anOnsetMayLieAtTheEdgeOfARecording(double time) {
    RecordedOnset onset =
        at(time, steady(new double[] {6, -0.4}, new double[] {5, -0.1}, 0), Wind.CALM);
    assertEquals(6 - 0.4 * time, onset.ahead(), 1e-9);
    assertEquals(5 - 0.1 * time, onset.sideways(), 1e-9);
    assertEquals(-0.4, onset.forward(), 1e-9);
    assertEquals(-0.1, onset.right(), 1e-9);
  }

  /** A parabola's slope in its middle is that between two points equally far from it. */
  @Test
  void theHorizontalAccelerationIsThatAtTheOnset() {
    Recording flight = steady(new double[] {6, -0.4, 0.03}, new double[] {5, -0.1, -0.02}, 0);
    RecordedOnset onset = at(10.1, flight, Wind.CALM);
    assertEquals(-0.4 + 2 * 0.03 * 10.1, onset.forward(), 1e-9);
    assertEquals(-0.1 - 2 * 0.02 * 10.1, onset.right(), 1e-9);
  }

  @Test
  void attitudeAndCollectiveAreHeldAsTheyAre() {
    EquationsOfMotion motion = equations(BEHIND);
    Entry.Start start = ONSET.start(motion);
    Trim hover = Trim.accelerating(motion, 0, 0, 0, 0, 0, 0);
    Controls controls = new Controls();
    start.law().command(PilotView.of(motion, hover), controls);
    assertEquals(start.state()[State.PITCH], controls.pitch());
    assertEquals(start.state()[State.BANK], controls.bank());
    assertEquals(start.state()[State.COLLECTIVE], controls.collective());
    assertTrue(controls.pitch() != 0 && controls.bank() != 0 && controls.collective() != 0);
  }

  /**
   * Second method: the least sum of squares is looked for between bounds, without slopes. The
   * heights are off by turns by three deviations, so all three demands pull, and none is met.
   */
  @Test
  void theMatchedAccelerationIsThatOfLeastSquares() {
    Recording clean = steady(new double[] {2}, new double[] {0}, 0);
    double[] heights = Rewritten.values(clean, Channel.HEIGHT);
    for (int k = 0; k < heights.length; k++) {
      heights[k] += k % 2 == 0 ? 0.9 : -0.9;
    }
    VerticalMotion motion =
        VerticalMotion.of(
            Rewritten.with(clean, Channel.HEIGHT, heights), new Noise(0.1, 0.3, 1, 1, 0, 60));
    double moved = 12.07;
    Movement movement = new Movement(Channel.BANK, new Estimate(moved, 0.1), 0, 0.2, 0);
    FoundEncounter found = encounter(10.1, 180.5, Optional.of(movement));
    RecordedOnset onset = RecordedOnset.of(motion, found, Wind.CALM).orElseThrow();
    Encounter craft = Encounter.of(DemoCraft.TRAINER);
    // the readings of 10.2 s and 12.2 s
    double scale = motion.scale(51, 61);
    double early = moved - 12.2;
    double[] said = {
      onset.up(),
      motion.verticalSpeed(61) + early * motion.acceleration(61),
      180.5 - motion.height(61) - early * motion.verticalSpeed(61)
    };
    double[] deviations = {
      motion.accelerationDeviation(51),
      scale * motion.verticalSpeedDeviation(61),
      scale * motion.heightDifferenceDeviation(51, 61)
    };
    UnivariateFunction squares =
        up -> {
          History flown =
              craft.withEntry(onset.withUp(up)).withDelay(moved - 10.1).record().history();
          Instant then = flown.at(moved - 10.1);
          double[] model = {
            up,
            then.get(FlightQuantity.VERTICAL_SPEED),
            flown.at(0).get(FlightQuantity.HEIGHT) - then.get(FlightQuantity.HEIGHT)
          };
          double sum = 0;
          for (int i = 0; i < model.length; i++) {
            double off = (model[i] - said[i]) / deviations[i];
            sum += off * off;
          }
          return sum;
        };
    double least =
        new BrentOptimizer(1e-6, 1e-6)
            .optimize(
                new MaxEval(100),
                GoalType.MINIMIZE,
                new UnivariateObjectiveFunction(squares),
                new SearchInterval(onset.up() - 1, onset.up() + 1))
            .getPoint();
    assertEquals(least, MatchedOnset.of(craft, onset, motion, found).up(), 1e-3);
  }

  @Test
  void itsNameIsOfWordsJoinedByHyphens() {
    assertTrue(ONSET.name().matches("[a-z]+(-[a-z]+)*"), ONSET.name());
  }

  /** 3 and 4 m/s over the ground: the part through the air along it is -21 + 16, 9 - 12, 9 + 16. */
  @ParameterizedTest
  @CsvSource({"10, 0, -5, 10", "0, 7, -5, 10", "0, 0, 5, 10", "2, 2, 5, 10", "10, 0, -5, 0"})
  void withoutAHeadingTheNosePointsAsTheCraftFliesThroughTheAir(
      double north, double east, double ahead, double time) {
    Recording flight = steady(new double[] {3, 0}, new double[] {4, 0}, Double.NaN);
    RecordedOnset onset = at(time, flight, new Wind(north, east));
    assertEquals(ahead, onset.ahead(), 1e-9);
    assertEquals(0, onset.sideways(), 1e-9);
    assertEquals((3 * north + 4 * east) / ahead, onset.wind().north(), 1e-9);
  }
}
