package io.github.ringstate.study.model;

import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.study.LossSpread;
import io.github.ringstate.study.PartOf;
import io.github.ringstate.study.PilotStudy;
import io.github.ringstate.study.Progress;
import io.github.ringstate.study.Quantile;
import io.github.ringstate.study.Sampling;
import java.util.ArrayList;
import java.util.List;

/**
 * How far what the model itself does not know moves the losses. Kept apart from the spread between
 * people: with each model the same pilots fly.
 *
 * @param study the pilots, with the standard model
 * @param models the models, at least two; see {@link OpenNumbers#accepted}
 */
public record ModelSpread(PilotStudy study, List<RingStateInflow> models) {

  /** Checks the number of models. */
  public ModelSpread {
    models = List.copyOf(models);
    if (models.size() < 2) {
      throw new IllegalArgumentException(
          "a spread of models takes at least two, not " + models.size());
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
   * {@link Quantile#widenedBy} puts it together with the band over people.
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
        Quantile.value(values, 0.05),
        Quantile.value(values, 0.95));
  }
}
