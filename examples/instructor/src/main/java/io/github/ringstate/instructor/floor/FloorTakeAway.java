package io.github.ringstate.instructor.floor;

import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

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
      return "These conditions do not lead into the ring state, so the table says nothing of what"
          + " height pilots would need.";
    }
    List<String> parts = new ArrayList<>();
    for (PilotState state : request.states()) {
      parts.add(state.label() + " " + least(FloorRow.leastHeight(block.rows(state)), units));
    }
    return "Of the ways out, the least height at onset from which "
        + percent(request.share())
        + " of the simulated pilots recovered with "
        + units.given(Unit.FOOT, request.marginFt())
        + " to spare: "
        + String.join("; ", parts)
        + ".";
  }

  private static String least(List<FloorRow> rows, UnitSystem units) {
    if (rows.isEmpty()) {
      return "none, since with no way out did so many arrest the descent";
    }
    FloorRow best = rows.get(0);
    String height =
        units.needed(best.floorFt().orElseThrow().value())
            + " "
            + units.length().symbol()
            + " with "
            + best.recovery().label();
    return rows.size() == 1
        ? height
        : height
            + (rows.stream().anyMatch(FloorRow::tooFew)
                ? ", which too few pilots were flown to tell from "
                : ", which the model cannot tell from ")
            + PilotTerms.and(rows.stream().skip(1).map(row -> row.recovery().label()).toList());
  }

  /** A share in per cent. */
  static String percent(double share) {
    return Decimals.brief(100 * share) + " %";
  }
}
