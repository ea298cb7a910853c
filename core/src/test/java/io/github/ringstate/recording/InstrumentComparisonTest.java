package io.github.ringstate.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

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

  /**
   * Of normal errors 68 in 100 are within one standard deviation and 95 within two. At one reading
   * a second deviations were three times too great once.
   */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void lossesAreOffByWhatIsStatedAtAnyRate(int number) {
    InstrumentComparison.Equipment equipment = InstrumentComparison.ALL.get(number);
    double[] off =
        LongStream.rangeClosed(1, 24)
            .mapToObj(flight -> InstrumentComparison.errors(equipment, flight))
            .filter(InstrumentComparison.Errors::found)
            .mapToDouble(errors -> Math.abs(errors.loss()) / errors.lossDeviation())
            .toArray();
    assertTrue(off.length >= 18, off.length + " found");
    double within = (double) DoubleStream.of(off).filter(ratio -> ratio < 1).count() / off.length;
    assertEquals(0.68, within, 0.18, () -> equipment.name() + ": " + Arrays.toString(off));
    assertTrue(DoubleStream.of(off).filter(ratio -> ratio > 2).count() <= 3, Arrays.toString(off));
  }
}
