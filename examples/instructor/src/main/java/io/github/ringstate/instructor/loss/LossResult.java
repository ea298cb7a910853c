package io.github.ringstate.instructor.loss;

import io.github.ringstate.instructor.pilots.ShownFlight;
import java.util.List;

/**
 * What came of the flights of a loss table.
 *
 * @param blocks a table for each mass in each air
 * @param shown the flights that a page draws, in the first of these conditions; none unless asked
 *     for
 */
record LossResult(List<LossBlock> blocks, List<ShownFlight> shown) {

  LossResult {
    blocks = List.copyOf(blocks);
    shown = List.copyOf(shown);
  }

  /** Whether a flight of the standard technique is on an edge between two outcomes. */
  boolean anySensitive() {
    return blocks.stream()
        .flatMap(block -> block.lines().stream())
        .flatMap(line -> line.standard().stream())
        .anyMatch(LossRow::sensitive);
  }
}
