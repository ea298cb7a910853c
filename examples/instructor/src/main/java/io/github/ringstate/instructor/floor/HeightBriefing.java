package io.github.ringstate.instructor.floor;

import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.message.Words;
import io.github.ringstate.study.Quantile;
import io.github.ringstate.study.Share;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What to brief for a height: the way out of the wake with which the fewest simulated pilots of one
 * state hit the ground. It is briefed only where those flown show that among very many no more than
 * a limit would: where the confidence interval of their share ends at the limit or below. Otherwise
 * nothing is briefed but not to fly below the height that they need, or, where they have that
 * height, that they are too few to tell.
 *
 * @param height the height at onset, m
 * @param limit the share of pilots on the ground above which no technique is briefed
 * @param ways the ways out, the fewest on the ground first; empty if nobody met the ring state
 */
record HeightBriefing(double height, double limit, List<Way> ways) {

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

  static HeightBriefing of(double height, double limit, List<FloorRow> rows) {
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
    return new HeightBriefing(height, limit, ways);
  }

  /** The pilots with the technique that is briefed; empty if none is. */
  Optional<FloorRow> briefed() {
    return ways.stream()
        .limit(1)
        .filter(way -> way.ground().high() <= limit)
        .map(Way::row)
        .findFirst();
  }

  /** Whether no technique is briefed. */
  boolean isRefused() {
    return briefed().isEmpty();
  }

  /** Whether of the pilots flown themselves more than the limit would hit the ground. */
  private boolean isAbove() {
    return ways.get(0).ground().value() > limit;
  }

  /** The share that is to recover for a technique to be briefed. */
  private double wanted() {
    return Math.max(ways.get(0).row().share(), 1 - limit);
  }

  /**
   * The least height at onset from which the share recovered, and no more than the limit hit the
   * ground, with any way out.
   *
   * @return the height, m, infinite if there is none, with its interval
   */
  private Quantile leastHeight() {
    return lowest().row().heightFor(wanted());
  }

  /** The way out with which so many needed least height. */
  private Way lowest() {
    return ways.stream()
        .min(Comparator.comparingDouble(way -> way.row().heightFor(wanted()).value()))
        .orElseThrow();
  }

  /** Whether the height is less than the floor of the first way. */
  private boolean isBelowFloor() {
    return height < floor().value();
  }

  private Quantile floor() {
    return ways.get(0).row().floor().orElseThrow();
  }

  private static String inWords(FloorRow row, double share, UnitSystem units) {
    return row.needed(share, units).orElse("") + " " + units.length().symbol();
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
   * @param units the units to speak in
   * @return one sentence or two
   */
  String text(UnitSystem units) {
    return ways.isEmpty()
        ? FloorMessages.SAY.nothingFlown()
        : FloorMessages.SAY.verdict(order(units), reason(units));
  }

  /**
   * What to do, in a few words.
   *
   * @param units the units to speak in
   * @return a technique to brief, a height not to fly below, or that there is neither
   */
  String order(UnitSystem units) {
    if (ways.isEmpty()) {
      return FloorMessages.SAY.nothingFlown();
    }
    if (!isRefused()) {
      return FloorMessages.SAY.brief(
          ways.get(0).name(),
          isBelowFloor() ? units.typed(Unit.FOOT, height) : "",
          inWords(ways.get(0).row(), ways.get(0).row().share(), units));
    }
    Quantile least = leastHeight();
    if (isAbove() || height < least.value()) {
      return FloorMessages.SAY.doNotFly(
          Double.isInfinite(least.value()) ? "" : inWords(lowest().row(), wanted(), units));
    }
    return FloorMessages.SAY.cannotTell(
        Integer.toString(ways.get(0).row().losses().samples()), hasModels());
  }

  private boolean hasModels() {
    return !ways.get(0).row().losses().models().isEmpty();
  }

  /**
   * Why, in one sentence or two.
   *
   * @param units the units to speak in
   * @return how many would have hit the ground; nothing if nobody met the ring state
   */
  String reason(UnitSystem units) {
    if (ways.isEmpty()) {
      return "";
    }
    if (!isRefused()) {
      return why();
    }
    return isAbove() ? refused(units) : notShown();
  }

  private String notShown() {
    Way first = ways.get(0);
    OptionalInt enough = first.row().losses().enough(height, limit);
    return FloorMessages.SAY.notShown(
        first.name(),
        count(first),
        FloorFacts.percent(limit),
        most(first),
        hasModels(),
        enough.isPresent() ? Integer.toString(enough.getAsInt()) : "");
  }

  /** The upper end of the interval of a share, per cent, rounded upwards. */
  private static String most(Way way) {
    return Decimals.fixed(Decimals.up(Unit.PERCENT.fromSi(way.ground().high()), 1), 1);
  }

  private String refused(UnitSystem units) {
    Way first = ways.get(0);
    return FloorMessages.SAY.refused(
        first.ground().value() == 1 ? "" : first.name(),
        count(first),
        others(),
        FloorFacts.percent(limit),
        FloorFacts.percent(wanted()),
        Double.isInfinite(leastHeight().value()),
        units.typed(Unit.FOOT, first.row().margin()));
  }

  private String why() {
    Way first = ways.get(0);
    return FloorMessages.SAY.briefed(
        first.name(),
        count(first),
        most(first),
        others(),
        isBelowFloor() ? FloorFacts.percent(first.row().share()) : "",
        AlikeFacts.of(first.row(), alike().stream().map(Way::row).toList()));
  }

  /** How many would have hit the ground with each of the other ways; empty without others. */
  private String others() {
    return ways.size() == 1
        ? ""
        : Words.and(
            ways.subList(1, ways.size()).stream()
                .map(way -> FloorMessages.SAY.countWith(count(way), way.name()))
                .toList());
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
