package io.github.ringstate.pilot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.pilot.FirstToFire.Branch;
import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.ParameterSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** How techniques are put together of others. */
class ComposedRecoveryTest {

  private static final Cue TIME = Cue.of("time", seen -> seen.sinceRecognition() - 2);
  private static final Cue SINK = Cue.of("sink", seen -> -seen.verticalSpeed() - 3);

  private static Cockpit at(double time, double verticalSpeed) {
    return Seen.of(Map.of("sinceRecognition", time, "verticalSpeed", verticalSpeed));
  }

  private static double pitchOf(Recovery recovery, int phase, Cockpit seen) {
    Controls controls = new Controls();
    recovery.command(phase, seen, controls);
    return controls.pitch();
  }

  @Test
  void aSequenceFliesTheFirstUntilTheTimeIsUpAndThenTheSecond() {
    Recovery both = Switched.after(new Forward(), 2, new Lateral());
    assertEquals("forward-then-lateral", both.name());
    assertEquals(
        List.of("nose down", "power back", "climb away", "bank out", "level"), both.phases());
    Cockpit seen = Seen.of(Map.of("sinceRecognition", 1.0, "forwardAirspeed", 0.0));
    assertEquals(pitchOf(new Forward(), 0, seen), pitchOf(both, 0, seen));
    assertEquals(pitchOf(new Lateral(), 1, seen), pitchOf(both, 4, seen));
    assertTrue(both.phaseEnd(2, at(1.9, 0)) < 0, "the last phase of the first ends by time alone");
    assertTrue(both.phaseEnd(2, at(2.1, 0)) > 0);
  }

  @Test
  void theFirstIsBrokenOffInWhateverPhaseItIs() {
    Recovery both = Switched.after(new Forward(), 2, new Lateral());
    assertEquals(3, both.next(0, at(2, 0)));
    assertEquals(3, both.next(1, at(2, 0)));
    assertEquals(3, both.next(2, at(2, 0)));
    assertEquals(1, both.next(0, at(1, 0)), "before that its own phases follow each other");
    assertEquals(4, both.next(3, at(9, 0)), "and afterwards those of the second");
  }

  @Test
  void aSequenceMayHaveMoreThanTwoMembers() {
    Recovery three =
        Switched.after(
            new NoRecovery(), 1, Switched.onCue(new CollectiveOnly(), SINK, new Forward()));
    assertEquals(
        List.of("nothing", "power", "nose down", "power back", "climb away"), three.phases());
    assertEquals(1, three.next(0, at(1, 0)));
    assertEquals(2, three.next(1, at(3, -3)));
    assertEquals(3, three.next(2, at(3, -3)));
  }

  @Test
  void theBranchOfTheCueThatFiresIsFlown() {
    Recovery first =
        new FirstToFire(List.of(new Branch(TIME, new Forward()), new Branch(SINK, new Lateral())));
    assertEquals(
        List.of("waiting", "nose down", "power back", "climb away", "bank out", "level"),
        first.phases());
    assertTrue(first.phaseEnd(0, at(1, -1)) < 0);
    assertTrue(first.phaseEnd(0, at(1, -4)) > 0);
    assertEquals(4, first.next(0, at(1, -4)), "sink alone has fired");
    assertEquals(1, first.next(0, at(3, -1)), "time alone has fired");
    assertEquals(1, first.next(0, at(2, -90)), "both have: the earlier in the list counts");
    assertEquals(4, first.next(0, at(1, -3 + 1e-12)), "neither has by a rounding: the nearest");
    assertEquals(2, first.next(1, at(3, 0)));
    assertEquals(5, first.next(4, at(3, 0)));
    assertTrue(first.phaseEnd(3, at(99, 0)) < 0, "the last phase of a branch does not end");
    assertEquals(pitchOf(new Lateral(), 1, at(1, -4)), pitchOf(first, 5, at(1, -4)));
  }

  @Test
  void waitingHoldsTheControls() {
    Recovery first = new FirstToFire(List.of(new Branch(TIME, new Forward())));
    Controls controls = new Controls();
    first.command(0, Seen.of(Map.of("pitch", 0.1, "bank", -0.2, "collective", 0.15)), controls);
    assertEquals(0.1, controls.pitch());
    assertEquals(-0.2, controls.bank());
    assertEquals(0.15, controls.collective());
    assertThrows(IllegalArgumentException.class, () -> new FirstToFire(List.of()));
  }

  /** A technique that begins after another counts its order of steps from its own beginning. */
  @Test
  void theLaterHandWaitsFromTheBeginningOfItsOwnTechnique() {
    Recovery late =
        new Forward(
            ParameterSet.standard(Forward.PARAMETERS)
                .with(Forward.COLLECTIVE_LATER, 1)
                .with(Forward.COLLECTIVE_REDUCTION, 4));
    Recovery both = Switched.after(new CollectiveOnly(), 2, late);
    for (double since : new double[] {0.5, 1.5}) {
      Cockpit seen =
          Seen.of(
              Map.of(
                  "sinceRecognition", 2 + since,
                  "phase", 1.0,
                  "sincePhase", since,
                  "collective", 0.2,
                  "hoverCollective", 0.2));
      Controls controls = new Controls();
      both.command(1, seen, controls);
      assertEquals(since > 1.2 ? 0.2 - Math.toRadians(4) : 0.2, controls.collective(), 1e-12);
    }
  }

  @Test
  void theEarlierHandMayBeTheOneOnTheCollective() {
    Recovery early =
        new Lateral(ParameterSet.standard(Lateral.PARAMETERS).with(Lateral.COLLECTIVE_LATER, -1));
    for (double since : new double[] {0.5, 1.5}) {
      Controls controls = new Controls();
      early.command(
          0,
          Seen.of(Map.of("sincePhase", since, "tailPush", 1.0, "bank", 0.01, "pitch", 0.02)),
          controls);
      boolean moves = since > 1.2;
      assertEquals(moves ? Math.toRadians(15) : 0.01, controls.bank(), 1e-12);
      assertEquals(moves ? 0 : 0.02, controls.pitch(), 1e-12);
      assertTrue(controls.collective() > 0);
    }
  }

  /** Source: the binomial distribution; four standard deviations of the count. */
  @Test
  void theShareOfPilotsFollowsTheWrongInstinctFirst() {
    Pilots pilots = Pilots.someWrongAtFirst(0.3, new CollectiveOnly(), 1.5, Technique.LATERAL);
    assertEquals("lateral", pilots.name());
    int n = 5000;
    int wrong = 0;
    for (int i = 0; i < n; i++) {
      if (pilots.draw(new Draws(1, i)) instanceof Switched) {
        wrong++;
      }
    }
    assertEquals(0.3 * n, wrong, 4 * Math.sqrt(n * 0.3 * 0.7));
  }

  @Test
  void nobodyOrEverybodyMayBeWrongAtFirst() {
    for (int i = 0; i < 100; i++) {
      Draws draws = new Draws(1, i);
      assertInstanceOf(
          Lateral.class,
          Pilots.someWrongAtFirst(0, new NoRecovery(), 1, Technique.LATERAL).draw(draws));
      assertInstanceOf(
          Switched.class,
          Pilots.someWrongAtFirst(1, new NoRecovery(), 1, Technique.LATERAL).draw(draws));
    }
    assertThrows(
        IllegalArgumentException.class,
        () -> Pilots.someWrongAtFirst(Double.NaN, new NoRecovery(), 1, Technique.LATERAL));
    assertThrows(
        OutOfRangeException.class,
        () -> Pilots.someWrongAtFirst(0.5, new NoRecovery(), Double.NaN, Technique.LATERAL));
  }

  @Test
  void theRightPilotIsTheSameWhetherWrongAtFirstOrNot() {
    Controls atOnce = new Controls();
    Controls later = new Controls();
    Cockpit seen = Seen.of(Map.of("tailPush", 1.0, "phase", 1.0, "sincePhase", 9.0));
    Pilots.someWrongAtFirst(0, new NoRecovery(), 1, Technique.LATERAL)
        .draw(new Draws(1, 3))
        .command(0, seen, atOnce);
    Pilots.someWrongAtFirst(1, new NoRecovery(), 1, Technique.LATERAL)
        .draw(new Draws(1, 3))
        .command(1, seen, later);
    assertEquals(atOnce.bank(), later.bank());
    assertEquals(atOnce.bankRate(), later.bankRate());
  }
}
