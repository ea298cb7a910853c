package io.github.ringstate.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.FlightQuantity;
import io.github.ringstate.encounter.History;
import io.github.ringstate.encounter.Instant;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.quantity.Unit;
import org.junit.jupiter.api.Test;

/** The model's flight at times on another clock, against its own history. */
class FlownTimesTest {

  private static final double CLOCK = 500;

  private static final History HISTORY =
      Encounter.of(Flights.CRAFT).withDelay(2).record(Simulator.fast()).history();

  /** Stops of the lever, deg. */
  private static final double LOWEST = Flights.CRAFT.numbers().get(CraftLimits.MINIMUM_COLLECTIVE);

  private static final double HIGHEST = Flights.CRAFT.numbers().get(CraftLimits.MAXIMUM_COLLECTIVE);

  private static FlownTimes at(double... sinceStart) {
    double[] times = sinceStart.clone();
    for (int k = 0; k < times.length; k++) {
      times[k] += CLOCK;
    }
    return new FlownTimes(HISTORY, Flights.CRAFT, CLOCK, times);
  }

  /** The lever counts as a share of the way from its lower to its upper stop. */
  @Test
  void withinTheFlightEachSeriesIsThatOfItsHistory() {
    double time = HISTORY.end() - 1.25;
    Instant instant = HISTORY.at(time);
    FlownTimes flown = at(3, time);
    assertEquals(instant.get(FlightQuantity.HEIGHT), flown.value(Series.HEIGHT, 1), 1e-9);
    assertEquals(
        instant.get(FlightQuantity.HEIGHT), flown.value(Series.PRESSURE_ALTITUDE, 1), 1e-9);
    assertEquals(
        instant.get(FlightQuantity.VERTICAL_SPEED), flown.value(Series.VERTICAL_SPEED, 1), 1e-9);
    assertEquals(instant.get(FlightQuantity.SPEED_NORTH), flown.value(Series.ALONG, 1), 1e-9);
    assertEquals(instant.get(FlightQuantity.SPEED_EAST), flown.value(Series.ACROSS, 1), 1e-9);
    assertEquals(instant.get(FlightQuantity.PITCH), flown.value(Series.PITCH, 1), 1e-12);
    assertEquals(instant.get(FlightQuantity.BANK), flown.value(Series.BANK, 1), 1e-12);
    double lever = Unit.DEGREE.fromSi(instant.get(FlightQuantity.COLLECTIVE));
    assertEquals((lever - LOWEST) / (HIGHEST - LOWEST), flown.value(Series.LEVER, 1), 1e-12);
  }

  /** Heights go on at the vertical speed of that end, everything else stays. */
  @Test
  void beforeItsStartAndAfterItsEndTheFlightIsSteady() {
    FlownTimes flown = at(-4, HISTORY.end() + 2);
    Instant start = HISTORY.at(0);
    Instant end = HISTORY.at(HISTORY.end());
    double before = start.get(FlightQuantity.VERTICAL_SPEED);
    double after = end.get(FlightQuantity.VERTICAL_SPEED);
    assertEquals(
        start.get(FlightQuantity.HEIGHT) - 4 * before, flown.value(Series.HEIGHT, 0), 1e-9);
    assertEquals(end.get(FlightQuantity.HEIGHT) + 2 * after, flown.value(Series.HEIGHT, 1), 1e-9);
    assertEquals(before, flown.value(Series.VERTICAL_SPEED, 0), 1e-12);
    assertEquals(after, flown.value(Series.VERTICAL_SPEED, 1), 1e-12);
    assertEquals(end.get(FlightQuantity.PITCH), flown.value(Series.PITCH, 1), 1e-12);
  }

  @Test
  void theLossIsFromTheFirstTimeToTheLowestOfAll() {
    double end = HISTORY.end();
    double first = HISTORY.at(end - 6).get(FlightQuantity.HEIGHT);
    double lowest = HISTORY.at(end).get(FlightQuantity.HEIGHT);
    assertEquals(first - lowest, at(end - 6, end - 3, end, end - 2).loss(), 1e-9);
    assertEquals(0, at(end, end - 5).loss());
  }
}
