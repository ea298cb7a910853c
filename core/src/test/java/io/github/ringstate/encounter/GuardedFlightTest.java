package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.WindField;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.BadCommandException;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.ThrustDisturbance;
import io.github.ringstate.inflow.BoundaryCriterion;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.RingBand;
import io.github.ringstate.inflow.SmoothMomentum;
import io.github.ringstate.integrate.Event.Crossing;
import io.github.ringstate.pilot.ControlLaw;
import io.github.ringstate.pilot.Cues;
import io.github.ringstate.pilot.Phase;
import io.github.ringstate.pilot.Phases;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.pilot.Switching;
import io.github.ringstate.quantity.NotFiniteException;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a user plugs in can neither keep a flight busy for ever nor slip in what is no number. */
class GuardedFlightTest {

  private static final Encounter ENCOUNTER = Encounter.of(DemoCraft.TRAINER).withDelay(1);
  private static final FlightLimits SMALL =
      FlightLimits.STANDARD.with(FlightLimits.EVALUATIONS, 20_000);

  /** A recovery of one law. */
  private static Recovery one(String name, ControlLaw law) {
    return new Phases(name, List.of(Phase.last("all along", law)));
  }

  private static final ControlLaw FULL = (seen, controls) -> controls.collective(1, 0.1);
  private static final ControlLaw DOWN = (seen, controls) -> controls.collective(0, 0.1);

  private static final Recovery BANG_BANG =
      one("bang-bang", (seen, controls) -> controls.collective(seen.power() < 1 ? 1 : 0, 0.1));

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  @Timeout(20)
  void aLawThatSwitchesForEverIsGivenUpWithTimePhaseAndRecovery(boolean precise) {
    Encounter encounter = ENCOUNTER.withRecovery(BANG_BANG).withLimits(SMALL);
    Approach approach = Approach.fly(encounter, Simulator.fast());
    UnfinishedFlightException given =
        assertThrows(
            UnfinishedFlightException.class,
            () -> {
              if (precise) {
                encounter.fly();
              } else {
                new BulkFlight(approach).fly(encounter.recovery(), encounter.recognition());
              }
            });
    assertEquals("all along", given.phase());
    assertTrue(given.flown().contains("bang-bang"), given.flown());
    assertTrue(given.time() > approach.time() + 1, given.time() + " s");
    assertTrue(given.getMessage().contains("'all along'"), given.getMessage());
  }

  /** A number of evaluations and not a time: the same on any machine, kept approach or not. */
  @Test
  void theBudgetIsUsedUpAtTheSameInstantEachTime() {
    Encounter encounter = ENCOUNTER.withRecovery(BANG_BANG).withLimits(SMALL);
    BulkFlight flight = new BulkFlight(Approach.fly(encounter, Simulator.fast()));
    double[] times = new double[3];
    for (int i = 0; i < times.length; i++) {
      times[i] =
          assertThrows(
                  UnfinishedFlightException.class,
                  () -> flight.fly(encounter.recovery(), encounter.recognition()))
              .time();
    }
    assertEquals(1, Arrays.stream(times).distinct().count());
  }

  /** Two ways of doing the same: through the smooth switch and through located events. */
  @Test
  void aSwitchThatIsSmoothOrAnEventIsFlown() {
    Recovery smooth =
        one(
            "smooth",
            (seen, controls) ->
                controls.collective(0.3 * Switching.share(1 - seen.power(), 0.03), 0.1));
    Recovery events =
        new Phases(
            "events",
            Switching.phases(
                "power held",
                seen -> seen.power() - 1,
                0.02,
                (seen, controls) -> controls.collective(0.3, 0.1),
                DOWN));
    Encounter encounter =
        ENCOUNTER.withLimits(FlightLimits.STANDARD.with(FlightLimits.RECOVERY_TIME, 10));
    for (Recovery recovery : List.of(smooth, events)) {
      RecordedFlight flight = encounter.withRecovery(recovery).record(Simulator.fast());
      double recognised = flight.outcome().onsetTime().orElseThrow() + 1;
      for (Instant instant : flight.history().sampled(0.1)) {
        if (instant.time() > recognised + 2) {
          assertEquals(1, instant.get(FlightQuantity.POWER), 0.06, recovery.name());
        }
      }
    }
  }

  /** Closed form: 0, 1/2 and 1, and the polynomial at a quarter: 10/64 - 15/256 + 6/1024. */
  @Test
  void theSmoothSwitchGoesFromNothingToAll() {
    assertEquals(0, Switching.share(-2, 1));
    assertEquals(0.5, Switching.share(0, 1));
    assertEquals(1, Switching.share(1, 1));
    assertEquals(10 / 64.0 - 15 / 256.0 + 6 / 1024.0, Switching.share(-0.5, 1), 1e-15);
    assertThrows(IllegalArgumentException.class, () -> Switching.share(0, 0));
  }

  @Test
  @Timeout(20)
  void aJumpInTheWindIsFlownThroughAndOneWithoutEndIsGivenUp() {
    WindField gate =
        (time, north, east, up, air) -> {
          air[0] = time > 3 ? 5 : 2;
          air[1] = 0;
          air[2] = 0;
        };
    assertTrue(ENCOUNTER.withWind(gate).fly().altitudeLoss().isPresent());
    WindField trembling =
        (time, north, east, up, air) -> {
          air[0] = 4 + (((long) (time * 1e7)) % 2);
          air[1] = 0;
          air[2] = 0;
        };
    UnfinishedFlightException given =
        assertThrows(
            UnfinishedFlightException.class,
            () -> ENCOUNTER.withWind(trembling).withLimits(SMALL).fly());
    assertEquals("entry", given.phase());
    assertTrue(given.flown().contains("tailwind-approach"), given.flown());
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  @Timeout(20)
  void anInterruptionEndsAFlightAndTheThreadStaysInterrupted(boolean precise) {
    Encounter encounter =
        ENCOUNTER.withRecovery(
            one(
                "interrupted",
                (seen, controls) -> {
                  if (seen.sinceRecognition() > 0.5) {
                    Thread.currentThread().interrupt();
                  }
                }));
    Simulator simulator = precise ? Simulator.precise() : Simulator.fast();
    assertThrows(CancellationException.class, () -> encounter.fly(simulator, null));
    assertTrue(Thread.interrupted());
  }

  /** Something that is no number, and the name that has to be in the message. */
  record Part(String name, Encounter encounter) {
    @Override
    public String toString() {
      return name;
    }
  }

  /** An entry of one's own. */
  record OwnEntry(double height) implements Entry {
    @Override
    public String name() {
      return "own-entry";
    }

    @Override
    public WindField wind() {
      return new Settling().wind();
    }

    @Override
    public Start start(EquationsOfMotion motion) {
      Start start = new Settling().start(motion);
      double[] state = start.state().clone();
      state[2] += height;
      return new Start(state, start.law());
    }
  }

  /** An inflow of one's own, which may go wrong in a descent. */
  record OwnInflow(double induced, double share) implements InflowModel {
    private static final SmoothMomentum BASE = SmoothMomentum.standard();

    @Override
    public String name() {
      return "own-inflow";
    }

    @Override
    public double induced(double edgewise, double axial) {
      return axial < -0.3 ? BASE.induced(edgewise, axial) + induced : BASE.induced(edgewise, axial);
    }

    @Override
    public double slope(double edgewise, double axial) {
      return BASE.slope(edgewise, axial);
    }

    @Override
    public double lossShare(double edgewise, double axial) {
      return axial < -0.3 ? share : 0;
    }
  }

  /** A boundary of one's own. */
  record OwnBoundary(double wrong) implements BoundaryCriterion {
    @Override
    public String name() {
      return "own-boundary";
    }

    @Override
    public double margin(double edgewise, double axial) {
      return axial + 0.4 + wrong;
    }

    @Override
    public List<RingBand> bands(double edgewise) {
      return List.of();
    }

    @Override
    public OptionalDouble reach() {
      return OptionalDouble.empty();
    }
  }

  /** A shaking of one's own. */
  record OwnShaking(double factor) implements ThrustDisturbance {
    @Override
    public double factor(double time, double edgewise, double axial) {
      return time > 1 ? factor : 1;
    }

    @Override
    public double roughness(double edgewise, double axial) {
      return 0;
    }
  }

  /** A wind of one's own. */
  record OwnWind(double later) implements WindField {
    @Override
    public void velocity(double time, double north, double east, double height, double[] result) {
      result[0] = 4;
      result[1] = 0;
      result[2] = time > 2 ? later : 0;
    }
  }

  /** A wind of one's own that is wrong where the entry is trimmed. */
  record OwnStartingWind(double speed) implements WindField {
    @Override
    public void velocity(double time, double north, double east, double height, double[] result) {
      result[0] = speed;
      result[1] = 0;
      result[2] = 0;
    }
  }

  static Stream<Part> parts() {
    return Stream.of(Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY)
        .flatMap(GuardedFlightTest::parts);
  }

  private static Stream<Part> parts(double wrong) {
    Recovery endless =
        new Phases(
            "own-recovery",
            List.of(Phase.of("first", FULL, seen -> wrong), Phase.last("then", DOWN)));
    OwnInflow good = new OwnInflow(0, 0);
    return Stream.of(
        new Part("own-recovery", ENCOUNTER.withRecovery(endless)),
        new Part(
            "own-command",
            ENCOUNTER.withRecovery(
                one("own-command", (seen, controls) -> controls.bank(wrong, 0.1)))),
        new Part(
            "own-cue",
            ENCOUNTER.withRecognition(Recognition.afterCue(Cues.of("own-cue", seen -> wrong), 1))),
        new Part("OwnWind[later=" + wrong + "]", ENCOUNTER.withWind(new OwnWind(wrong))),
        new Part("OwnStartingWind", ENCOUNTER.withWind(new OwnStartingWind(wrong))),
        new Part("OwnShaking", ENCOUNTER.withShaking(new OwnShaking(wrong))),
        new Part("OwnInflow", ENCOUNTER.withInflow(new OwnInflow(wrong, 0), new OwnBoundary(0))),
        new Part("OwnInflow", ENCOUNTER.withInflow(new OwnInflow(0, wrong), new OwnBoundary(0))),
        new Part("OwnBoundary", ENCOUNTER.withInflow(good, new OwnBoundary(wrong))),
        new Part("own-entry", ENCOUNTER.withEntry(new OwnEntry(wrong))),
        new Part(
            "own-event",
            ENCOUNTER.withEvents(FlightEvent.note("own-event", Crossing.RISING, seen -> wrong))));
  }

  @ParameterizedTest
  @MethodSource("parts")
  void whatIsNoNumberIsRefusedWithTheNameOfThePart(Part part) {
    for (Simulator simulator : List.of(Simulator.dormandPrince(1e-5), Simulator.fast())) {
      IllegalArgumentException refused =
          assertThrows(IllegalArgumentException.class, () -> part.encounter().fly(simulator, null));
      assertTrue(
          refused instanceof NotFiniteException || refused instanceof BadCommandException,
          refused.toString());
      assertTrue(refused.getMessage().contains(part.name()), refused.getMessage());
    }
  }

  @Test
  void partsOfOnesOwnThatGiveNumbersAreFlown() {
    assertTrue(
        ENCOUNTER
            .withEntry(new OwnEntry(0))
            .withInflow(new OwnInflow(0.1, 0.5), new OwnBoundary(0))
            .withShaking(new OwnShaking(1.01))
            .withWind(new OwnWind(0.2))
            .fly()
            .altitudeLoss()
            .isPresent());
    Encounter own = ENCOUNTER.withEntry(new OwnEntry(0));
    assertEquals(
        ENCOUNTER.withEntry(new Settling()).fly().altitudeLoss(), own.fly().altitudeLoss());
    assertEquals(
        new HeaveDamping(ENCOUNTER.inflow()), own.boundary(), "the boundary stays as it was");
  }
}
