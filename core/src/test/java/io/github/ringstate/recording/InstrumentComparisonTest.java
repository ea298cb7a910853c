package io.github.ringstate.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A small part of {@link InstrumentComparison}: one flight of each. */
class InstrumentComparisonTest {

  static List<InstrumentComparison.Equipment> all() {
    return InstrumentComparison.ALL;
  }

  @ParameterizedTest
  @MethodSource("all")
  void eachTellsWhatItStatesAndTheDelayWhereAttitudeIsRecorded(
      InstrumentComparison.Equipment equipment) {
    InstrumentComparison.Errors errors = InstrumentComparison.errors(equipment, 1);
    assertTrue(errors.found(), "one encounter");
    assertTrue(Math.abs(errors.onset()) < 4 * errors.onsetDeviation(), errors::toString);
    assertTrue(Math.abs(errors.loss()) < 4 * errors.lossDeviation(), errors::toString);
    assertEquals(
        equipment.more().contains(Channel.PITCH), !Double.isNaN(errors.delay()), "delay known");
  }
}
