package io.github.ringstate.cluster.summary;

import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.Column;
import io.github.ringstate.files.report.Report;
import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Table;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.report.TextColumn;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A summary of losses for people and for machines.
 *
 * @param summary the losses
 */
public record SummaryReport(LossSummary summary) implements Report {

  /** Rows for people; who has more groups reads the file. */
  private static final int MOST_ROWS = 60;

  private static final BigDecimal PER_CENT = BigDecimal.valueOf(100);

  @Override
  public String title() {
    return "altitude losses of a sweep";
  }

  @Override
  public Sheet sheet(UnitSystem units) {
    List<Sheet.Block> blocks = new ArrayList<>();
    blocks.add(new Sheet.Title(title()));
    blocks.add(
        new Sheet.Paragraph(
            summary.points()
                + " points of "
                + summary.name()
                + ", of which "
                + summary.failed()
                + " could not be flown; their rows say why."));
    List<LossGroup> shown = summary.groups().stream().limit(MOST_ROWS).toList();
    blocks.add(TextColumn.grid(columns(units), shown));
    if (shown.size() < summary.groups().size()) {
      blocks.add(
          new Sheet.Paragraph(
              "The first "
                  + shown.size()
                  + " of "
                  + summary.groups().size()
                  + " rows; summary.csv has all of them."));
    }
    blocks.add(new Sheet.Terms(terms("50 % and 95 %", "arrested")));
    blocks.add(new Sheet.Paragraph("CAUTION. " + Caution.TEXT));
    return new Sheet(blocks);
  }

  private List<TextColumn<LossGroup>> columns(UnitSystem units) {
    List<TextColumn<LossGroup>> columns = new ArrayList<>();
    columns.add(TextColumn.left(LossGroup::craft, "", "craft"));
    columns.add(TextColumn.left(LossGroup::entry, "", "entry"));
    columns.add(TextColumn.left(LossGroup::recovery, "", "recovery"));
    if (summary.grouping().state()) {
      columns.add(TextColumn.left(group -> group.state().orElse(""), "", "state"));
    }
    if (summary.grouping().delay()) {
      columns.add(TextColumn.right(group -> given(group.delayS()), "delay", "s"));
    }
    columns.add(TextColumn.right(group -> Long.toString(group.points()), "", "points"));
    columns.add(TextColumn.right(group -> Long.toString(group.failed()), "not", "flown"));
    columns.add(TextColumn.right(group -> Long.toString(group.withoutOnset()), "no", "onset"));
    columns.add(TextColumn.right(SummaryReport::arrested, "arrested", "%"));
    columns.add(
        TextColumn.right(
            group -> lost(group.p50Ft(), units), "loss, " + units.length().symbol(), "50 %"));
    columns.add(TextColumn.right(group -> lost(group.p95Ft(), units), "", "95 %"));
    return columns;
  }

  private static String given(OptionalDouble delay) {
    return delay.isPresent() ? Decimals.given(delay.getAsDouble()) : "";
  }

  private static String arrested(LossGroup group) {
    return group
        .arrestedShare()
        .map(share -> share.multiply(PER_CENT).setScale(2).toPlainString())
        .orElse("");
  }

  private static String lost(OptionalDouble loss, UnitSystem units) {
    if (loss.isEmpty()) {
      return "";
    }
    return Double.isInfinite(loss.getAsDouble())
        ? "not arrested"
        : units.loss(Unit.FOOT.toSi(loss.getAsDouble()));
  }

  @Override
  public Table<LossGroup> table() {
    List<Column<LossGroup>> columns = new ArrayList<>();
    columns.add(new Column<>("craft", group -> Cell.text(group.craft())));
    columns.add(new Column<>("entry", group -> Cell.text(group.entry())));
    columns.add(new Column<>("recovery", group -> Cell.text(group.recovery())));
    if (summary.grouping().state()) {
      columns.add(
          new Column<>(
              Grouping.STATE, group -> group.state().map(Cell::text).orElse(Cell.NOTHING)));
    }
    if (summary.grouping().delay()) {
      columns.add(new Column<>(Grouping.DELAY, group -> exact(group.delayS())));
    }
    columns.add(new Column<>("points", group -> count(group.points())));
    columns.add(new Column<>("failed", group -> count(group.failed())));
    columns.add(new Column<>("without_onset", group -> count(group.withoutOnset())));
    columns.add(new Column<>("samples", group -> count(group.samples())));
    columns.add(
        new Column<>(
            "arrested_share",
            group ->
                group
                    .arrestedShare()
                    .map(share -> new Cell(share.toPlainString(), Cell.Kind.NUMBER))
                    .orElse(Cell.NOTHING)));
    columns.add(new Column<>("p50_ft", group -> exact(group.p50Ft())));
    columns.add(new Column<>("p95_ft", group -> exact(group.p95Ft())));
    return new Table<>(columns, summary.groups());
  }

  private static Cell count(long number) {
    return new Cell(Long.toString(number), Cell.Kind.NUMBER);
  }

  private static Cell exact(OptionalDouble number) {
    return number.isPresent() && Double.isFinite(number.getAsDouble())
        ? Cell.exact(number.getAsDouble())
        : Cell.NOTHING;
  }

  @Override
  public Map<String, Cell> facts() {
    Map<String, Cell> facts = new LinkedHashMap<>();
    facts.put("sweep", Cell.text(summary.name()));
    facts.put("points", count(summary.points()));
    facts.put("failed", count(summary.failed()));
    return facts;
  }

  @Override
  public List<Term> definitions() {
    return terms("p50_ft, p95_ft", "arrested_share");
  }

  @Override
  public Map<String, Table<?>> tables() {
    return Map.of("groups", table());
  }

  private static List<Term> terms(String quantiles, String arrested) {
    return List.of(
        new Term(
            quantiles,
            "so many of those who met the ring state lost no more than this, height at onset less"
                + " the lowest height: the least loss flown of which that is true. A descent that"
                + " was not arrested above the ground counts as a loss greater than any other"),
        new Term(
            arrested,
            "share of those who met the ring state and arrested the descent above the ground, cut"
                + " off, so that only all of them make the whole"));
  }
}
