package io.github.ringstate.integrate;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.integrate.Event.Crossing;
import io.github.ringstate.integrate.Problem.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EventTest {

  @ParameterizedTest
  @ValueSource(doubles = {-1, 0, Double.NaN})
  void aRateThatIsNoneIsRefused(double rate) {
    Event<String, Point> event = Event.note("t", Crossing.RISING, Point::time);
    assertTrue(
        assertThrows(IllegalArgumentException.class, () -> event.changingAtMost(rate))
            .getMessage()
            .contains(Event.NO_RATE));
  }
}
