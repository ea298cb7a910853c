package io.github.ringstate.pilot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.Wind;
import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.AtSeaLevel;
import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.Map;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where the phases of the techniques end, what they command, and what a pilot sees of a craft. */
class PhasesAndEyesTest {

  private static double degrees(double angle) {
    return Math.toRadians(angle);
  }

  private static Phase phase(Recovery recovery, int index) {
    return recovery.phases().get(index);
  }

  private static Controls commanded(Phase phase, Map<String, Double> shown) {
    Controls controls = new Controls();
    phase.command(Seen.of(shown), controls);
    return controls;
  }

  /** By the standard numbers: half of 15 deg from the attitude of the hover, and 8 kt. */
  @ParameterizedTest
  @CsvSource({"7.6, 8.1, true", "7.4, 8.1, false", "7.6, 7.9, false"})
  void powerComesBackOnceTheNoseIsHalfDownAndTheCraftMovesAhead(
      double lowered, double knots, boolean ended) {
    Map<String, Double> shown =
        Map.of(
            "hoverPitch", degrees(3),
            "pitch", degrees(3 - lowered),
            "forwardAirspeed", Unit.KNOT.toSi(knots));
    assertEquals(ended, phase(new Forward(), 0).end(Seen.of(shown)) > 0);
  }

  /** By the standard numbers: 24 kt ahead, 45 kt in the glide, 16 kt to the tail rotor's side. */
  @Test
  void aWayOutEndsAtItsAirspeed() {
    for (double beyond : new double[] {-0.1, 0.1}) {
      Cockpit climb = Seen.of(Map.of("forwardAirspeed", Unit.KNOT.toSi(24 + beyond)));
      assertEquals(beyond > 0, phase(new Forward(), 1).end(climb) > 0);
      Cockpit glide = Seen.of(Map.of("forwardAirspeed", Unit.KNOT.toSi(45 + beyond)));
      assertEquals(beyond > 0, phase(new Autorotation(), 0).end(glide) > 0);
      for (double push : new double[] {-1, 1}) {
        double speed = push * Unit.KNOT.toSi(16 + beyond);
        Cockpit side = Seen.of(Map.of("tailPush", push, "sidewaysAirspeed", speed));
        assertEquals(beyond > 0, phase(new Lateral(), 0).end(side) > 0);
      }
    }
    for (Technique technique : Technique.ALL) {
      List<Phase> phases = technique.standard().phases();
      assertTrue(phases.get(phases.size() - 1).end(Seen.of(Map.of())) < 0, technique.name());
    }
  }

  /** Attitudes are those of the hover and the technique's angle more or less. */
  @Test
  void attitudesAreMeasuredFromTheHover() {
    Map<String, Double> shown = Map.of("hoverPitch", degrees(3), "hoverBank", degrees(-2));
    assertEquals(degrees(-12), commanded(phase(new Forward(), 0), shown).pitch(), 1e-12);
    assertEquals(degrees(-12), commanded(phase(new Forward(), 1), shown).pitch(), 1e-12);
    assertEquals(degrees(3), commanded(phase(new Forward(), 2), shown).pitch(), 1e-12);
    assertEquals(degrees(-9), commanded(phase(new Autorotation(), 0), shown).pitch(), 1e-12);
    assertEquals(degrees(15), commanded(phase(new Autorotation(), 1), shown).pitch(), 1e-12);
    assertEquals(degrees(-2), commanded(phase(new CollectiveOnly(), 0), shown).bank(), 1e-12);
    // against a drift to the right the craft is banked to the left
    Drift drift = new Drift(0.02, 0.15);
    Cockpit drifting = Seen.of(Map.of("sidewaysGroundSpeed", 2.0));
    assertEquals(degrees(5) - 0.04, drift.bank(drifting, degrees(5)), 1e-12);
  }

  /** By the standard gains: 0.6 rad for each part above 1.05 in the glide, 2 rad below 0.97. */
  @Test
  void theCollectiveKeepsTheRotorSpeedInAnAutorotation() {
    Autorotation down = new Autorotation();
    double slow = commanded(phase(down, 0), Map.of("rotorSpeed", 0.9)).collective();
    double fast = commanded(phase(down, 0), Map.of("rotorSpeed", 1.15)).collective();
    assertEquals(0.6 * 0.1, fast - slow, 1e-3);
    double kept = commanded(phase(down, 1), Map.of("rotorSpeed", 1.1)).collective();
    double droop = commanded(phase(down, 1), Map.of("rotorSpeed", 0.87)).collective();
    assertEquals(-2 * 0.1, droop - kept, 2e-3);
  }

  /** Where the power is as wanted, the lever stays; where it is less, the lever is raised. */
  @ParameterizedTest
  @ValueSource(doubles = {0.5, 0.8, 1.2})
  void theLeverStaysAtThePowerThatIsPulled(double share) {
    Recovery pulled = Technique.COLLECTIVE.with(CollectiveOnly.POWER, 80);
    Map<String, Double> shown =
        Map.of("collective", 0.2, "takeOffPower", 1.3, "power", share * 1.3);
    double lever = commanded(phase(pulled, 0), shown).collective();
    assertEquals(Math.signum(0.8 - share), Math.signum(Math.rint(1e9 * (lever - 0.2))));
  }

  /** Half way in, half of the movement is made, from where the control is. */
  @Test
  void aHandThatComesInLaterIsHalfWayInTheMiddle() {
    double half = 1 + Hands.COMING_IN.standard() / 2;
    Recovery late = Technique.FORWARD.with(Hands.COLLECTIVE_LATER, 1);
    double reduction = Math.toRadians(Forward.COLLECTIVE_REDUCTION.standard());
    Map<String, Double> shown =
        Map.of("sinceTechniqueBegan", half, "collective", 0.2, "heldCollective", 0.2);
    assertEquals(0.2 - reduction / 2, commanded(phase(late, 0), shown).collective(), 1e-12);
  }

  /**
   * The distribution function of the beta distribution (3, 3) is a step of the fifth degree whose
   * first two derivatives vanish at both ends.
   */
  @ParameterizedTest
  @ValueSource(doubles = {-9, -2, -1.5, -0.6, 0, 0.3, 1.9, 2, 9})
  void aSwitchGoesOverAsTheBetaDistribution(double quantity) {
    double expected = new BetaDistribution(3, 3).cumulativeProbability((quantity + 2) / 4);
    assertEquals(expected, Switching.share(quantity, 2), 1e-12);
  }

  @Test
  void aSwitchStaysOnItsSideWithinTheDeadBand() {
    Phase below =
        Switching.phases(
                "height",
                Cockpit::height,
                0.5,
                (seen, controls) -> controls.pitch(-0.1, 1),
                (seen, controls) -> controls.pitch(0.1, 1))
            .get(0);
    Phase above = below.instead(Seen.of(Map.of())).get(0);
    Phase again = above.instead(Seen.of(Map.of())).get(0);
    for (double height : new double[] {-0.26, -0.24, 0.24, 0.26}) {
      Cockpit seen = Seen.of(Map.of("height", height));
      assertEquals(height > 0.25, below.end(seen) > 0);
      assertEquals(height < -0.25, above.end(seen) > 0);
      assertEquals(below.end(seen), again.end(seen));
    }
    assertEquals(-0.1, commanded(below, Map.of()).pitch());
    assertEquals(0.1, commanded(above, Map.of()).pitch());
    assertEquals(-0.1, commanded(again, Map.of()).pitch());
  }

  @Test
  void aPhaseThatIsLimitedOrBrokenOffKeepsWhatItHad() {
    Cue never = Cues.of("never", seen -> -5);
    Limited limited = new Limited(new Lateral());
    Phase both = phase(Switched.onCue(limited, never, new Forward()), 0);
    for (double sideways : new double[] {0, 99}) {
      Cockpit seen = Seen.of(Map.of("tailPush", 1.0, "sidewaysAirspeed", sideways));
      double own = phase(new Lateral(), 0).end(seen);
      assertEquals(own, phase(limited, 0).end(seen));
      assertEquals(Math.max(own, -5), both.end(seen));
      assertEquals(phase(limited, 0).limitMargin(seen), both.limitMargin(seen));
      assertTrue(phase(limited, 0).instead(seen).isEmpty() && both.instead(seen).isEmpty());
    }
    assertTrue(phase(limited, 0).ends());
    Recovery waiting = new FirstToFire(List.of(new FirstToFire.Branch(never, new Lateral())));
    List<Phase> branch = phase(new Limited(waiting), 0).instead(Seen.of(Map.of()));
    assertEquals(2, branch.size());
    Map<String, Double> hover = Map.of("tailPush", 3.0, "loadFactor", 1.0);
    assertEquals(degrees(30), commanded(branch.get(0), hover).bank(), 1e-12);
  }

  /** What the instruments and the body tell is what the state and the craft say. */
  @Test
  void aPilotSeesTheStateOfTheCraft() {
    EquationsOfMotion equations = AtSeaLevel.in(new Wind(1, -2), DemoCraft.TRAINER);
    Trim hover = Trim.find(equations, 2, 0);
    PilotView view = PilotView.of(equations, hover);
    double[] state = Trim.find(equations, 3, -2).state(equations, 3, -2);
    double heading = 0.4;
    state[State.UP] = 70;
    state[State.HEADING] = heading;
    state[State.SPEED_NORTH] = 5;
    state[State.SPEED_EAST] = 3;
    state[State.PITCH] += 0.01;
    state[State.BANK] = -0.03;
    state[State.PITCH_RATE] = 0.02;
    state[State.BANK_RATE] = -0.04;
    state[State.INDICATED_VERTICAL_SPEED] = -1.5;
    equations.at(4, state);
    assertTrue(view.sinceRecognition() < 0, "nobody has recognised anything");
    view.begin(5, 0, 0);
    assertTrue(view.sinceRecognition() < 0, "not yet");
    view.begin(4, 1, 2.5);
    assertEquals(0, view.sinceRecognition());
    view.begin(1.5, 1, 2.5);
    assertEquals(2.5, view.sinceRecognition());
    assertEquals(3, view.sinceTechniqueBegan());
    assertEquals(1.5, view.sincePhaseBegan());
    assertEquals(70, view.height());
    assertEquals(state[State.SPEED_UP], view.verticalSpeed());
    assertEquals(-1.5, view.indicatedVerticalSpeed());
    assertEquals(5 * Math.cos(heading) + 3 * Math.sin(heading), view.groundSpeed(), 1e-12);
    assertEquals(3 * Math.cos(heading) - 5 * Math.sin(heading), view.sidewaysGroundSpeed(), 1e-12);
    assertEquals(state[State.PITCH], view.pitch());
    assertEquals(-0.03, view.bank());
    assertEquals(heading, view.heading());
    assertEquals(0.02, view.pitchRate());
    assertEquals(-0.04, view.bankRate());
    assertEquals(state[State.COLLECTIVE], view.heldCollective());
    assertEquals(hover.pitch(), view.hoverPitch());
    assertEquals(hover.bank(), view.hoverBank());
    assertEquals(DemoCraft.TRAINER.si(CraftLimits.MINIMUM_COLLECTIVE), view.minimumCollective());
    // the body feels what is left when the weight is taken off
    double up = view.verticalAcceleration() / StandardAtmosphere.STANDARD_GRAVITY_CGPM_1901;
    assertEquals(1 + up, view.loadFactor(), 0.05);
    assertTrue(view.verticalAcceleration() != 0 && view.roughness() == 0);
  }
}
