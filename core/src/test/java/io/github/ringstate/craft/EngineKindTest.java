package io.github.ringstate.craft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.quantity.Parameter;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class EngineKindTest {

  private static final double EXPONENT = Helicopter.TURBINE_LAPSE.standard();

  /**
   * P/P0 = 1.132 sigma - 0.132: Gagg and Ferrar, SAE Journal 34(6), 1934 (formula from memory); the
   * values are computed from the equivalent form sigma - (1 - sigma) / 7.55.
   */
  @ParameterizedTest
  @CsvSource({"1, 1", "0.9, 0.8868", "0.8, 0.7736", "0.7385, 0.7040"})
  void aPistonEngineLosesPowerAsGaggAndFerrarFound(double sigma, double share) {
    assertEquals(share, EngineKind.PISTON.lapse(sigma, EXPONENT), 0.00005);
    assertEquals(sigma - (1 - sigma) / 7.55, EngineKind.PISTON.lapse(sigma, EXPONENT), 0.0002);
  }

  @ParameterizedTest
  @EnumSource
  void anEngineGivesAllItsPowerAtSeaLevelAndLessTheThinnerTheAir(EngineKind kind) {
    assertEquals(1, kind.lapse(1, EXPONENT), 1e-15);
    double before = kind.lapse(0.15, EXPONENT);
    for (double sigma = 0.16; sigma < 1.3; sigma += 0.01) {
      assertTrue(kind.lapse(sigma, EXPONENT) > before);
      before = kind.lapse(sigma, EXPONENT);
    }
  }

  /** What a craft file may leave out is a number of a craft, the engine's time among it. */
  @Test
  void whatMayBeLeftOutBelongsToACraft() {
    List<Parameter> optional = EngineKind.optional();
    assertTrue(Helicopter.STANDARD_NUMBERS.parameters().containsAll(optional));
    assertTrue(optional.contains(Helicopter.ENGINE_TIME));
    for (EngineKind kind : EngineKind.values()) {
      assertEquals(kind.usual(Helicopter.ENGINE_TIME), kind.responseTime());
    }
  }

  @Test
  void aLabelIsTheConstantsNameInLowerCaseWords() {
    for (EngineKind kind : EngineKind.values()) {
      assertEquals(kind.name(), kind.label().toUpperCase(Locale.ROOT));
    }
    for (RotationSense sense : RotationSense.values()) {
      assertEquals(sense.name(), sense.label().toUpperCase(Locale.ROOT).replace('-', '_'));
    }
  }

  @Test
  void noEngineGivesLessThanNothing() {
    assertEquals(0, EngineKind.PISTON.lapse(0.05, EXPONENT));
    assertTrue(EngineKind.TURBINE.lapse(0.05, EXPONENT) > 0);
  }
}
