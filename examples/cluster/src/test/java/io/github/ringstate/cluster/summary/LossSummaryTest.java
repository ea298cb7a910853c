package io.github.ringstate.cluster.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.encounter.Ending;
import io.github.ringstate.files.sweep.SweepFile;
import io.github.ringstate.study.LossSpread;
import io.github.ringstate.study.sweep.Column;
import io.github.ringstate.study.sweep.Rows;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.StructType;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Spark's aggregates against the library's own quantiles. */
class LossSummaryTest {

  private static SparkSession session;

  @BeforeAll
  static void start() {
    session = SparkSession.builder().master("local[2]").appName("summary").getOrCreate();
  }

  @AfterAll
  static void stop() {
    session.stop();
  }

  private static Dataset<Row> dataset(SweepFile file) {
    Rows rows = file.sweep().rows(0, (int) file.sweep().count());
    StructType schema = RowSchema.of(rows.columns());
    List<Row> list = new ArrayList<>();
    for (int row = 0; row < rows.size(); row++) {
      Object[] values = new Object[rows.columns().size()];
      for (int column = 0; column < values.length; column++) {
        values[column] =
            switch (rows.columns().get(column).type()) {
              case INTEGER -> rows.integer(column, row);
              case NUMBER ->
                  Double.isNaN(rows.number(column, row)) ? null : rows.number(column, row);
              case WORD -> rows.word(column, row);
            };
      }
      list.add(RowFactory.create(values));
    }
    return session.createDataset(list, Encoders.row(schema)).repartition(5);
  }

  /** Endings and losses of each group, by the library's words. */
  private static Map<String, LossSpread> spreads(SweepFile file, List<String> by) {
    Rows rows = file.sweep().rows(0, (int) file.sweep().count());
    List<String> names = rows.columns().stream().map(Column::name).toList();
    Map<String, List<Integer>> flown = new TreeMap<>();
    for (int i = 0; i < rows.size(); i++) {
      int row = i;
      if (rows.word(names.indexOf("outcome"), row) != null) {
        String group =
            by.stream()
                .map(names::indexOf)
                .map(
                    column ->
                        rows.columns().get(column).type() == Column.Type.WORD
                            ? rows.word(column, row)
                            : String.valueOf(rows.number(column, row)))
                .collect(Collectors.joining(" "));
        flown.computeIfAbsent(group, none -> new ArrayList<>()).add(row);
      }
    }
    Map<String, Ending> endings =
        Stream.of(Ending.values()).collect(Collectors.toMap(Ending::label, ending -> ending));
    Map<String, LossSpread> spreads = new TreeMap<>();
    flown.forEach(
        (group, all) ->
            spreads.put(
                group,
                LossSpread.of(
                    all.stream()
                        .map(row -> endings.get(rows.word(names.indexOf("outcome"), row)))
                        .toArray(Ending[]::new),
                    all.stream()
                        .mapToDouble(row -> rows.number(names.indexOf("altitude_loss_ft"), row))
                        .toArray())));
    return spreads;
  }

  private static String key(LossGroup group) {
    List<String> key = new ArrayList<>(List.of(group.craft(), group.entry(), group.recovery()));
    group.state().ifPresent(key::add);
    group.delayS().ifPresent(delay -> key.add(String.valueOf(delay)));
    return String.join(" ", key);
  }

  private static void assertAsTheLibraryHasIt(LossGroup group, LossSpread spread) {
    String what = group.toString();
    assertEquals(spread.samples(), group.samples(), what);
    assertEquals(spread.withoutOnset(), group.withoutOnset(), what);
    assertEquals(spread.count(Ending.ARRESTED), group.arrested(), what);
    assertEquals(quantile(spread, 0.5), group.p50Ft(), what);
    assertEquals(quantile(spread, 0.95), group.p95Ft(), what);
    group
        .arrestedShare()
        .ifPresent(share -> assertEquals(spread.arrestedShare(), share.doubleValue(), 1e-4, what));
  }

  private static OptionalDouble quantile(LossSpread spread, double share) {
    return spread.samples() == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(spread.quantile(share, 0.95).value());
  }

  // samples of a size at which 0.5 n and 0.95 n are whole numbers, and of others
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 19, 20, 21, 40, 100, 101})
  void quantilesAndCountsAreTheLibrarysOwn(int values) {
    SweepFile file =
        SweepFile.parse(
            "test",
            """
            [craft]
            mass_kg = { from = 500, to = 620, sampled = true }
            [sample]
            method = "latin-hypercube"
            points = POINTS
            [entry]
            kind = ["settling", "steep", "downwind"]
            height_ft = 60
            [pilot]
            technique = ["forward", "lateral", "none"]
            delay_s = [0, 2]
            """
                .replace("POINTS", Integer.toString(values)));
    LossSummary summary = LossSummary.of(file, dataset(file));
    Map<String, LossSpread> spreads = spreads(file, summary.grouping().columns());
    assertEquals(18, summary.groups().size());
    assertEquals(spreads.size(), summary.groups().size());
    for (LossGroup group : summary.groups()) {
      assertAsTheLibraryHasIt(group, spreads.get(key(group)));
    }
  }

  @Test
  void pilotsWithDelaysOfTheirOwnArePutTogetherByTheirState() {
    SweepFile file =
        SweepFile.parse(
            "test",
            """
            [pilot]
            technique = ["lateral", "collective"]
            state = ["primed", "distracted"]
            count = 60
            """);
    LossSummary summary = LossSummary.of(file, dataset(file));
    Map<String, LossSpread> spreads =
        spreads(file, List.of("craft", "entry", "recovery", "pilot_state"));
    assertEquals(4, summary.groups().size());
    for (LossGroup group : summary.groups()) {
      assertEquals(OptionalDouble.empty(), group.delayS());
      assertAsTheLibraryHasIt(group, spreads.get(key(group)));
    }
    assertTrue(summary.groups().stream().anyMatch(group -> group.p95Ft().isPresent()));
  }

  @Test
  void whatCannotBeFlownIsCountedAndIsNoSample() {
    SweepFile file =
        SweepFile.parse("test", "[craft]\nmass_kg = { from = 600, to = 640, values = 5 }\n");
    LossSummary summary = LossSummary.of(file, dataset(file));
    assertEquals(5, summary.points());
    assertEquals(2, summary.failed()); // 630 and 640 kg; the demo trainer may have 620 kg
    assertEquals(3, summary.groups().stream().mapToLong(LossGroup::samples).sum());
  }
}
