package io.github.ringstate.craft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.UncertainNumbers;
import java.util.List;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;

class FittedModelTest {

  private static final Helicopter CRAFT = DemoCraft.TRAINER;

  private static FittedModel fitted(int encounters, double variance, Parameter... parameters) {
    int size = parameters.length;
    double[] mean = new double[size];
    double[][] covariance = new double[size][size];
    for (int i = 0; i < size; i++) {
      Parameter parameter = parameters[i];
      mean[i] =
          UncertainNumbers.logit(
              parameter,
              RingStateInflow.PARAMETERS.contains(parameter)
                  ? RingStateInflow.standard().numbers().get(parameter)
                  : CRAFT.numbers().get(parameter));
      covariance[i][i] = variance;
    }
    return new FittedModel(
        RingStateInflow.standard().numbers(),
        new UncertainNumbers(List.of(parameters), mean, covariance),
        encounters,
        List.of("invented"),
        "none",
        "none",
        0.3);
  }

  @Test
  void aFitOfNothingOrOfNumbersThatAreNotTheCraftsIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> fitted(0, 1, RingStateInflow.EXIT_TOTAL));
    Parameter ofPilot = Forward.PARAMETERS.get(0);
    UncertainNumbers other =
        new UncertainNumbers(List.of(ofPilot), new double[1], new double[][] {{1}});
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                new FittedModel(
                    RingStateInflow.standard().numbers(),
                    other,
                    1,
                    List.of("invented"),
                    "none",
                    "none",
                    0.3));
    assertTrue(refused.getMessage().contains(ofPilot.name()), refused.getMessage());
  }

  @Test
  void valuesGoToTheRingStateOrToTheCraftAsTheirNumbersDo() {
    FittedModel model = fitted(1, 1, RingStateInflow.EXIT_TOTAL, Helicopter.MASS);
    Helicopter changed = model.with(CRAFT, 1.37, 590);
    assertEquals(590, changed.mass());
    assertEquals(1.37, changed.fitted().orElseThrow().ring().get(RingStateInflow.EXIT_TOTAL));
    assertEquals(1.37, changed.inflow().numbers().get(RingStateInflow.EXIT_TOTAL));
    assertEquals(CRAFT.inflow().numbers(), RingStateInflow.standard().numbers());
  }

  /**
   * The draw that can be is the one nearest to what was drawn, halving on the way to the middle.
   */
  @Test
  void aDrawThatMakesNoRingStateIsBroughtHalfwayToTheMiddle() {
    FittedModel model = fitted(1, 4, RingStateInflow.ONSET_TOTAL, RingStateInflow.EXIT_TOTAL);
    boolean brought = false;
    for (double normal : new double[] {-6, -3, 0, 3, 6}) {
      double[] normals = {-normal, normal};
      Helicopter drawn = model.drawn(CRAFT, normals);
      double[] values = {
        drawn.inflow().numbers().get(RingStateInflow.ONSET_TOTAL),
        drawn.inflow().numbers().get(RingStateInflow.EXIT_TOTAL)
      };
      int halvings = 0;
      while (Math.abs(model.numbers().draw(normals)[1] - values[1]) > 1e-12 && halvings < 20) {
        normals = new double[] {normals[0] / 2, normals[1] / 2};
        halvings++;
      }
      assertEquals(model.numbers().draw(normals)[0], values[0], 1e-12);
      brought |= halvings > 0;
    }
    assertTrue(brought, "none was brought back");
  }

  /** The middle value of a craft that itself can be no ring state any more is the craft alone. */
  @Test
  void aCraftWhoseMiddleCannotBeStaysAsItIs() {
    FittedModel crooked =
        new FittedModel(
            RingStateInflow.standard().numbers(),
            new UncertainNumbers(
                List.of(RingStateInflow.ONSET_TOTAL, RingStateInflow.EXIT_TOTAL),
                new double[] {12, -12},
                new double[][] {{1e-9, 0}, {0, 1e-9}}),
            1,
            List.of("invented"),
            "none",
            "none",
            0.3);
    assertEquals(CRAFT, crooked.drawn(CRAFT, 1, 1));
  }

  /** Of a logarithm with a deviation of 0.3, 95 in 100 lie within 1.96 deviations. */
  @Test
  void theFactorForTheFormIsLogNormal() {
    FittedModel model = fitted(1, 1, RingStateInflow.EXIT_TOTAL);
    assertEquals(1, model.formFactor(0));
    assertEquals(0.588, FastMath.log(model.formFactor(1.96)), 1e-12);
    assertEquals(1, model.formFactor(1.3) * model.formFactor(-1.3), 1e-15);
  }

  @Test
  void whatACraftMayLeaveOutIsUsualForItsEngine() {
    for (Parameter parameter : EngineKind.optional()) {
      for (EngineKind engine : EngineKind.values()) {
        double usual = engine.usual(parameter);
        assertTrue(usual >= parameter.quantity().low() && usual <= parameter.quantity().high());
        if (!parameter.equals(Helicopter.ENGINE_TIME)) {
          assertEquals(parameter.standard(), usual, parameter.name());
        }
      }
    }
    // a turbine spools, a piston engine answers at once or nearly so (common practice, no source)
    assertTrue(
        EngineKind.PISTON.usual(Helicopter.ENGINE_TIME)
            < EngineKind.TURBINE.usual(Helicopter.ENGINE_TIME));
  }
}
