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
   * The band of an encounter's loss over all that a fit leaves open: the numbers, and the form of
   * the model by {@link FittedModel#formFactor}.
   *
   * @param encounter an encounter of a craft with a fitted model
   * @return the band; infinite where a descent is not arrested
   * @throws IllegalArgumentException if the craft has no fitted model, or no draw meets the ring
   *     state
   */
  public static LossBand of(Encounter encounter) {
    return of(encounter, true);
  }

  /**
   * The band over the fitted numbers alone: what it would be if the form of the model were known to
   * be right.
   *
   * @param encounter an encounter of a craft with a fitted model
   * @return the band; infinite where a descent is not arrested
   * @throws IllegalArgumentException as above
   */
  public static LossBand ofNumbers(Encounter encounter) {
    return of(encounter, false);
  }

  private static LossBand of(Encounter encounter, boolean form) {
    FittedModel fitted =
        encounter
            .craft()
            .fitted()
            .orElseThrow(() -> new IllegalArgumentException("the craft has no fitted model"));
    int size = fitted.numbers().parameters().size();
    LossBand band =
        of(
            DRAWS,
            size + 1,
            SEED,
            normals -> {
              Helicopter drawn = fitted.drawn(encounter.craft(), Arrays.copyOf(normals, size));
              Outcome outcome =
                  encounter
                      .withCraft(drawn)
                      .withInflow(drawn.inflow(), encounter.boundary().over(drawn.inflow()))
                      .fly(Simulator.fast(), null);
              return outcome.ending() == Ending.NO_ONSET
                  ? Double.NaN
                  : outcome.altitudeLoss().orElse(Double.POSITIVE_INFINITY)
                      * (form ? fitted.formFactor(normals[size]) : 1);
            });
    if (Double.isNaN(band.middle())) {
      throw new IllegalArgumentException(
          "few of " + DRAWS + " draws meet the ring state, or none, so there is no band of losses");
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
   * @return the band; of all losses, with no middle, if fewer than half of them can be flown
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
    if (2 * flown.length < draws) {
      return new LossBand(Double.NaN, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }
    return new LossBand(at(flown, 0.5), at(flown, TAIL), at(flown, 1 - TAIL));
  }

  private static double at(double[] sorted, double share) {
    return sorted[(int) Math.min(sorted.length - 1, Math.max(0, share * sorted.length))];
  }
}
