package io.github.ringstate.calibration;

import io.github.ringstate.craft.FittedModel;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Simulator;
import java.util.Arrays;

/**
 * What a fit leaves open of one encounter's loss, so that one sees how much of it comes from the
 * numbers and how much from the form of the model. Both bands are of the same draws. Where a
 * descent is not arrested above the ground, its loss counts as infinite; where fewer than half of
 * the draws meet the ring state, the bands have no middle and no ends.
 *
 * @param whole over all that the fit leaves open: the numbers, and the form of the model by {@link
 *     FittedModel#formFactor}
 * @param numbers over the fitted numbers alone: what it would be if the form of the model were
 *     known to be right
 */
public record FittedBands(LossBand whole, LossBand numbers) {

  private static final int DRAWS = 400;
  private static final long SEED = 0x6C6F7373L;

  /**
   * The bands of an encounter's loss.
   *
   * @param encounter an encounter of a craft with a fitted model
   * @return the bands
   * @throws IllegalArgumentException if the craft has no fitted model
   */
  public static FittedBands of(Encounter encounter) {
    FittedModel fitted =
        encounter
            .craft()
            .fitted()
            .orElseThrow(() -> new IllegalArgumentException("the craft has no fitted model"));
    int size = fitted.numbers().parameters().size();
    double height = encounter.height().orElse(Double.POSITIVE_INFINITY);
    double[][] normals = LossBand.normals(DRAWS, size + 1, SEED);
    double[] losses = new double[DRAWS];
    double[] whole = new double[DRAWS];
    for (int n = 0; n < DRAWS; n++) {
      losses[n] = loss(encounter, fitted.drawn(encounter.craft(), Arrays.copyOf(normals[n], size)));
      double scaled = losses[n] * fitted.formFactor(normals[n][size]);
      whole[n] = scaled >= height ? Double.POSITIVE_INFINITY : scaled;
    }
    return new FittedBands(LossBand.of(whole), LossBand.of(losses));
  }

  /** The loss with a drawn craft, m; infinite if it is not arrested, NaN without ring state. */
  private static double loss(Encounter encounter, Helicopter drawn) {
    Outcome outcome =
        encounter
            .withCraft(drawn)
            .withInflow(drawn.inflow(), encounter.boundary().over(drawn.inflow()))
            .fly(Simulator.fast(), null);
    return switch (outcome.ending()) {
      case NO_ONSET -> Double.NaN;
      case ARRESTED -> outcome.altitudeLoss().getAsDouble();
      default -> Double.POSITIVE_INFINITY;
    };
  }
}
