package io.github.ringstate.validation.catalogue;

import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Obtained;
import io.github.ringstate.validation.check.Question;
import io.github.ringstate.validation.check.Source;
import io.github.ringstate.validation.reference.ErrorBudget;
import io.github.ringstate.validation.reference.ReferenceTable;
import java.util.List;

/**
 * A whole column of a reference file at once.
 *
 * @param name what the checks are called
 * @param unit the column's unit
 * @param obtained how the file's numbers were obtained
 * @param source where they come from
 */
record TableCheck(String name, String unit, Obtained obtained, Source source) {

  private static final String WHY =
      "The budget stands in the reference file: the rounding of the numbers in it, no more.";

  /** Holds the library's values against a column: the largest error and the mean one. */
  List<Check> of(ReferenceTable table, String column, double[] actual) {
    double[] expected = table.numbers(column);
    ErrorBudget budget = table.budget(column);
    ErrorBudget found = ErrorBudget.of(expected, actual);
    return List.of(
        question("largest error over " + expected.length + " values")
            .atMost(budget.largest(), found.largest(), WHY),
        question("root-mean-square error over " + expected.length + " values")
            .atMost(budget.rootMeanSquare(), found.rootMeanSquare(), WHY));
  }

  private Question question(String quantity) {
    return source.published(name + ": " + quantity, quantity, unit).as(obtained);
  }
}
