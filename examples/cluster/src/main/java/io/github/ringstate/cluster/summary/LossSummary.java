package io.github.ringstate.cluster.summary;

import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.expr;

import io.github.ringstate.encounter.Ending;
import io.github.ringstate.files.sweep.SweepFile;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.sweep.Output;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;

/**
 * The altitude losses of a sweep, group by group.
 *
 * @param name the sweep's file, as the user named it
 * @param grouping what the points are told apart by
 * @param groups the groups, in alphabetical order and that of the delays
 */
public record LossSummary(String name, Grouping grouping, List<LossGroup> groups) {

  /**
   * The loss as the library counts it: infinite for those who did not arrest the descent above the
   * ground, none for those who did not meet the ring state or could not be flown.
   */
  private static final String LOSS =
      "CASE WHEN outcome = '"
          + Ending.ARRESTED.label()
          + "' THEN %s WHEN outcome <> '"
          + Ending.NO_ONSET.label()
          + "' THEN DOUBLE('Infinity') END";

  /** Copies the groups. */
  public LossSummary {
    groups = List.copyOf(groups);
  }

  /**
   * Works the summary out.
   *
   * @param file the sweep
   * @param rows its rows, all of them
   * @return the summary
   */
  public static LossSummary of(SweepFile file, Dataset<Row> rows) {
    Grouping grouping = Grouping.of(file.sweep());
    Column[] by = grouping.columns().stream().map(name -> col(name)).toArray(Column[]::new);
    List<LossGroup> groups =
        rows
            .groupBy(by)
            .agg(
                expr("count(*)").as("points"),
                expr("count(error)").as("failed"),
                counted("without_onset", Ending.NO_ONSET),
                counted("arrested", Ending.ARRESTED),
                quantile("p50_ft", "0.5", file),
                quantile("p95_ft", "0.95", file))
            .orderBy(by)
            .collectAsList()
            .stream()
            .map(row -> group(grouping, row))
            .toList();
    return new LossSummary(file.name(), grouping, groups);
  }

  private static Column counted(String name, Ending ending) {
    return expr("count_if(outcome = '" + ending.label() + "')").as(name);
  }

  private static Column quantile(String name, String share, SweepFile file) {
    Output.Units units = file.sweep().spec().output().units();
    String column = "altitude_loss_" + units.length().suffix();
    String feet = units == Output.Units.SI ? column + " / " + Unit.FOOT.toSi(1) + "D" : column;
    return expr("percentile_disc("
            + share
            + ") WITHIN GROUP (ORDER BY "
            + LOSS.formatted(feet)
            + ")")
        .as(name);
  }

  private static LossGroup group(Grouping grouping, Row row) {
    return new LossGroup(
        row.getAs("craft"),
        row.getAs("entry"),
        row.getAs("recovery"),
        grouping.state() ? Optional.of(row.getAs(Grouping.STATE)) : Optional.empty(),
        grouping.delay() ? number(row, Grouping.DELAY) : OptionalDouble.empty(),
        row.getAs("points"),
        row.getAs("failed"),
        row.getAs("without_onset"),
        row.getAs("arrested"),
        number(row, "p50_ft"),
        number(row, "p95_ft"));
  }

  private static OptionalDouble number(Row row, String name) {
    int place = row.fieldIndex(name);
    return row.isNullAt(place) ? OptionalDouble.empty() : OptionalDouble.of(row.getDouble(place));
  }

  /**
   * How many points there are.
   *
   * @return the number in all groups
   */
  public long points() {
    return groups.stream().mapToLong(LossGroup::points).sum();
  }

  /**
   * How many points could not be flown.
   *
   * @return the number in all groups
   */
  public long failed() {
    return groups.stream().mapToLong(LossGroup::failed).sum();
  }
}
