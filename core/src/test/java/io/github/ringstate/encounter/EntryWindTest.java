package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.quantity.Parameter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

class EntryWindTest {

  /** Entries fly north at first: a wind from behind blows toward north. */
  @ParameterizedTest
  @FieldSource("io.github.ringstate.encounter.EntryKind#ALL")
  void theWindOfAnEntryBlowsFromWhereItIsSaidTo(EntryKind kind) {
    for (double fromBehind : new double[] {4, -4}) {
      double value = kind.windAlong(fromBehind);
      assertEquals(4, Math.abs(value));
      assertEquals(fromBehind > 0 ? "from behind" : "from ahead", kind.windFrom(value));
    }
    if (kind.equals(EntryKind.DOWNWIND)) {
      return; // it begins across its wind and turns out of it
    }
    Parameter wind = kind.wind();
    double value = wind.quantity().low() < 0 ? wind.quantity().low() : wind.quantity().high();
    double[] blows = new double[3];
    kind.maker().apply(kind.numbers().with(wind, value)).wind().velocity(0, 0, 0, 30, blows);
    assertTrue(blows[0] != 0, "a wind of " + value);
    assertEquals(blows[0] > 0 ? "from behind" : "from ahead", kind.windFrom(value));
  }
}
