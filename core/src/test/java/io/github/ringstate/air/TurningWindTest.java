package io.github.ringstate.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.ringstate.quantity.OutOfRangeException;
import org.junit.jupiter.api.Test;

class TurningWindTest {

  private static double[] at(WindField wind, double time) {
    double[] velocity = new double[3];
    wind.velocity(time, 1, 2, 50, velocity);
    return velocity;
  }

  /** Convention of meteorology: a wind that veers goes clockwise, from north to east. */
  @Test
  void aNortherlyThatVeersByAQuarterTurnIsAnEasterly() {
    WindField wind = TurningWind.of(Wind.from(0, 8), Math.PI / 2, 5, 10);
    double[] easterly = at(Wind.from(Math.PI / 2, 8), 0);
    assertEquals(-8, at(wind, 4)[0], 1e-12);
    assertEquals(0, at(wind, 4)[1], 1e-12);
    assertEquals(easterly[0], at(wind, 15)[0], 1e-12);
    assertEquals(easterly[1], at(wind, 15)[1], 1e-12);
    assertEquals(easterly[1], at(wind, 99)[1], 1e-12);
  }

  @Test
  void theSpeedStaysAndTheAngleIsHalfWayAtHalfTime() {
    WindField wind = TurningWind.of(new Wind(3, 4), -Math.PI, 0, 10);
    for (double t = -1; t < 12; t += 0.1) {
      assertEquals(5, Math.hypot(at(wind, t)[0], at(wind, t)[1]), 1e-12);
    }
    assertEquals(4, at(wind, 5)[0], 1e-12);
    assertEquals(-3, at(wind, 5)[1], 1e-12);
  }

  @Test
  void theAirHasNoJumpOfAcceleration() {
    WindField wind = TurningWind.of(new Wind(10, 0), Math.PI, 0, 10);
    double h = 1e-3;
    double last = 0;
    for (double t = -0.5; t < 10.5; t += h) {
      double acceleration = (at(wind, t + h)[1] - at(wind, t - h)[1]) / (2 * h);
      assertEquals(last, acceleration, 0.01);
      last = acceleration;
    }
  }

  @Test
  void theVerticalPartStays() {
    WindField gusty = (time, north, east, height, result) -> result[2] = 1.5;
    assertEquals(1.5, at(TurningWind.of(gusty, 1, 0, 5), 3)[2]);
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThrows(OutOfRangeException.class, () -> TurningWind.of(Wind.CALM, Double.NaN, 0, 1));
    assertThrows(OutOfRangeException.class, () -> TurningWind.of(Wind.CALM, 7, 0, 1));
    assertThrows(OutOfRangeException.class, () -> TurningWind.of(Wind.CALM, 1, Double.NaN, 1));
    assertThrows(OutOfRangeException.class, () -> TurningWind.of(Wind.CALM, 1, 0, 0));
  }
}
