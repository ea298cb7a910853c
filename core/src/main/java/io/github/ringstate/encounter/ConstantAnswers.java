package io.github.ringstate.encounter;

import io.github.ringstate.air.WindField;
import io.github.ringstate.dynamics.ThrustDisturbance;
import io.github.ringstate.inflow.BoundaryCriterion;
import io.github.ringstate.inflow.InflowModel;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;

/**
 * Whether parts that may be a user's own answer the same question alike. One that counts or draws
 * would make each flight another, and nobody would see it.
 */
final class ConstantAnswers {

  /** Part of the message; what answers so stands before it. */
  static final String DIFFER =
      " answers the same question in different ways; it has to depend on its arguments alone";

  /** How often one is asked: of coins that fall at random one in two thousand gets through. */
  private static final int TIMES = 12;

  private ConstantAnswers() {}

  /**
   * Asks for what every flight asks too: a hover in calm air, and the wind so high, m, at the
   * start.
   */
  static void check(
      InflowModel inflow,
      BoundaryCriterion boundary,
      WindField wind,
      double height,
      ThrustDisturbance shaking) {
    check(() -> "the inflow " + inflow.name(), () -> inflow.induced(0, 0));
    check(() -> "the boundary " + boundary.name(), () -> boundary.margin(0, 0));
    double[] air = new double[3];
    check(
        () -> "the wind " + wind,
        () -> {
          wind.velocity(0, 0, 0, height, air);
          return air[0] + air[1] + air[2];
        });
    check(() -> "the shaking " + shaking, () -> shaking.factor(0, 0, 0));
  }

  private static void check(Supplier<String> part, DoubleSupplier answer) {
    double first = answer.getAsDouble();
    for (int i = 1; i < TIMES; i++) {
      if (Double.compare(answer.getAsDouble(), first) != 0) {
        throw new IllegalArgumentException(part.get() + DIFFER);
      }
    }
  }
}
