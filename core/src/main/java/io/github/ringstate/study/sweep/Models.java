package io.github.ringstate.study.sweep;

import io.github.ringstate.inflow.BoundaryCriterion;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.TabulatedInflow;
import io.github.ringstate.quantity.ParameterSet;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The inflow models of a sweep. A table is quick to fly with and takes as long to make as some
 * thousand encounters take without one; whether there are tables depends on the sweep alone.
 */
final class Models {

  /**
   * Points of the same model from which on a table pays: measured, one takes 32 ms and saves 10
   * microseconds an encounter.
   */
  private static final long WORTH_A_TABLE = 1_000;

  private static final int KEPT = 8;

  private final boolean tables;
  private final Map<Asked, Model> kept =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Asked, Model> eldest) {
          return size() > KEPT;
        }
      };

  private record Asked(InflowKind kind, ParameterSet numbers) {}

  record Model(InflowModel inflow, BoundaryCriterion boundary) {}

  Models(long pointsPerModel) {
    tables = pointsPerModel >= WORTH_A_TABLE;
  }

  synchronized Model of(InflowKind kind, ParameterSet numbers) {
    Asked asked = new Asked(kind, numbers);
    Model model = kept.get(asked);
    if (model == null) {
      InflowModel inflow = kind.inflow().apply(numbers);
      // the nodes of a table lie on the joins of the ring-state model; others are flown as they are
      boolean table = tables && inflow instanceof RingStateInflow;
      model =
          new Model(table ? new TabulatedInflow(inflow) : inflow, kind.boundary().apply(inflow));
      kept.put(asked, model);
    }
    return model;
  }
}
