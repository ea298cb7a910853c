package io.github.ringstate.craft;

import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.quantity.UncertainNumbers;
import java.util.List;

/** Fitted models of nobody's recordings. */
public final class Fitted {

  private Fitted() {}

  /** A model with the standard numbers but for those that were fitted. */
  public static FittedModel of(UncertainNumbers numbers, int encounters, double form) {
    return new FittedModel(
        RingStateInflow.standard().numbers(),
        numbers,
        encounters,
        List.of("none"),
        "none",
        "none",
        form);
  }

  /** A model of two encounters whose numbers are known, so that its form alone is open. */
  public static FittedModel known(double form) {
    double total = RingStateInflow.standard().numbers().get(RingStateInflow.EXIT_TOTAL);
    UncertainNumbers exit =
        new UncertainNumbers(
            List.of(RingStateInflow.EXIT_TOTAL),
            new double[] {UncertainNumbers.logit(RingStateInflow.EXIT_TOTAL, total)},
            new double[][] {{1e-12}});
    return of(exit, 2, form);
  }
}
