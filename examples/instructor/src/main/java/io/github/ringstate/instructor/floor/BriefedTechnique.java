package io.github.ringstate.instructor.floor;

import io.github.ringstate.pilot.Technique;
import java.util.Comparator;
import java.util.List;

/**
 * One technique to brief, with the pilots of every state.
 *
 * @param request what was asked for
 * @param block the floors of all techniques that were flown
 * @param technique the one that needs least height for the state that needs most
 */
record BriefedTechnique(FloorRequest request, FloorBlock block, Technique technique) {

  static BriefedTechnique of(FloorRequest request, FloorBlock block) {
    return new BriefedTechnique(
        request,
        block,
        request.recoveries().stream()
            .min(Comparator.comparingDouble(recovery -> worst(rows(block, recovery))))
            .orElseThrow());
  }

  /** The pilots of each state with the technique; none who never met the ring state. */
  List<FloorRow> rows() {
    return rows(block, technique);
  }

  private static List<FloorRow> rows(FloorBlock block, Technique recovery) {
    return block.rows().stream()
        .filter(row -> row.recovery().equals(recovery) && row.floor().isPresent())
        .toList();
  }

  private static double worst(List<FloorRow> rows) {
    return rows.stream()
        .mapToDouble(row -> row.floor().orElseThrow().value())
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  /**
   * The pilots who need most height.
   *
   * @return their row
   * @throws java.util.NoSuchElementException if nobody met the ring state
   */
  FloorRow slowest() {
    return rows().stream()
        .max(Comparator.comparingDouble(row -> row.floor().orElseThrow().value()))
        .orElseThrow();
  }
}
