package io.github.ringstate.study.sweep;

import io.github.ringstate.encounter.Ending;
import io.github.ringstate.pilot.Spread;
import io.github.ringstate.pilot.Technique;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/**
 * Which columns the rows of a sweep have, and where.
 *
 * @param shown the settings that have a column
 * @param drawn the keys of the numbers of drawn pilots that have a column
 * @param output the units of the results
 * @param own the columns of extensions
 * @param sensitive whether a column says if the outcome is sensitive
 * @param columns all columns, in order
 */
record RowLayout(
    List<Setting> shown,
    List<String> drawn,
    Output.Units output,
    List<OutputColumn> own,
    boolean sensitive,
    List<Column> columns) {

  private static final Column SENSITIVE =
      new Column("sensitive", Column.Type.WORD, List.of("false", "true"));

  /** Names that no column of an extension may have. */
  static final List<String> BUILT_IN_NAMES =
      Stream.concat(
              Stream.of(SENSITIVE),
              Stream.of(Output.Units.values())
                  .flatMap(
                      units ->
                          Stream.concat(
                              inputs(true, List.of(), List.of(), List.of()).stream(),
                              results(units).stream())))
          .map(Column::name)
          .distinct()
          .toList();

  static RowLayout of(
      SweepSpec spec, Settings settings, List<Setting> shown, List<String> techniques) {
    List<String> drawn =
        spec.pilots() > 0 && spec.output().drawnNumbers()
            ? techniques.stream()
                .map(name -> settings.techniques().get(name))
                .map(Technique::spreads)
                .flatMap(List::stream)
                .map((Spread spread) -> spread.parameter().key())
                .distinct()
                .toList()
            : List.of();
    List<OutputColumn> own = settings.plugins().columns();
    List<Column> inputs =
        inputs(
            spec.pilots() > 0,
            settings.crafts().keySet(),
            settings.entryKinds().keySet(),
            settings.techniques().keySet());
    List<Column> results = results(spec.output().units());
    List<Column> all = new ArrayList<>();
    all.add(inputs.get(0));
    for (Setting setting : shown) {
      Column.Type type = setting.takesWords() ? Column.Type.WORD : Column.Type.NUMBER;
      all.add(new Column(setting.key().replace('.', '_'), type, setting.words()));
    }
    all.addAll(inputs.subList(1, inputs.size()));
    // behind what every row has, so that these stand where they stand without
    drawn.forEach(key -> all.add(new Column("pilot_" + key, Column.Type.NUMBER)));
    all.addAll(results.subList(0, results.size() - 1));
    own.forEach(column -> all.add(new Column(column.name(), Column.Type.NUMBER)));
    boolean sensitive = spec.output().sensitive();
    if (sensitive) {
      all.add(SENSITIVE);
    }
    all.add(results.get(results.size() - 1));
    return new RowLayout(
        List.copyOf(shown), drawn, spec.output().units(), own, sensitive, List.copyOf(all));
  }

  private static List<Column> inputs(
      boolean pilots,
      Collection<String> crafts,
      Collection<String> entries,
      Collection<String> techniques) {
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("index", Column.Type.INTEGER));
    if (pilots) {
      columns.add(new Column("pilot_number", Column.Type.INTEGER));
    }
    columns.add(new Column("craft", Column.Type.WORD, List.copyOf(crafts)));
    columns.add(new Column("entry", Column.Type.WORD, List.copyOf(entries)));
    columns.add(new Column("recovery", Column.Type.WORD, List.copyOf(techniques)));
    columns.add(new Column("delay_s", Column.Type.NUMBER));
    return columns;
  }

  private static List<Column> results(Output.Units units) {
    String length = units.length().suffix();
    String rate = units.rate().suffix();
    return List.of(
        new Column(
            "outcome", Column.Type.WORD, Stream.of(Ending.values()).map(Ending::label).toList()),
        new Column("altitude_loss_" + length, Column.Type.NUMBER),
        new Column("loss_after_recognition_" + length, Column.Type.NUMBER),
        new Column("peak_descent_" + rate, Column.Type.NUMBER),
        new Column("time_to_arrest_s", Column.Type.NUMBER),
        new Column("impact_" + rate, Column.Type.NUMBER),
        new Column("error", Column.Type.WORD));
  }
}
