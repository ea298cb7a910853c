package io.github.ringstate.study.sweep;

import io.github.ringstate.inflow.BoundaryCriterion;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.StabilityBoundInflow;
import io.github.ringstate.inflow.ThreeStateInflow;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import java.util.List;
import java.util.function.Function;

/**
 * An inflow model that a sweep may name, with what bounds its ring state.
 *
 * @param name lower case, words joined by hyphens
 * @param parameters its numbers
 * @param inflow makes the model from a value for each of them
 * @param boundary makes the boundary of the ring state for that model
 */
public record InflowKind(
    String name,
    List<Parameter> parameters,
    Function<ParameterSet, InflowModel> inflow,
    Function<InflowModel, BoundaryCriterion> boundary) {

  /** The ring-state model with its heave-damping boundary. */
  public static final InflowKind STANDARD =
      new InflowKind(
          "ring-state", RingStateInflow.PARAMETERS, RingStateInflow::new, HeaveDamping::new);

  /** Momentum theory extended by the boundary of heave stability, to compare with. */
  public static final InflowKind STABILITY_BOUND =
      new InflowKind(
          "stability-bound",
          StabilityBoundInflow.PARAMETERS,
          StabilityBoundInflow::new,
          HeaveDamping::new);

  /** The ring-state model under three-state dynamic inflow, to compare with. */
  public static final InflowKind THREE_STATE =
      new InflowKind(
          "three-state-ring-state",
          RingStateInflow.PARAMETERS,
          numbers -> new ThreeStateInflow(new RingStateInflow(numbers)),
          HeaveDamping::new);

  /** Those that every sweep knows. */
  public static final List<InflowKind> ALL = List.of(STANDARD, STABILITY_BOUND, THREE_STATE);

  /** Copies the list. */
  public InflowKind {
    parameters = List.copyOf(parameters);
  }
}
