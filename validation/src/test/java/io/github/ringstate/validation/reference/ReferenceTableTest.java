package io.github.ringstate.validation.reference;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReferenceTableTest {

  private static final List<String> LINES =
      List.of(
          "# Invented, for this test.",
          "# budget v: largest 1e-3, root mean square 5e-4",
          "z,v,branch",
          "0,1.0,climb",
          "-3,0.382,windmill");

  @Test
  void aFileGivesItsOriginItsBudgetAndItsColumns() {
    ReferenceTable table = ReferenceTable.parse(LINES);

    assertEquals(List.of("Invented, for this test."), table.origin());
    assertEquals(new ErrorBudget(1e-3, 5e-4), table.budget("v"));
    assertArrayEquals(new double[] {0, -3}, table.numbers("z"));
    assertEquals(List.of("climb", "windmill"), table.words("branch"));
    assertArrayEquals(new double[] {0.382}, table.where("branch", "windmill"::equals).numbers("v"));
  }

  @Test
  void aRowThatIsTooShortIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> ReferenceTable.parse(List.of("a,b", "1")));
  }

  @Test
  void theErrorsOfValuesAreTheirLargestAndTheRootOfTheirMeanSquare() {
    ErrorBudget errors = ErrorBudget.of(new double[] {1, 2}, new double[] {4, -2});

    assertEquals(4, errors.largest());
    assertEquals(Math.sqrt((9 + 16) / 2.0), errors.rootMeanSquare(), 1e-15);
    assertEquals(Double.NaN, ErrorBudget.of(new double[] {1}, new double[] {Double.NaN}).largest());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "cubic_edge.csv",
        "descent_fits.csv",
        "momentum_theory.csv",
        "standard_atmosphere_computed.csv",
        "standard_atmosphere_printed.csv",
        "tip_vortex_onset.csv"
      })
  void everyFileSaysWhereItsNumbersComeFrom(String name) {
    assertFalse(ReferenceTable.read(name).origin().isEmpty());
  }
}
