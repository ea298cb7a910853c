package io.github.ringstate.validation.reference;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/**
 * A file of reference data: columns of numbers and words, their origin and error budgets.
 *
 * @param origin where the numbers come from, line by line
 * @param budgets how large the library's errors in a column may be
 * @param columns the names of the columns
 * @param rows the fields of each row
 */
public record ReferenceTable(
    List<String> origin,
    Map<String, ErrorBudget> budgets,
    List<String> columns,
    List<List<String>> rows) {

  private static final Pattern BUDGET =
      Pattern.compile("budget (\\S+): largest (\\S+), root mean square (\\S+)");

  /** Copies the lists and the map. */
  public ReferenceTable {
    origin = List.copyOf(origin);
    budgets = Map.copyOf(budgets);
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /**
   * Reads a file that stands beside this class.
   *
   * @param name the file's name
   * @return the table
   * @throws IllegalArgumentException if there is no such file, or a row has too few or too many
   *     fields
   */
  public static ReferenceTable read(String name) {
    try (InputStream stream = ReferenceTable.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalArgumentException("there is no reference file " + name);
      }
      return parse(
          new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))
              .lines()
              .toList());
    } catch (IOException e) {
      throw new UncheckedIOException("the reference file " + name + " cannot be read", e);
    }
  }

  /**
   * Reads lines.
   *
   * @param lines the lines of a file
   * @return the table
   * @throws IllegalArgumentException if a row has too few or too many fields
   */
  public static ReferenceTable parse(List<String> lines) {
    List<String> origin = new ArrayList<>();
    Map<String, ErrorBudget> budgets = new HashMap<>();
    List<List<String>> rows = new ArrayList<>();
    for (String line : lines) {
      if (line.startsWith("#")) {
        String remark = line.substring(1).strip();
        Matcher budget = BUDGET.matcher(remark);
        if (budget.matches()) {
          budgets.put(
              budget.group(1),
              new ErrorBudget(
                  Double.parseDouble(budget.group(2)), Double.parseDouble(budget.group(3))));
        } else {
          origin.add(remark);
        }
      } else if (!line.isBlank()) {
        rows.add(fields(line));
      }
    }
    if (rows.isEmpty()) {
      throw new IllegalArgumentException("a reference file has no line of column names");
    }
    List<String> columns = rows.remove(0);
    for (List<String> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(
            "a row has " + row.size() + " fields, not " + columns.size() + ": " + row);
      }
    }
    return new ReferenceTable(origin, budgets, columns, rows);
  }

  private static List<String> fields(String line) {
    try {
      return CSVParser.parse(line, CSVFormat.DEFAULT).getRecords().get(0).toList();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible); // it is read already
    }
  }

  /**
   * The budget of a column.
   *
   * @param column the column's name
   * @return how large the library's errors in it may be
   * @throws IllegalArgumentException if the file gives none
   */
  public ErrorBudget budget(String column) {
    ErrorBudget budget = budgets.get(column);
    if (budget == null) {
      throw new IllegalArgumentException("there is no error budget for the column " + column);
    }
    return budget;
  }

  /**
   * Some rows of the table.
   *
   * @param column a column's name
   * @param keep which of its fields to keep
   * @return the table of those rows
   */
  public ReferenceTable where(String column, Predicate<String> keep) {
    int index = index(column);
    return new ReferenceTable(
        origin, budgets, columns, rows.stream().filter(row -> keep.test(row.get(index))).toList());
  }

  /**
   * A column of numbers.
   *
   * @param column the column's name
   * @return its numbers, one for each row
   */
  public double[] numbers(String column) {
    int index = index(column);
    return rows.stream().mapToDouble(row -> Double.parseDouble(row.get(index))).toArray();
  }

  /**
   * A column of words.
   *
   * @param column the column's name
   * @return its fields, one for each row
   */
  public List<String> words(String column) {
    int index = index(column);
    return rows.stream().map(row -> row.get(index)).toList();
  }

  private int index(String column) {
    int index = columns.indexOf(column);
    if (index < 0) {
      throw new IllegalArgumentException("there is no column " + column + " in " + columns);
    }
    return index;
  }
}
