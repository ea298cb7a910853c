package io.github.ringstate.instructor.loss;

import io.github.ringstate.encounter.Ending;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.message.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * What a pilot would take from a loss table, in one sentence.
 *
 * <p>Every part is worked out from the numbers as printed, so that a reader can check it with a
 * pencil, and none calls a height or a delay safe.
 */
record TakeAway(LossBlock block, UnitSystem units) {

  String sentence() {
    if (block.rows().stream().allMatch(row -> row.ending() == Ending.NO_ONSET)) {
      return LossMessages.SAY.noRingState();
    }
    List<Technique> ways = block.recoveries().stream().filter(Technique::wayOut).toList();
    List<String> parts = new ArrayList<>();
    parts.addAll(costOfDelay(ways));
    parts.addAll(leastLoss(ways));
    for (Technique way : ways) {
      failures(way).forEach(failure -> parts.add(way.label() + " " + failure));
    }
    block.recoveries().stream()
        .filter(recovery -> !recovery.wayOut())
        .forEach(recovery -> parts.add(withoutLeaving(recovery)));
    if (parts.isEmpty()) {
      ways.forEach(
          way ->
              parts.add(
                  LossMessages.SAY.onlyLoss(way.label(), lost(with(way, Ending.ARRESTED).get(0)))));
    }
    return Words.capital(String.join("; ", parts)) + ".";
  }

  /** What a second of delay costs, on average from the shortest to the longest delay arrested. */
  private List<String> costOfDelay(List<Technique> ways) {
    List<String> costs = new ArrayList<>();
    for (Technique way : ways) {
      List<LossRow> arrested = with(way, Ending.ARRESTED);
      if (arrested.size() < 2) {
        continue;
      }
      LossRow first = arrested.get(0);
      LossRow last = arrested.get(arrested.size() - 1);
      double cost = Math.rint((printed(last) - printed(first)) / (last.delay() - first.delay()));
      if (cost >= 1) {
        costs.add(
            LossMessages.SAY.cost(
                Decimals.fixed(cost, 0),
                units.length().symbol(),
                way.label(),
                arrested.size() < block.delays().size() ? Decimals.brief(last.delay()) : ""));
      }
    }
    return costs.isEmpty() ? List.of() : List.of(LossMessages.SAY.costs(Words.and(costs)));
  }

  /** Which of the ways out loses least, delay by delay. */
  private List<String> leastLoss(List<Technique> ways) {
    if (ways.size() < 2) {
      return List.of();
    }
    List<String> parts = new ArrayList<>();
    List<Double> delays = new ArrayList<>();
    for (Technique way : ways) {
      List<LossRow> least =
          with(way, Ending.ARRESTED).stream()
              .filter(row -> ways.stream().allMatch(other -> !losesLess(other, row)))
              .toList();
      if (!least.isEmpty()) {
        parts.add(LossMessages.SAY.losesLeast(way.label(), delays(least)));
        least.forEach(row -> delays.add(row.delay()));
      }
    }
    boolean tied = delays.stream().distinct().count() < delays.size();
    return parts.isEmpty() ? List.of() : List.of(LossMessages.SAY.least(Words.and(parts), tied));
  }

  private boolean losesLess(Technique other, LossRow row) {
    LossRow beside = block.row(other, row.delay());
    return beside.isArrested() && printed(beside) < printed(row);
  }

  private List<String> failures(Technique recovery) {
    List<String> parts = new ArrayList<>();
    List<LossRow> ground = with(recovery, Ending.GROUND);
    List<LossRow> descending = with(recovery, Ending.NOT_ARRESTED);
    if (!ground.isEmpty()) {
      parts.add(LossMessages.SAY.onTheGround(delays(ground)));
    }
    List<LossRow> notLasting = with(recovery, Ending.ARREST_NOT_LASTING);
    if (!notLasting.isEmpty()) {
      parts.add(LossMessages.SAY.arrestDoesNotLast(delays(notLasting)));
    }
    if (!descending.isEmpty()) {
      parts.add(
          descending.size() > 1 && descending.size() == block.delays().size()
              ? LossMessages.SAY.arrestedAtNoDelay()
              : LossMessages.SAY.notArrested(delays(descending)));
    }
    return parts;
  }

  private String withoutLeaving(Technique recovery) {
    List<String> parts = new ArrayList<>();
    List<LossRow> arrested = with(recovery, Ending.ARRESTED);
    if (!arrested.isEmpty()) {
      LossRow last = arrested.get(arrested.size() - 1);
      parts.add(
          LossMessages.SAY.loses(lost(arrested.get(0)), arrested.size() == 1 ? "" : lost(last)));
    }
    parts.addAll(failures(recovery));
    String outcomes = String.join(" and ", parts);
    double spare = block.conditions().hover().spare();
    return recovery.isMistaken()
        ? LossMessages.SAY.mistaken(
            recovery.label(),
            Decimals.fixed(Unit.PERCENT.fromSi(Math.abs(spare)), 0),
            spare >= 0,
            outcomes)
        : LossMessages.SAY.nothing(outcomes);
  }

  private String lost(LossRow row) {
    return LossMessages.SAY.lossAt(units.lossInWords(row.loss()), Decimals.brief(row.delay()));
  }

  private List<LossRow> with(Technique recovery, Ending ending) {
    return block.column(recovery).stream().filter(row -> row.ending() == ending).toList();
  }

  /** The delays of some rows of one column, in words. */
  private String delays(List<LossRow> rows) {
    boolean every = rows.size() == block.delays().size();
    if (every && rows.size() == 1) {
      return "";
    }
    List<Double> all = block.delays().stream().sorted().toList();
    List<String> runs = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < rows.size(); i++) {
      int place = all.indexOf(rows.get(i).delay());
      boolean ends = i + 1 == rows.size() || all.indexOf(rows.get(i + 1).delay()) != place + 1;
      if (ends) {
        runs.addAll(run(rows.subList(from, i + 1)));
        from = i + 1;
      }
    }
    return LossMessages.SAY.at(Words.and(runs), every);
  }

  /** Neighbouring delays in words: three and more as a range. */
  private static List<String> run(List<LossRow> rows) {
    List<String> delays = rows.stream().map(row -> Decimals.brief(row.delay())).toList();
    return delays.size() < 3
        ? delays
        : List.of(delays.get(0) + " to " + delays.get(delays.size() - 1));
  }

  private double printed(LossRow row) {
    return units.roundedLoss(row.loss());
  }
}
