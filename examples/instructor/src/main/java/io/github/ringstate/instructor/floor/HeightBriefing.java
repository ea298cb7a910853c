package io.github.ringstate.instructor.floor;

import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.message.Words;
import io.github.ringstate.study.Share;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What to brief for a height: the way out of the wake with which the fewest simulated pilots of one
 * state hit the ground.
 *
 * @param height the height at onset, m
 * @param ways the ways out, the fewest on the ground first; empty if nobody met the ring state
 */
record HeightBriefing(double height, List<Way> ways) {

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

  static HeightBriefing of(double height, List<FloorRow> rows) {
    List<Way> ways = new ArrayList<>();
    for (FloorRow row : rows) {
      Optional<Share> ground = row.losses().shareLosing(height);
      if (row.recovery().wayOut() && ground.isPresent()) {
        ways.add(new Way(row, ground.get()));
      }
    }
    // of two with as many on the ground, the one that needs less height for the share
    ways.sort(
        Comparator.comparingDouble((Way way) -> way.ground().value())
            .thenComparingDouble(way -> way.row().floor().orElseThrow().value()));
    return new HeightBriefing(height, ways);
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
      return FloorMessages.SAY.nothingFlown();
    }
    Way first = ways.get(0);
    if (first.ground().value() == 1) {
      return FloorMessages.SAY.allOnTheGround();
    }
    if (first.ground().value() > 0.5) {
      return FloorMessages.SAY.mostOnTheGround(first.name(), count(first));
    }
    List<Way> others = ways.subList(1, ways.size());
    double share = first.row().share();
    boolean more = first.ground().value() > 1 - share;
    boolean below = height < first.row().floor().orElseThrow().value();
    return FloorMessages.SAY.brief(
        first.name(),
        count(first),
        others.isEmpty()
            ? ""
            : Words.and(
                others.stream()
                    .map(way -> FloorMessages.SAY.countWith(count(way), way.name()))
                    .toList()),
        more ? FloorFacts.percent(1 - share) : "",
        below && !more ? FloorFacts.percent(share) : "",
        AlikeFacts.of(first.row(), alike().stream().map(Way::row).toList()));
  }

  private static String count(Way way) {
    int pilots = way.row().losses().samples();
    long down = Math.round(way.ground().value() * pilots);
    return FloorMessages.SAY.count(
        down == 0 ? "" : Long.toString(down),
        Integer.toString(pilots),
        Decimals.fixed(Unit.PERCENT.fromSi(way.ground().value()), 1));
  }
}
