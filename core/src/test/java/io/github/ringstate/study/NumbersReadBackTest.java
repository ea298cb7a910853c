package io.github.ringstate.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.TabulatedInflow;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** What a recovery, an entry and a model were made of can be read back through their interface. */
class NumbersReadBackTest {

  static final List<EntryKind> ENTRIES = EntryKind.ALL;

  /** Each number a tenth of the way from its standard to the end of its range. */
  private static ParameterSet changed(ParameterSet standard) {
    ParameterSet numbers = standard;
    for (Parameter parameter : standard.parameters()) {
      numbers =
          numbers.with(parameter, 0.9 * parameter.standard() + 0.1 * parameter.quantity().high());
    }
    return numbers;
  }

  @ParameterizedTest
  @FieldSource("io.github.ringstate.pilot.Technique#ALL")
  void aRecoverysNumbers(Technique technique) {
    ParameterSet numbers = changed(ParameterSet.standard(technique.parameters()));
    assertEquals(numbers, technique.maker().apply(numbers).numbers());
  }

  @ParameterizedTest
  @FieldSource("ENTRIES")
  void anEntrysNumbers(EntryKind kind) {
    ParameterSet numbers = changed(kind.numbers());
    assertEquals(numbers, kind.maker().apply(numbers).numbers());
  }

  @Test
  void aModelsNumbersThroughItsTableToo() {
    ParameterSet numbers = ParameterSet.standard(RingStateInflow.PARAMETERS);
    assertEquals(numbers, new TabulatedInflow(new RingStateInflow(numbers)).numbers());
  }
}
