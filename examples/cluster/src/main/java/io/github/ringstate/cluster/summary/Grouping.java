package io.github.ringstate.cluster.summary;

import io.github.ringstate.study.sweep.Settings;
import io.github.ringstate.study.sweep.Sweep;
import io.github.ringstate.study.sweep.SweepSpec;
import java.util.ArrayList;
import java.util.List;

/**
 * What the points of a summary are told apart by, beside craft, entry and recovery.
 *
 * @param state whether by the pilot's state: where it is an axis
 * @param delay whether by the delay: where it is not drawn, each pilot's own
 */
record Grouping(boolean state, boolean delay) {

  static final String STATE = Settings.STATE.replace('.', '_');
  static final String DELAY = "delay_s";

  static Grouping of(Sweep sweep) {
    SweepSpec spec = sweep.spec();
    boolean state = sweep.rowColumns().stream().anyMatch(column -> column.name().equals(STATE));
    boolean stateSet =
        state || spec.fixed().stream().anyMatch(axis -> axis.key().equals(Settings.STATE));
    boolean sampled =
        spec.sample().dimensions().stream()
            .anyMatch(dimension -> dimension.key().equals(Settings.DELAY));
    boolean drawn = sampled || (spec.pilots() > 0 && stateSet);
    return new Grouping(state, !drawn);
  }

  /** The names of the columns. */
  List<String> columns() {
    List<String> columns = new ArrayList<>(List.of("craft", "entry", "recovery"));
    if (state) {
      columns.add(STATE);
    }
    if (delay) {
      columns.add(DELAY);
    }
    return columns;
  }
}
