package io.github.ringstate.study;

import io.github.ringstate.chance.IndependentStream;
import io.github.ringstate.chance.RandomStream;
import io.github.ringstate.inflow.BoundaryCriterion;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.RingMemory;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.Spread;
import io.github.ringstate.quantity.ParameterSet;
import java.util.ArrayList;
import java.util.List;

/**
 * What the model itself does not know: the fitted numbers of the ring-state inflow vary, evenly,
 * within the ranges that published descriptions leave open. Kept apart from the spread between
 * people: for each draw of the model the same pilots fly.
 *
 * <p>What no range here covers is that the form of the model may be wrong.
 *
 * @param study the pilots, with the standard model
 * @param models how many models are drawn
 */
public record ModelSpread(PilotStudy study, int models) {

  /** Number of the draws of models, so that they are not those of pilots. */
  private static final long MODEL_DRAWS = 0x6D6F64656CL;

  private static final double LEAST_REACH = 0.7;

  private static final double GREATEST_REACH = 1;

  private static final List<Spread> SPREADS =
      List.of(
          // onset between -0.4 and -0.6, exit between -1.4 and -1.6: ranges of the usual
          // descriptions
          Spread.even(RingStateInflow.ONSET_AXIAL, -0.6, -0.4),
          Spread.even(RingStateInflow.EXIT_AXIAL, -1.6, -1.4),
          // assumed: what still gives a runaway of the sink as it is described
          Spread.even(RingStateInflow.ONSET_TOTAL, 0.86, 0.94),
          Spread.even(RingStateInflow.EXIT_TOTAL, 1.2, 1.4),
          // assumed: the boundary then reaches 0.58 to 0.88 hover induced velocities
          Spread.even(RingStateInflow.FADE_EDGEWISE, 1.0, 1.2),
          // 1 by the quartic fit, 1.5 to 2.45 by the two-segment fit; less than the least of them
          // as well, since the axial curve may hold some of the losses
          Spread.even(RingStateInflow.LOSSES, 0.5, 2),
          // assumed, never measured: from a ring that goes at once to twice the standard time
          Spread.even(RingMemory.DISSOLVING_TIME, 0, 7.2),
          // assumed: half and twice the lag of the inflow
          Spread.even(RingMemory.DEEPENING_TIME, 0.1, 0.4),
          // numerical: so that the band shows it if it mattered
          Spread.even(RingMemory.SWITCH_WIDTH, 0.01, 0.04));

  /** Checks the number of models. */
  public ModelSpread {
    if (models < 2) {
      throw new IllegalArgumentException("a spread of models takes at least two, not " + models);
    }
  }

  /**
   * One model. Its boundary reaches 0.7 to 1 hover induced velocities of edgewise speed, as
   * published boundaries do; one that does not is drawn again.
   *
   * @param number the number of the model, from 0
   * @return the model
   */
  public RingStateInflow model(int number) {
    RandomStream draws = new IndependentStream(study.seed() ^ MODEL_DRAWS, number);
    while (true) {
      ParameterSet numbers = ParameterSet.standard(RingStateInflow.PARAMETERS);
      for (Spread spread : SPREADS) {
        numbers = numbers.with(spread.parameter(), spread.value(draws.uniform()));
      }
      RingStateInflow model = new RingStateInflow(numbers);
      double reach = new HeaveDamping(model).reach().orElse(0);
      if (reach >= LEAST_REACH && reach <= GREATEST_REACH) {
        return model;
      }
    }
  }

  /**
   * Flies the pilots with each model.
   *
   * @param sampling how many pilots fly each model
   * @param progress hears how far it has come
   * @return the losses with each model, in the order of {@link #model}
   */
  public List<LossSpread> fly(Sampling sampling, Progress progress) {
    List<LossSpread> spreads = new ArrayList<>();
    for (int i = 0; i < models; i++) {
      RingStateInflow inflow = model(i);
      PilotStudy other =
          new PilotStudy(
              study.base().withInflow(inflow, boundary(inflow)),
              study.pilots(),
              study.delays(),
              study.seed());
      spreads.add(other.fly(sampling, new PartOf(progress, i, models)));
    }
    return List.copyOf(spreads);
  }

  /** A boundary that is read off the inflow moves with it; any other stays as it was chosen. */
  private BoundaryCriterion boundary(RingStateInflow inflow) {
    BoundaryCriterion chosen = study.base().boundary();
    return chosen instanceof HeaveDamping ? new HeaveDamping(inflow) : chosen;
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
