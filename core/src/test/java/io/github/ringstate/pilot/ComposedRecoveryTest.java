package io.github.ringstate.pilot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.chance.IndependentStream;
import io.github.ringstate.chance.RandomStream;
import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.pilot.FirstToFire.Branch;
import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.ParameterSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** How techniques are put together of others. */
class ComposedRecoveryTest {

  private static final Cue TIME = Cues.of("time", seen -> seen.sinceRecognition() - 2);
  private static final Cue SINK = Cues.of("sink", seen -> -seen.verticalSpeed() - 3);

  private static Cockpit at(double time, double verticalSpeed) {
    return Seen.of(Map.of("sinceRecognition", time, "verticalSpeed", verticalSpeed));
  }

  private static Phase first(Recovery recovery) {
    return recovery.phases().get(0);
  }

  private static List<String> names(List<Phase> phases) {
    return phases.stream().map(Phase::name).toList();
  }

  private static double pitchOf(Phase phase, Cockpit seen) {
    Controls controls = new Controls();
    phase.command(seen, controls);
    return controls.pitch();
  }

  @Test
  void aSequenceFliesTheFirstUntilTheTimeIsUpAndThenTheSecond() {
    Recovery both = Switched.after(new Forward(), 2, new Lateral());
    assertEquals("forward-then-lateral", both.name());
    assertEquals(names(new Forward().phases()), names(both.phases()));
    Cockpit seen = Seen.of(Map.of("sinceRecognition", 1.0, "forwardAirspeed", 0.0));
    assertEquals(pitchOf(first(new Forward()), seen), pitchOf(first(both), seen));
    Phase last = both.phases().get(2);
    assertTrue(last.ends(), "the last phase of the first leads on");
    assertTrue(last.end(at(1.9, 0)) < 0, "it ends by time alone");
    assertTrue(last.end(at(2.1, 0)) > 0);
    assertEquals(new Lateral().phases().size(), last.instead(at(2.1, 0)).size());
  }

  @Test
  void theFirstIsBrokenOffInWhateverPhaseItIs() {
    Lateral lateral = new Lateral();
    for (Phase phase : Switched.after(new Forward(), 2, lateral).phases()) {
      assertEquals(lateral.phases(), phase.instead(at(2, 0)), phase::name);
    }
    List<Phase> phases = Switched.after(new Forward(), 2, lateral).phases();
    assertEquals(List.of(), phases.get(0).instead(at(1, 0)), "before that they follow each other");
    assertEquals(List.of(), phases.get(1).instead(at(1, 0)));
  }

  @Test
  void aSequenceMayHaveMoreThanTwoMembers() {
    Recovery three =
        Switched.after(
            new NoRecovery(), 1, Switched.onCue(new CollectiveOnly(), SINK, new Forward()));
    assertEquals(List.of("nothing"), names(three.phases()));
    List<Phase> second = first(three).instead(at(1, 0));
    assertEquals(List.of("power"), names(second));
    assertEquals(
        List.of("nose down", "power back", "climb away"), names(second.get(0).instead(at(3, -3))));
  }

  /**
   * What is waited for before a time is broken off like any other phase, and so is what follows.
   */
  @Test
  void aBranchThatHasBegunIsBrokenOffToo() {
    Recovery waiting = new FirstToFire(List.of(new Branch(SINK, new Forward())));
    Recovery both = Switched.after(waiting, 2, new Lateral());
    List<Phase> branch = first(both).instead(at(1, -4));
    assertEquals(names(new Forward().phases()), names(branch));
    assertEquals(names(new Lateral().phases()), names(branch.get(2).instead(at(2, -4))));
  }

  @Test
  void theBranchOfTheCueThatFiresIsFlown() {
    Forward onTime = new Forward();
    Lateral onSink = new Lateral();
    Phase waiting =
        first(new FirstToFire(List.of(new Branch(TIME, onTime), new Branch(SINK, onSink))));
    assertEquals("waiting", waiting.name());
    assertTrue(waiting.end(at(1, -1)) < 0);
    assertTrue(waiting.end(at(1, -4)) > 0);
    assertEquals(onSink.phases(), waiting.instead(at(1, -4)), "sink alone has fired");
    assertEquals(onTime.phases(), waiting.instead(at(3, -1)), "time alone has fired");
    assertEquals(onTime.phases(), waiting.instead(at(2, -90)), "both: the earlier counts");
    assertEquals(
        onSink.phases(), waiting.instead(at(1, -3 + 1e-12)), "neither by a rounding: the nearest");
  }

  @Test
  void waitingHoldsTheControls() {
    Recovery waiting = new FirstToFire(List.of(new Branch(TIME, new Forward())));
    Controls controls = new Controls();
    first(waiting)
        .command(Seen.of(Map.of("pitch", 0.1, "bank", -0.2, "collective", 0.15)), controls);
    assertEquals(0.1, controls.pitch());
    assertEquals(-0.2, controls.bank());
    assertEquals(0.15, controls.collective());
    assertThrows(IllegalArgumentException.class, () -> new FirstToFire(List.of()));
  }

  @Test
  void theLaterHandWaitsFromTheBeginningOfItsOwnTechnique() {
    Recovery late =
        new Forward(
            ParameterSet.standard(Forward.PARAMETERS)
                .with(Hands.COLLECTIVE_LATER, 1)
                .with(Forward.COLLECTIVE_REDUCTION, 4));
    for (double since : new double[] {0.5, 1.5}) {
      Controls controls = new Controls();
      first(late)
          .command(
              Seen.of(
                  Map.of(
                      "sinceRecognition",
                      2 + since,
                      "sinceTechniqueBegan",
                      since,
                      "collective",
                      0.2,
                      "heldCollective",
                      0.2)),
              controls);
      assertEquals(since > 1.2 ? 0.2 - Math.toRadians(4) : 0.2, controls.collective(), 1e-12);
    }
  }

  @Test
  void theEarlierHandMayBeTheOneOnTheCollective() {
    Recovery early = Technique.LATERAL.with(Hands.COLLECTIVE_LATER, -1);
    for (double since : new double[] {0.5, 1.5}) {
      Controls controls = new Controls();
      first(early)
          .command(
              Seen.of(
                  Map.of(
                      "sinceTechniqueBegan",
                      since,
                      "tailPush",
                      1.0,
                      "bank",
                      0.01,
                      "pitch",
                      0.02,
                      "takeOffPower",
                      1.05)),
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
    Pilots pilots = PilotGroups.someWrongAtFirst(0.3, new CollectiveOnly(), 1.5, Technique.LATERAL);
    assertEquals("lateral", pilots.name());
    int n = 5000;
    int wrong = 0;
    for (int i = 0; i < n; i++) {
      if (pilots.draw(new IndependentStream(1, i)) instanceof Switched) {
        wrong++;
      }
    }
    assertEquals(0.3 * n, wrong, 4 * Math.sqrt(n * 0.3 * 0.7));
  }

  @Test
  void nobodyOrEverybodyMayBeWrongAtFirst() {
    for (int i = 0; i < 100; i++) {
      RandomStream draws = new IndependentStream(1, i);
      assertInstanceOf(
          Lateral.class,
          PilotGroups.someWrongAtFirst(0, new NoRecovery(), 1, Technique.LATERAL).draw(draws));
      assertInstanceOf(
          Switched.class,
          PilotGroups.someWrongAtFirst(1, new NoRecovery(), 1, Technique.LATERAL).draw(draws));
    }
    assertThrows(
        IllegalArgumentException.class,
        () -> PilotGroups.someWrongAtFirst(Double.NaN, new NoRecovery(), 1, Technique.LATERAL));
    assertThrows(
        OutOfRangeException.class,
        () -> PilotGroups.someWrongAtFirst(0.5, new NoRecovery(), Double.NaN, Technique.LATERAL));
  }

  @Test
  void theRightPilotIsTheSameWhetherWrongAtFirstOrNot() {
    Recovery atOnce =
        PilotGroups.someWrongAtFirst(0, new NoRecovery(), 1, Technique.LATERAL)
            .draw(new IndependentStream(1, 3));
    Recovery later =
        PilotGroups.someWrongAtFirst(1, new NoRecovery(), 1, Technique.LATERAL)
            .draw(new IndependentStream(1, 3));
    assertEquals(Switched.after(new NoRecovery(), 1, atOnce), later);
  }

  @Test
  void aDeadBandWithoutWidthAndAShareThatIsNoneAreRefused() {
    for (double none : new double[] {0, -1, Double.NaN}) {
      assertThrows(
          IllegalArgumentException.class,
          () ->
              Switching.phases(
                  "x", Cockpit::height, none, (seen, controls) -> {}, (seen, controls) -> {}));
    }
    for (double none : new double[] {-0.1, 1.1, Double.NaN}) {
      assertThrows(
          IllegalArgumentException.class,
          () ->
              PilotGroups.someWrongAtFirst(
                  none,
                  Technique.NONE.standard(),
                  1,
                  PilotGroups.all(Technique.FORWARD.standard())));
    }
  }

  @Test
  void aTechniqueThatIsTakenForAWayOutSaysThatItIsNone() {
    for (Technique technique : Technique.ALL) {
      assertEquals(technique.isMistaken(), technique.shown().contains(Technique.NOT_A_WAY_OUT));
      assertTrue(technique.shown().startsWith(technique.label()));
      assertTrue(!technique.isMistaken() || !technique.wayOut());
    }
    assertTrue(Technique.COLLECTIVE.isMistaken());
  }
}
