package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.TabulatedInflow;
import io.github.ringstate.pilot.Cockpit;
import io.github.ringstate.pilot.ControlLaw;
import io.github.ringstate.pilot.Phase;
import io.github.ringstate.pilot.Recovery;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A flight ends where its rotor has slowed to half of its speed: below, the blades stall. */
class SlowRotorTest {

  private static final Encounter TRAINER = Encounter.of(DemoCraft.TRAINER);

  /**
   * Where the wind depends on height, starts are tried at other heights than that of the encounter.
   * This one has its start 2 m above the ground, in 30 kt; tried from 258 m, in more than twice as
   * much, it stops the rotor.
   */
  @Test
  void aStartThatIsOnlyTriedMayStopTheRotor() {
    RingStateInflow model = RingStateInflow.standard();
    Encounter encounter =
        DrawnEncounter.disturbed(244_851)
            .withInflow(new TabulatedInflow(model), new HeaveDamping(model));
    assertEquals(Outcome.NO_ONSET, encounter.fly(Simulator.fast(), null));
  }

  @Test
  void anEntryThatStopsTheRotorIsRefusedInOneSentence() {
    Encounter encounter = TRAINER.withEntry(new Own(1, SlowRotorTest::headlong));
    for (Simulator simulator : List.of(Simulator.fast(), Simulator.precise())) {
      String message =
          assertThrows(NoSteadyFlightException.class, () -> encounter.fly(simulator, null))
              .getMessage();
      assertTrue(
          message.matches(
              "the rotor of trainer slows to half of its speed [0-9]+ s into the entry of-tests,"
                  + " before the ring state: the engine does not carry the craft there"),
          message);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 4})
  void aDescentInWhichTheRotorStopsEndsThereAndIsNotArrested(double delay) {
    Encounter encounter = TRAINER.withRecovery(new Headlong(false)).withDelay(delay);
    Outcome outcome = encounter.fly();
    assertEquals(Ending.NOT_ARRESTED, outcome.ending());
    List<Occurrence> told = outcome.occurrences();
    assertEquals(EventKind.ROTOR_TOO_SLOW, told.get(told.size() - 1).kind());
    List<Double> speeds = Samples.of(encounter, 0.02, Motion::rotorSpeed);
    assertEquals(0.5, speeds.get(speeds.size() - 1), 0.01); // the last sample before the end
    assertTrue(speeds.stream().allMatch(speed -> speed > 0.5 - 1e-6));
    assertEquals(
        Ending.NOT_ARRESTED,
        new BulkFlight(Approach.fly(encounter, Simulator.fast()))
            .fly(encounter.recovery(), encounter.recognition()));
  }

  /** It is flown on past its arrest, and only then stops its rotor. */
  @Test
  void anArrestStandsWhateverTheRotorDoesPastIt() {
    Encounter encounter = TRAINER.withRecovery(new Headlong(true));
    Outcome arrested = encounter.fly();
    Outcome past =
        encounter.withLimits(FlightLimits.STANDARD.with(FlightLimits.TIME_PAST_ARREST, 120)).fly();
    assertEquals(Ending.ARRESTED, past.ending());
    assertEquals(arrested.altitudeLoss(), past.altitudeLoss());
    assertTrue(past.happened(EventKind.ROTOR_TOO_SLOW), () -> "" + past);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, 0.5})
  void anEntryOfOnesOwnHasToStartWithMoreThanHalfOfTheSpeed(double share) {
    double nominal = TRAINER.craft().rotor().nominalSpeed();
    Encounter slow = TRAINER.withEntry(new Own(share, null));
    assertEquals(
        "the entry of-tests starts with the rotor at "
            + share * nominal
            + " rad/s; allowed: above "
            + nominal / 2
            + ", half of its nominal speed",
        assertThrows(IllegalArgumentException.class, slow::fly).getMessage());
    assertTrue(TRAINER.withEntry(new Own(0.51, null)).fly().happened(EventKind.ONSET));
  }

  /** Nose 29 degrees down and much collective, which asks for several times the power there is. */
  private static void headlong(Cockpit seen, Controls controls) {
    controls.pitch(-0.5, 1);
    controls.collective(0.25, 1);
  }

  /** Does so at once, or once away and climbing. */
  private record Headlong(boolean later) implements Recovery {

    @Override
    public String name() {
      return "headlong";
    }

    @Override
    public List<Phase> phases() {
      Phase last = Phase.last("headlong", SlowRotorTest::headlong);
      return later
          ? List.of(Phase.of("away", Headlong::away, seen -> seen.forwardAirspeed() - 25), last)
          : List.of(last);
    }

    private static void away(Cockpit seen, Controls controls) {
      controls.pitch(seen.hoverPitch() - 0.15, 0.2);
      controls.collective(seen.collective() + 0.08 * (1 - seen.power()), 0.1);
    }
  }

  /** Settles, with the rotor at a share of its nominal speed and a law of its own if it has one. */
  private record Own(double share, @Nullable ControlLaw law) implements Entry {

    @Override
    public String name() {
      return "of-tests";
    }

    @Override
    public WindField wind() {
      return Wind.CALM;
    }

    @Override
    public Start start(EquationsOfMotion motion) {
      Start start = new Settling().start(motion);
      double[] state = start.state().clone();
      state[State.ROTOR_SPEED] *= share;
      return new Start(state, law == null ? start.law() : law);
    }
  }
}
