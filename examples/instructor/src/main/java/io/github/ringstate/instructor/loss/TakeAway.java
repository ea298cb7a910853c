package io.github.ringstate.instructor.loss;

import io.github.ringstate.encounter.Ending;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.pilot.Technique;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What a pilot would take from a loss table, in one sentence.
 *
 * <p>Every part is worked out from the numbers as printed, so that a reader can check it with a
 * pencil, and none calls a height or a delay safe.
 */
final class TakeAway {

  private final LossBlock block;
  private final UnitSystem units;

  private TakeAway(LossBlock block, UnitSystem units) {
    this.block = block;
    this.units = units;
  }

  /**
   * Puts a table into a sentence.
   *
   * @param block the table
   * @param units the units to speak in
   * @return the sentence
   */
  static String of(LossBlock block, UnitSystem units) {
    return new TakeAway(block, units).sentence();
  }

  private String sentence() {
    if (block.rows().stream().allMatch(row -> row.ending() == Ending.NO_ONSET)) {
      return "These conditions do not lead into the ring state, so the table says nothing of what a"
          + " recovery would cost.";
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
          way -> parts.add(way.label() + " loses " + lost(with(way, Ending.ARRESTED).get(0))));
    }
    String sentence = String.join("; ", parts);
    return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1) + ".";
  }

  /** What a second of delay costs, on average from the shortest to the longest delay arrested. */
  private List<String> costOfDelay(List<Technique> ways) {
    List<String> costs = new ArrayList<>();
    for (Technique way : ways) {
      List<LossRow> arrested = block.column(way).stream().filter(TakeAway::isArrested).toList();
      if (arrested.size() < 2) {
        continue;
      }
      LossRow first = arrested.get(0);
      LossRow last = arrested.get(arrested.size() - 1);
      double cost = Math.rint((printed(last) - printed(first)) / (last.delayS() - first.delayS()));
      if (cost >= 1) {
        costs.add(
            Decimals.fixed(cost, 0)
                + " "
                + units.length().symbol()
                + " with "
                + way.label()
                + (arrested.size() < block.delays().size()
                    ? " (up to " + seconds(last.delayS()) + ")"
                    : ""));
      }
    }
    return costs.isEmpty()
        ? List.of()
        : List.of("act at once: each second of delay costs on average " + PilotTerms.and(costs));
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
          block.column(way).stream()
              .filter(TakeAway::isArrested)
              .filter(row -> ways.stream().allMatch(other -> !losesLess(other, row)))
              .toList();
      if (!least.isEmpty()) {
        parts.add("with " + way.label() + delays(least));
        least.forEach(row -> delays.add(row.delayS()));
      }
    }
    if (parts.isEmpty()) {
      return List.of();
    }
    boolean tied = delays.stream().distinct().count() < delays.size();
    return List.of(
        "of the ways out, least is lost "
            + PilotTerms.and(parts)
            + (tied ? " (alike where they share a delay)" : ""));
  }

  private boolean losesLess(Technique other, LossRow row) {
    LossRow beside = block.row(other, row.delayS());
    return isArrested(beside) && printed(beside) < printed(row);
  }

  private List<String> failures(Technique recovery) {
    List<String> parts = new ArrayList<>();
    List<LossRow> ground = with(recovery, Ending.GROUND);
    List<LossRow> descending = with(recovery, Ending.NOT_ARRESTED);
    if (!ground.isEmpty()) {
      parts.add("ends on the ground" + delays(ground));
    }
    if (!descending.isEmpty()) {
      parts.add(
          descending.size() > 1 && descending.size() == block.delays().size()
              ? "arrests the descent at no delay"
              : "does not arrest the descent" + delays(descending));
    }
    return parts;
  }

  private String withoutLeaving(Technique recovery) {
    String subject =
        recovery.equals(Technique.NONE)
            ? "doing nothing"
            : recovery.label()
                + " alone is not a way out and, with "
                + sparePower()
                + " the hover takes,";
    List<String> parts = new ArrayList<>();
    List<LossRow> arrested = with(recovery, Ending.ARRESTED);
    if (!arrested.isEmpty()) {
      LossRow first = arrested.get(0);
      LossRow last = arrested.get(arrested.size() - 1);
      parts.add("loses " + lost(first) + (arrested.size() == 1 ? "" : " and " + lost(last)));
    }
    parts.addAll(failures(recovery));
    return subject + " " + String.join(" and ", parts);
  }

  private String sparePower() {
    double spare = block.conditions().hover().spare();
    return Decimals.fixed(100 * Math.abs(spare), 0)
        + " % "
        + (spare < 0 ? "less power than" : "more power than");
  }

  private String lost(LossRow row) {
    return units.lost(row.altitudeLossFt().getAsDouble())
        + " "
        + units.length().symbol()
        + " at "
        + seconds(row.delayS());
  }

  private List<LossRow> with(Technique recovery, Ending ending) {
    return block.column(recovery).stream().filter(row -> row.ending() == ending).toList();
  }

  /** The delays of some rows of one column, in words. */
  private String delays(List<LossRow> rows) {
    if (rows.size() == block.delays().size()) {
      return rows.size() == 1 ? "" : " at every delay";
    }
    List<Double> all = block.delays().stream().sorted().toList();
    List<String> runs = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < rows.size(); i++) {
      int place = all.indexOf(rows.get(i).delayS());
      boolean ends = i + 1 == rows.size() || all.indexOf(rows.get(i + 1).delayS()) != place + 1;
      if (ends) {
        runs.addAll(run(rows.subList(from, i + 1)));
        from = i + 1;
      }
    }
    return " at " + PilotTerms.and(runs) + " s";
  }

  /** Neighbouring delays in words: three and more as a range. */
  private static List<String> run(List<LossRow> rows) {
    List<String> delays = rows.stream().map(row -> Decimals.brief(row.delayS())).toList();
    return delays.size() < 3
        ? delays
        : List.of(delays.get(0) + " to " + delays.get(delays.size() - 1));
  }

  private static boolean isArrested(LossRow row) {
    return row.ending() == Ending.ARRESTED;
  }

  private double printed(LossRow row) {
    return units.rounded(row.altitudeLossFt().getAsDouble());
  }

  private static String seconds(double delay) {
    return Decimals.brief(delay) + " s";
  }
}
