package io.github.ringstate.study.model;

import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.study.LossSpread;
import io.github.ringstate.study.PartOf;
import io.github.ringstate.study.PilotStudy;
import io.github.ringstate.study.Progress;
import io.github.ringstate.study.Quantile;
import io.github.ringstate.study.Sampling;
import io.github.ringstate.study.Share;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.BetaDistribution;

/**
 * How far what the model itself does not know moves the losses. Kept apart from the spread between
 * people: with each model the same pilots fly.
 *
 * @param study the pilots, with the standard model
 * @param models the models, at least two; see {@link OpenNumbers#accepted}
 */
public record ModelSpread(PilotStudy study, List<RingStateInflow> models) {

  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;

  /** Checks the number of models. */
  public ModelSpread {
    models = List.copyOf(models);
    checkEnough(models.size());
  }

  private static void checkEnough(int models) {
    if (!(models >= 2)) {
      throw new IllegalArgumentException("a spread of models takes at least two, not " + models);
    }
  }

  /**
   * Flies the pilots with each model.
   *
   * @param sampling how many pilots fly each model
   * @param progress hears how far it has come
   * @return the losses with each model, in the order of the models
   */
  public List<LossSpread> fly(Sampling sampling, Progress progress) {
    List<LossSpread> spreads = new ArrayList<>();
    for (RingStateInflow inflow : models) {
      PilotStudy other =
          new PilotStudy(
              study.base().withInflow(inflow, study.base().boundary().over(inflow)),
              study.pilots(),
              study.delays(),
              study.seed(),
              study.drawing());
      spreads.add(other.fly(sampling, new PartOf(progress, spreads.size(), models.size())));
    }
    return List.copyOf(spreads);
  }

  /**
   * The band of a quantile over models: what nine models in ten lie within, people being the same.
   * {@link Quantile#widenedBy} puts it together with the band over people, {@link #held} says how
   * well so few models know it.
   *
   * @param spreads the losses with each model
   * @param share the part of the pilots below the quantile, between 0 and 1
   * @return the 5, 50 and 95 per cent points of the models' quantiles, m, as low, value and high;
   *     models that nobody met the ring state with are left out
   */
  public static Quantile band(List<LossSpread> spreads, double share) {
    double[] values =
        spreads.stream()
            .filter(spread -> spread.samples() > 0)
            .mapToDouble(spread -> spread.loss(share))
            .sorted()
            .toArray();
    if (values.length == 0) {
      throw new IllegalArgumentException("nobody met the ring state with any model");
    }
    return new Quantile(
        share,
        Quantile.value(values, 0.5),
        Quantile.value(values, LOW),
        Quantile.value(values, HIGH));
  }

  /**
   * Which part of all models a {@link #band} holds: that of so few is no more than an estimate.
   * What lies between two order statistics of independent draws has a beta distribution, whatever
   * theirs is (Wilks, Annals of Mathematical Statistics 12, 1941; from memory). Draws that are
   * evenly spread do better.
   *
   * @param models the number of models, at least two
   * @return the part that a band holds on average, with the ends within which that part lies with
   *     95 per cent confidence
   */
  public static Share held(int models) {
    checkEnough(models);
    int between = Quantile.rank(models, HIGH) - Quantile.rank(models, LOW);
    BetaDistribution part = new BetaDistribution(between, models + 1.0 - between);
    return new Share(
        part.getNumericalMean(),
        part.inverseCumulativeProbability(0.025),
        part.inverseCumulativeProbability(0.975));
  }
}
