package io.github.ringstate.calibration;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.chance.RandomStream;
import io.github.ringstate.craft.FittedModel;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Simulator;
import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * The band of a loss over drawn numbers.
 *
 * @param middle half of the draws lose less, m
 * @param low 2.5 in 100 lose less, m
 * @param high 2.5 in 100 lose more, m
 */
public record LossBand(double middle, double low, double high) {

  private static final NormalDistribution NORMAL = new NormalDistribution();
  private static final double TAIL = 0.025;
  private static final int DRAWS = 400;
  private static final long SEED = 0x6C6F7373L;

  /**
   * The band of an encounter's loss over what a fit leaves open.
   *
   * @param encounter an encounter of a craft with a fitted model
   * @return the band; infinite where a descent is not arrested
   * @throws IllegalArgumentException if the craft has no fitted model, or no draw meets the ring
   *     state
   */
  public static LossBand of(Encounter encounter) {
    FittedModel fitted =
        encounter
            .craft()
            .fitted()
            .orElseThrow(() -> new IllegalArgumentException("the craft has no fitted model"));
    LossBand band =
        of(
            DRAWS,
            fitted.numbers().parameters().size(),
            SEED,
            normals -> {
              Helicopter drawn = fitted.drawn(encounter.craft(), normals);
              Outcome outcome =
                  encounter
                      .withCraft(drawn)
                      .withInflow(drawn.inflow(), encounter.boundary().over(drawn.inflow()))
                      .fly(Simulator.fast(), null);
              return outcome.ending() == Ending.NO_ONSET
                  ? Double.NaN
                  : outcome.altitudeLoss().orElse(Double.POSITIVE_INFINITY);
            });
    if (Double.isNaN(band.middle())) {
      throw new IllegalArgumentException(
          "none of " + DRAWS + " draws meets the ring state, so there is no band of losses");
    }
    return band;
  }

  /**
   * Draws.
   *
   * @param draws how many
   * @param normals how many normal numbers each takes
   * @param seed the seed
   * @param loss the loss with such numbers, m; NaN if it cannot be flown
   * @return the band; of all losses, with no middle, if none of them can be flown
   */
  static LossBand of(int draws, int normals, long seed, ToDoubleFunction<double[]> loss) {
    double[] losses = new double[draws];
    for (int n = 0; n < draws; n++) {
      RandomStream stream = Drawing.SOBOL.stream(seed, n);
      double[] drawn = new double[normals];
      for (int i = 0; i < normals; i++) {
        drawn[i] = NORMAL.inverseCumulativeProbability(stream.uniform());
      }
      losses[n] = loss.applyAsDouble(drawn);
    }
    double[] flown = Arrays.stream(losses).filter(one -> !Double.isNaN(one)).sorted().toArray();
    if (flown.length == 0) {
      return new LossBand(Double.NaN, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }
    return new LossBand(at(flown, 0.5), at(flown, TAIL), at(flown, 1 - TAIL));
  }

  private static double at(double[] sorted, double share) {
    return sorted[(int) Math.min(sorted.length - 1, Math.max(0, share * sorted.length))];
  }
}
