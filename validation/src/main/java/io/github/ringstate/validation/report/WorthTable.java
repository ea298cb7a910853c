package io.github.ringstate.validation.report;

import io.github.ringstate.validation.open.Worth;
import io.github.ringstate.validation.open.Worth.Known;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * The numbers by what they would be worth, the greatest first.
 *
 * @param columns craft and way out of each column
 * @param narrowing a row for each number
 * @param alone a row for each number of the model, all else standard
 * @param lastingColumns craft and way out of each column of the second table
 * @param lasting a row for each number that has to do with whether an arrest lasts
 * @param chance two standard deviations of chance, per cent, the greatest of all columns
 * @param first in words, what would be worth most
 */
record WorthTable(
    List<Column> columns,
    List<Row> narrowing,
    List<Row> alone,
    List<Column> lastingColumns,
    List<Row> lasting,
    String chance,
    String first) {

  /** A craft and a way out. */
  record Column(String craft, String way) {}

  /**
   * A number and what it is worth by column; a dash where it plays no part or chance might be all.
   */
  record Row(String name, String of, List<String> cells) {}

  /** A number's worth in one column. */
  private record Value(Worth worth, Known known, double value) {}

  private static final double LEAST_LASTING = 0.02;

  static WorthTable of(List<Worth> worths) {
    double chance = 2 * worths.stream().mapToDouble(Worth::chance).max().orElse(0);
    List<Worth> ended = worths.stream().filter(WorthTable::endsOtherwise).toList();
    List<List<Value>> narrowing = ranked(worths, known -> OptionalDouble.of(known.narrowing()));
    List<List<Value>> alone = ranked(worths, Known::alone);
    List<List<Value>> lasting =
        ranked(ended, Known::lasting).stream()
            .filter(values -> greatest(values).value() > LEAST_LASTING)
            .toList();
    return new WorthTable(
        columns(worths),
        rows(worths, narrowing, chance),
        rows(worths, alone, chance),
        columns(ended),
        rows(ended, lasting, LEAST_LASTING),
        ModelsPage.percent(chance, 0),
        words(worths, narrowing, alone, lasting));
  }

  private static boolean endsOtherwise(Worth worth) {
    return worth.numbers().stream().map(Known::lasting).anyMatch(OptionalDouble::isPresent);
  }

  private static List<Column> columns(List<Worth> worths) {
    return worths.stream()
        .map(worth -> new Column(worth.craft().name(), worth.technique().label()))
        .toList();
  }

  /** The values of each number that has any, the greatest first. */
  private static List<List<Value>> ranked(
      List<Worth> worths, Function<Known, OptionalDouble> worthOf) {
    Map<List<String>, List<Value>> numbers = new LinkedHashMap<>();
    for (Worth worth : worths) {
      for (Known known : worth.numbers()) {
        worthOf
            .apply(known)
            .ifPresent(
                value ->
                    numbers
                        .computeIfAbsent(
                            List.of(known.of(), known.parameter().key()), none -> new ArrayList<>())
                        .add(new Value(worth, known, value)));
      }
    }
    return numbers.values().stream()
        .sorted(Comparator.comparingDouble(values -> -greatest(values).value()))
        .toList();
  }

  private static Value greatest(List<Value> values) {
    return values.stream().max(Comparator.comparingDouble(Value::value)).orElseThrow();
  }

  private static List<Row> rows(List<Worth> worths, List<List<Value>> ranked, double least) {
    Function<Value, String> shown =
        value -> value.value() > least ? ModelsPage.percent(value.value(), 0) : "–";
    return ranked.stream()
        .map(
            values ->
                new Row(
                    ModelsPage.name(values.get(0).known().parameter()),
                    values.get(0).known().of(),
                    worths.stream()
                        .map(
                            worth ->
                                values.stream()
                                    .filter(value -> value.worth().equals(worth))
                                    .findFirst()
                                    .map(shown)
                                    .orElse(""))
                        .toList()))
        .toList();
  }

  private static String words(
      List<Worth> worths,
      List<List<Value>> narrowing,
      List<List<Value>> alone,
      List<List<Value>> lasting) {
    Worth late = worths.stream().max(Comparator.comparingDouble(Worth::delay)).orElseThrow();
    StringBuilder words = new StringBuilder();
    words
        .append("A known delay would narrow a band in which the delay varies by up to ")
        .append(place(late.delay(), late))
        .append(". ");
    first(narrowing, "pilot").ifPresent(value -> words.append(sentence("what pilots do", value)));
    words.append(sentence("the numbers of the model, all else known", greatest(alone.get(0))));
    if (!lasting.isEmpty()) {
      Value value = greatest(lasting.get(0));
      words
          .append("Whether an arrest lasts is above all a matter of the ")
          .append(value.known().parameter().name())
          .append(", with which up to ")
          .append(place(value.value(), value.worth()))
          .append(" of its variance goes.");
    }
    return words.toString().strip();
  }

  private static String sentence(String among, Value value) {
    return "Among "
        + among
        + ", the "
        + value.known().parameter().name()
        + " is worth most: known, it would narrow the band by up to "
        + place(value.value(), value.worth())
        + ". ";
  }

  private static Optional<Value> first(List<List<Value>> ranked, String of) {
    return ranked.stream()
        .map(WorthTable::greatest)
        .filter(value -> value.known().of().equals(of))
        .findFirst();
  }

  private static String place(double value, Worth worth) {
    return ModelsPage.percent(value, 0)
        + " per cent ("
        + worth.craft().name()
        + ", "
        + worth.technique().label()
        + ")";
  }
}
