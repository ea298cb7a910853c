package io.github.ringstate.validation.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.inflow.RingMemory;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.validation.open.Summary;
import io.github.ringstate.validation.open.Worth;
import io.github.ringstate.validation.open.Worth.Known;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class WorthTableTest {

  private static final Summary BAND = new Summary(50, 40, 50, 60);

  private static final double NONE = Double.NaN;

  private static Known known(
      Parameter parameter, String of, double narrowing, double alone, double lasting) {
    return new Known(parameter, of, narrowing, some(alone), some(lasting));
  }

  private static OptionalDouble some(double value) {
    return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  private static Worth worth(Helicopter craft, double delay, Known... numbers) {
    return new Worth(
        craft, Technique.LATERAL, BAND, BAND, List.of(numbers), BAND, delay, 0.02, 98, 2);
  }

  private static final WorthTable TABLE =
      WorthTable.of(
          List.of(
              worth(
                  DemoCraft.TRAINER,
                  0.6,
                  known(RingStateInflow.ONSET_AXIAL, "ring state", 0.03, 0.5, NONE),
                  known(RingMemory.DISSOLVING_TIME, "ring state", 0.2, 0.1, NONE)),
              worth(
                  DemoCraft.HEAVY,
                  0.7,
                  known(RingStateInflow.ONSET_AXIAL, "ring state", 0.3, 0.2, -0.01),
                  known(Helicopter.ENGINE_TIME, "engine", -0.02, NONE, 0.4))));

  @Test
  void theGreatestWorthAnywhereComesFirstAndWhatChanceMayGiveIsADash() {
    assertEquals(
        List.of("ring onset axial speed", "ring dissolving time", "engine time, s"),
        TABLE.narrowing().stream().map(WorthTable.Row::name).toList());
    assertEquals("4", TABLE.chance(), "two standard deviations of 2 per cent");
    assertEquals(List.of("–", "30"), TABLE.narrowing().get(0).cells());
    assertEquals(List.of("20", ""), TABLE.narrowing().get(1).cells());
    assertEquals(List.of("", "–"), TABLE.narrowing().get(2).cells());
  }

  @Test
  void theModelAloneHasItsOwnOrder() {
    assertEquals(2, TABLE.alone().size());
    assertEquals(List.of("50", "20"), TABLE.alone().get(0).cells());
  }

  @Test
  void onlyWhereArrestsFailDoesATableSayWhy() {
    assertEquals(1, TABLE.lastingColumns().size());
    assertEquals(1, TABLE.lasting().size());
    assertEquals(List.of("40"), TABLE.lasting().get(0).cells());
  }

  @Test
  void theWordsNameTheFirstOfEach() {
    String words = TABLE.first();
    assertTrue(words.contains("70 per cent (heavy, lateral)"), words);
    assertTrue(words.contains("ring onset axial speed"), words);
    assertTrue(words.contains("50 per cent (trainer, lateral)"), words);
    assertTrue(words.contains("engine time"), words);
    assertFalse(words.contains("ring dissolving time"), words);
  }
}
