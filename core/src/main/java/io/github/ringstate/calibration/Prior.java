package io.github.ringstate.calibration;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.inflow.RingMemory;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.UncertainNumbers;
import io.github.ringstate.rotor.BladeDrag;
import io.github.ringstate.rotor.Rotor;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What is known of the numbers before a recording is looked at: of the ring state what published
 * ranges leave, of a craft that its numbers are about right.
 */
public final class Prior {

  /** What is fitted unless something else is asked for. */
  public static final List<Parameter> STANDARD =
      List.of(
          RingStateInflow.ONSET_AXIAL,
          RingStateInflow.ONSET_TOTAL,
          RingStateInflow.EXIT_AXIAL,
          RingStateInflow.EXIT_TOTAL,
          RingStateInflow.FADE_EDGEWISE,
          RingStateInflow.LOSSES,
          RingMemory.DISSOLVING_TIME,
          Rotor.INDUCED_POWER_FACTOR,
          BladeDrag.PROFILE_DRAG);

  /**
   * Standard deviations of numbers of a craft, in the parameter's own unit: half of what their
   * origins give as usual ranges, or less. Assumed.
   */
  private static final Map<Parameter, Double> USUAL =
      Map.of(Rotor.INDUCED_POWER_FACTOR, 0.05, BladeDrag.PROFILE_DRAG, 0.001);

  /** The same of any other number of a craft, over its value. Assumed. */
  private static final double ABOUT = 0.05;

  private Prior() {}

  /**
   * The prior of some numbers.
   *
   * @param parameters of the ring state or of the craft, one at least
   * @param craft the craft with its numbers as they are thought to be
   * @param models models that meet all published ranges, at least ten times as many as parameters;
   *     see {@link io.github.ringstate.study.model.OpenNumbers#accepted}
   * @return the prior, about the numbers of the craft and of its inflow: of the ring state as wide
   *     as the models lie apart from that inflow, in the mean of their squares and products; of the
   *     craft independent
   */
  public static UncertainNumbers of(
      List<Parameter> parameters, Helicopter craft, List<RingStateInflow> models) {
    int size = parameters.size();
    if (size == 0 || models.size() < 10 * size) {
      throw new IllegalArgumentException(
          "a prior takes a parameter, and ten models for each, not "
              + models.size()
              + " for "
              + size);
    }
    double[] mean = new double[size];
    double[][] covariance = new double[size][size];
    List<Integer> ring = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      Parameter parameter = parameters.get(i);
      if (RingStateInflow.PARAMETERS.contains(parameter)) {
        ring.add(i);
        mean[i] = logit(parameter, craft.inflow());
      } else {
        double value = craft.numbers().get(parameter);
        mean[i] = UncertainNumbers.logit(parameter, value);
        double deviation = deviation(parameter, value);
        covariance[i][i] = deviation * deviation;
      }
    }
    for (RingStateInflow model : models) {
      for (int i : ring) {
        for (int j : ring) {
          covariance[i][j] +=
              (logit(parameters.get(i), model) - mean[i])
                  * (logit(parameters.get(j), model) - mean[j])
                  / models.size();
        }
      }
    }
    return new UncertainNumbers(parameters, mean, covariance);
  }

  private static double logit(Parameter parameter, RingStateInflow model) {
    return UncertainNumbers.logit(parameter, model.numbers().get(parameter));
  }

  /** The standard deviation of the logit of a number of a craft. */
  private static double deviation(Parameter parameter, double value) {
    double deviation = USUAL.getOrDefault(parameter, ABOUT * Math.abs(value));
    double low = parameter.quantity().low();
    double high = parameter.quantity().high();
    double room = Math.max(Math.min(value - low, high - value), 0.01 * (high - low));
    // the slope of the logit, of which the value keeps away from the ends of its range
    double at = Math.min(Math.max(value, low + room), high - room);
    return Math.max(deviation, 1e-6 * (high - low)) * (high - low) / ((at - low) * (high - at));
  }
}
