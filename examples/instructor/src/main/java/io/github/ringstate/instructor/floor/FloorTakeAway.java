package io.github.ringstate.instructor.floor;

import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What an instructor would take from a table of floors, in one sentence. It says what simulated
 * pilots did, and calls no height safe.
 */
final class FloorTakeAway {

  private FloorTakeAway() {}

  /**
   * Puts a table into a sentence.
   *
   * @param block the table
   * @param request what was asked for
   * @param units the units to speak in
   * @return the sentence
   */
  static String of(FloorBlock block, FloorRequest request, UnitSystem units) {
    if (!block.met()) {
      return FloorMessages.SAY.noRingState();
    }
    return FloorMessages.SAY.lowest(
        FloorFacts.percent(request.share()),
        units.typed(Unit.FOOT, request.margin()),
        request.states().stream()
            .map(
                state ->
                    state.label() + " " + lowest(FloorRow.leastHeight(block.rows(state)), units))
            .collect(Collectors.joining("; ")));
  }

  private static String lowest(List<FloorRow> rows, UnitSystem units) {
    if (rows.isEmpty()) {
      return FloorMessages.SAY.none();
    }
    FloorRow best = rows.get(0);
    return FloorMessages.SAY.with(
        best.needed(best.share(), units).orElseThrow() + " " + units.length().symbol(),
        best.recovery().label(),
        AlikeFacts.of(best, rows.subList(1, rows.size())));
  }
}
