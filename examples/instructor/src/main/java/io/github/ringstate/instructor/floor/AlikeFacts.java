package io.github.ringstate.instructor.floor;

import io.github.ringstate.sheets.message.Words;
import java.util.List;

/**
 * Which ways out are not told apart from another, in words.
 *
 * @param alike their names; empty if there are none
 * @param tooFew whether that is for want of pilots
 * @param pilots how many were flown
 * @param models whether the models widen the intervals
 */
record AlikeFacts(String alike, boolean tooFew, int pilots, boolean models) {

  static AlikeFacts of(FloorRow first, List<FloorRow> others) {
    return new AlikeFacts(
        others.isEmpty()
            ? ""
            : Words.and(others.stream().map(row -> row.recovery().label()).toList()),
        first.tooFew() || others.stream().anyMatch(FloorRow::tooFew),
        first.losses().samples(),
        !first.losses().models().isEmpty());
  }
}
