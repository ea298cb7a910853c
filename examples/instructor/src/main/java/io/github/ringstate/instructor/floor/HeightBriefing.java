package io.github.ringstate.instructor.floor;

import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.study.Share;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What to brief for a height: the way out of the wake with which the fewest simulated pilots of one
 * state hit the ground.
 *
 * @param heightFt the height at onset, ft
 * @param ways the ways out, the fewest on the ground first; empty if nobody met the ring state
 */
record HeightBriefing(double heightFt, List<Way> ways) {

  /**
   * A way out of the wake.
   *
   * @param row the pilots
   * @param ground the share of them who hit the ground
   */
  record Way(FloorRow row, Share ground) {

    private String name() {
      return row.recovery().label();
    }
  }

  HeightBriefing {
    ways = List.copyOf(ways);
  }

  static HeightBriefing of(double heightFt, List<FloorRow> rows) {
    List<Way> ways = new ArrayList<>();
    for (FloorRow row : rows) {
      Optional<Share> ground = row.losses().shareLosing(heightFt);
      if (row.recovery().wayOut() && ground.isPresent()) {
        ways.add(new Way(row, ground.get()));
      }
    }
    // of two with as many on the ground, the one that needs less height for the share
    ways.sort(
        Comparator.comparingDouble((Way way) -> way.ground().value())
            .thenComparingDouble(way -> way.row().floorFt().orElseThrow().value()));
    return new HeightBriefing(heightFt, ways);
  }

  /** The ways that the model does not tell from the first. */
  List<Way> alike() {
    return ways.stream()
        .skip(1)
        .filter(way -> way.ground().overlaps(ways.get(0).ground()))
        .toList();
  }

  /**
   * The briefing in words.
   *
   * @return one sentence or two
   */
  String text() {
    if (ways.isEmpty()) {
      return "no way out was flown into the ring state, so there is nothing to brief";
    }
    Way first = ways.get(0);
    if (first.ground().value() == 1) {
      return "no technique to brief: with every way out all of the simulated pilots would have hit"
          + " the ground";
    }
    if (first.ground().value() > 0.5) {
      return "no technique to brief: even with "
          + first.name()
          + ", the way out with which the fewest did, "
          + count(first)
          + " of the simulated pilots would have hit the ground";
    }
    List<Way> others = ways.subList(1, ways.size());
    String text =
        "brief "
            + first.name()
            + ", with which the fewest simulated pilots would still have hit the ground: "
            + count(first)
            + (others.isEmpty()
                ? ""
                : ", against "
                    + PilotTerms.and(
                        others.stream().map(way -> count(way) + " with " + way.name()).toList()));
    if (first.ground().value() > 1 - first.row().share()) {
      text +=
          ". Even so it is more than the "
              + FloorTakeAway.percent(1 - first.row().share())
              + " that the share asked for leaves";
    } else if (heightFt < first.row().floorFt().orElseThrow().value()) {
      text +=
          ". Even so the height is less than the floor: fewer than "
              + FloorTakeAway.percent(first.row().share())
              + " recovered with the margin";
    }
    List<Way> alike = alike();
    return alike.isEmpty()
        ? text
        : text
            + (first.row().tooFew() || alike.stream().anyMatch(way -> way.row().tooFew())
                ? ". Too few pilots were flown to tell "
                : ". The model cannot tell ")
            + first.name()
            + " from "
            + PilotTerms.and(alike.stream().map(Way::name).toList())
            + " here";
  }

  private static String count(Way way) {
    int pilots = way.row().losses().samples();
    long down = Math.round(way.ground().value() * pilots);
    return down == 0
        ? "none of " + pilots
        : down + " of " + pilots + " (" + Decimals.fixed(100 * way.ground().value(), 1) + " %)";
  }
}
