package io.github.ringstate.analysis.equilibrium;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.CraftBody;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.RingBand;
import io.github.ringstate.inflow.SmoothMomentum;
import io.github.ringstate.inflow.StabilityBoundInflow;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FoldBoundaryTest {

  /**
   * Without drag, download and side force, and with power to spare, a steady descent has the thrust
   * of the weight, so the collective depends on the total inflow alone and folds where its slope
   * vanishes: the boundary by two ways that share no line of code. The tail arm has a limit, so 0.3
   * deg of bank are left.
   */
  @Test
  void aCraftWithoutBodyFoldsWhereTheInflowDoes() {
    Helicopter bare =
        DemoCraft.UTILITY
            .with(CraftBody.FORWARD_AREA, 0)
            .with(CraftBody.SIDE_AREA, 0)
            .with(CraftBody.UNDERSIDE_AREA, 0)
            .with(CraftBody.DOWNLOAD, 0)
            .with(CraftBody.TAIL_ARM, 30)
            .with(Helicopter.SEA_LEVEL_POWER, 1200)
            .with(Helicopter.TAKE_OFF_POWER, 1200);
    DescentCase descents = DescentCase.of(bare);
    FoldBoundary boundary = FoldBoundary.of(descents).orElseThrow();
    HeaveDamping slope = new HeaveDamping(descents.inflow());
    for (Equilibrium fold : boundary.folds()) {
      assertEquals(0, slope.margin(fold.edgewise(), fold.axial()), 2e-3);
    }
    Equilibrium widest = boundary.widest().orElseThrow();
    assertEquals(slope.reach().orElseThrow(), widest.edgewise(), 1e-3);
    for (double airspeed : new double[] {0, 2, 4, 6}) {
      List<Equilibrium> folds =
          EquilibriumCurve.againstCollective(descents.withAirspeed(airspeed)).folds();
      RingBand band = slope.bands(folds.get(0).edgewise()).get(0);
      assertEquals(band.onset(), folds.get(0).axial(), 1e-3);
      RingBand exit = slope.bands(folds.get(1).edgewise()).get(0);
      assertEquals(exit.exit().orElseThrow(), folds.get(1).axial(), 1e-3);
    }
  }

  /** The whole craft has a smaller region than its inflow. */
  @Test
  void theBoundaryOfAWholeCraftIsClosedAndLiesInsideThatOfTheInflow() {
    DescentCase descents = DescentCase.of(DemoCraft.HEAVY);
    FoldBoundary boundary = FoldBoundary.of(descents).orElseThrow();
    List<Equilibrium> ends = EquilibriumCurve.againstCollective(descents).folds();
    List<Equilibrium> folds = boundary.folds();
    assertEquals(ends.get(0).axial(), folds.get(0).axial(), 1e-7);
    assertEquals(ends.get(1).axial(), folds.get(folds.size() - 1).axial(), 1e-3);
    HeaveDamping slope = new HeaveDamping(descents.inflow());
    for (Equilibrium fold : folds) {
      assertTrue(slope.margin(fold.edgewise(), fold.axial()) < 0);
    }
    assertTrue(boundary.widest().orElseThrow().edgewise() < slope.reach().orElseThrow());
  }

  /** From a forward flight on the boundary is the same as from the hover, and ends there. */
  @Test
  void theBoundaryBeginsAndEndsAtTheAirspeedThatIsAsked() {
    DescentCase hover = DescentCase.of(DemoCraft.HEAVY);
    FoldBoundary boundary = FoldBoundary.of(hover.withAirspeed(3)).orElseThrow();
    List<Equilibrium> folds = boundary.folds();
    assertEquals(3, folds.get(0).airspeed(), 1e-9);
    assertEquals(
        EquilibriumCurve.againstCollective(hover.withAirspeed(3)).folds().get(0).axial(),
        folds.get(0).axial(),
        1e-7);
    for (int i = 1; i < folds.size() - 1; i++) {
      assertTrue(folds.get(i).airspeed() > 3);
    }
    double last = folds.get(folds.size() - 1).airspeed();
    assertTrue(last <= 3 && last > 3 - 0.051 * hover.equations().hoverInduced(), "ends at " + last);
    Equilibrium widest = FoldBoundary.of(hover).orElseThrow().widest().orElseThrow();
    assertEquals(widest.edgewise(), boundary.widest().orElseThrow().edgewise(), 1e-6);
  }

  /** Momentum theory, smoothed, is damped everywhere. */
  @Test
  void withoutAFoldOfTheInflowThereIsNoBoundaryAndNoLoop() {
    DescentCase utility = DescentCase.of(DemoCraft.UTILITY);
    DescentCase damped =
        new DescentCase(utility.craft(), utility.air(), SmoothMomentum.standard(), 0);
    assertTrue(FoldBoundary.of(damped).isEmpty());
    assertTrue(HysteresisLoop.fly(damped, 0.01).isEmpty());
    assertTrue(
        EquilibriumCurve.againstCollective(damped).points().stream().allMatch(Equilibrium::stable));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN})
  void aRotorThatDoesNotTurnIsNoDescent(double speed) {
    DescentEquations equations =
        new DescentEquations(DescentCase.of(DemoCraft.UTILITY), 0, Varied.COLLECTIVE);
    double[] place = equations.levelFlight();
    place[4] = speed;
    assertThrows(IllegalArgumentException.class, () -> equations.value(place));
  }

  /** The two folds of this model do not meet smoothly: they cease where its extension does. */
  @Test
  void foldsThatMeetAtACornerEndTheCurveThere() {
    DescentCase utility = DescentCase.of(DemoCraft.UTILITY);
    StabilityBoundInflow cornered = StabilityBoundInflow.standard();
    FoldBoundary boundary =
        FoldBoundary.of(new DescentCase(utility.craft(), utility.air(), cornered, 0)).orElseThrow();
    assertTrue(boundary.widest().isEmpty());
    List<Equilibrium> folds = boundary.folds();
    assertEquals(
        cornered.numbers().get(StabilityBoundInflow.CLOSED_EDGEWISE),
        folds.get(folds.size() - 1).edgewise(),
        1e-3);
  }
}
