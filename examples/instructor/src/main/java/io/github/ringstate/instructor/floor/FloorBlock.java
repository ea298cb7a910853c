package io.github.ringstate.instructor.floor;

import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.pilot.PilotState;
import java.util.List;

/**
 * The floors at one mass in one air.
 *
 * @param conditions craft, mass and air
 * @param rows for each state each recovery
 * @param latest for each way out; empty unless a height is to be briefed for
 */
record FloorBlock(Conditions conditions, List<FloorRow> rows, List<LatestMoment> latest) {

  FloorBlock {
    rows = List.copyOf(rows);
    latest = List.copyOf(latest);
  }

  /**
   * The pilots of one state.
   *
   * @param state the state
   * @return a row for each recovery
   */
  List<FloorRow> rows(PilotState state) {
    return rows.stream().filter(row -> row.state() == state).toList();
  }

  /** Whether anybody met the ring state. */
  boolean met() {
    return rows.stream().anyMatch(row -> row.losses().samples() > 0);
  }
}
