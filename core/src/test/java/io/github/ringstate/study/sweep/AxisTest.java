package io.github.ringstate.study.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class AxisTest {

  static Stream<Axis.Range> ranges() {
    SplittableRandom random = new SplittableRandom(1);
    return Stream.generate(
            () ->
                new Axis.Range(
                    "craft.mass_kg",
                    random.nextDouble(0.1, 1000),
                    random.nextDouble(0.1, 1000),
                    random.nextInt(2, 2000),
                    random.nextBoolean() ? Scale.LINEAR : Scale.LOG))
        .limit(200);
  }

  @ParameterizedTest
  @MethodSource("ranges")
  void theEndsOfARangeAreExactAndItRunsFromOneToTheOther(Axis.Range range) {
    assertEquals(range.from(), range.value(0));
    assertEquals(range.to(), range.value(range.size() - 1));
    double sense = Math.signum(range.to() - range.from());
    for (int i = 1; i < range.size(); i++) {
      assertTrue(sense * (range.value(i) - range.value(i - 1)) > 0, range + " at " + i);
    }
  }

  @ParameterizedTest
  @MethodSource("ranges")
  void theStepsOfARangeAreEqualAsDifferencesOrAsRatios(Axis.Range range) {
    boolean log = range.scale() == Scale.LOG;
    double first = step(range, 1, log);
    for (int i = 2; i < range.size(); i++) {
      // the rounding of two values of up to 1000, over the least step
      assertEquals(first, step(range, i, log), log ? 1e-14 : 1e-12, range + " at " + i);
    }
  }

  private static double step(Axis.Range range, int place, boolean log) {
    return log
        ? range.value(place) / range.value(place - 1)
        : range.value(place) - range.value(place - 1);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, 5})
  void anEndThatIsNoneIsRefused(double to) {
    assertThrows(
        SettingException.class, () -> new Axis.Range("craft.mass_kg", 5, to, 3, Scale.LINEAR));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1})
  void ratiosNeedPositiveEnds(double from) {
    assertThrows(
        SettingException.class, () -> new Axis.Range("pilot.delay_s", from, 2, 3, Scale.LOG));
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 0, 1, Axis.MOST_VALUES + 1})
  void aNumberOfValuesThatIsNoneIsRefused(int values) {
    assertThrows(
        SettingException.class, () -> new Axis.Range("pilot.delay_s", 0, 2, values, Scale.LINEAR));
  }

  static Stream<List<Double>> badLists() {
    return Stream.of(List.of(), List.of(1.0, 2.0, 1.0), List.of(0.0, -0.0));
  }

  @ParameterizedTest
  @MethodSource("badLists")
  void aListIsNotEmptyAndHasEachValueOnce(List<Double> values) {
    assertThrows(SettingException.class, () -> new Axis.Numbers("pilot.delay_s", values));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1})
  void neitherEndOfRatiosIsZeroOrLess(double to) {
    assertThrows(
        SettingException.class, () -> new Axis.Range("pilot.delay_s", 2, to, 3, Scale.LOG));
  }

  @Test
  void theGreatestFiniteNumberIsAnEndAsAnyOther() {
    double most = Double.MAX_VALUE;
    assertEquals(most, new Axis.Range("x", 0, most, 3, Scale.LINEAR).value(2));
    assertEquals(-most, new Axis.Range("x", -most, 0, 3, Scale.LINEAR).value(0));
  }
}
