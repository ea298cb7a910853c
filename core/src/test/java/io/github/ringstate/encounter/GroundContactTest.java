package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.Every;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.pilot.NoRecovery;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.quantity.OutOfRangeException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class GroundContactTest {

  static Stream<Arguments> craftRecoveriesAndDelays() {
    return Every.of(DemoCraft.ALL, List.of(new Forward(), new Lateral()), List.of(0.0, 2.0, 4.0));
  }

  private static boolean touches(Encounter encounter, double height) {
    return encounter.withHeight(height).fly().ending() == Ending.GROUND;
  }

  /** The height between contact and none, found by halving. */
  private static double least(Encounter encounter, double free) {
    double low = Encounter.HEIGHT.low();
    double high = free;
    for (int i = 0; i < 40; i++) {
      double middle = (low + high) / 2;
      if (touches(encounter, middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /**
   * Whoever has more height than the loss in free air does not touch. Ground effect makes the loss
   * less near the ground, by less than the radius in these cases (0.67 of it at most); below that
   * height the craft always touches, and gently only where it all but stopped.
   */
  @ParameterizedTest
  @MethodSource("craftRecoveriesAndDelays")
  void theCraftTouchesExactlyWhereItsHeightIsLessThanItsLoss(
      Helicopter craft, Recovery recovery, double delay) {
    Encounter encounter = Encounter.of(craft).withRecovery(recovery).withDelay(delay);
    double free = encounter.fly().altitudeLoss().orElseThrow();
    double least = least(encounter, free);
    assertTrue(least <= free && least > free - craft.rotor().radius(), least + " of " + free);

    Outcome clear = encounter.withHeight(least + 1e-6).fly();
    assertEquals(Ending.ARRESTED, clear.ending());
    assertEquals(least, clear.altitudeLoss().orElseThrow(), 1e-4);

    Outcome touched = encounter.withHeight(least - 1e-6).fly();
    assertEquals(Ending.GROUND, touched.ending());
    assertEquals(least - 1e-6, touched.altitudeLoss().orElseThrow(), 1e-9);
    assertTrue(touched.impactSpeed().orElseThrow() < 0.02);
    assertTrue(touched.timeToArrest().isEmpty());

    for (double share = 0.15; share < 2; share += 0.1) {
      double height = Math.max(1, share * least);
      assertEquals(height < least, touches(encounter, height), "at " + height + " m");
    }
    assertTrue(encounter.withHeight(free + 0.01).fly().altitudeLoss().orElseThrow() < free);
  }

  @ParameterizedTest
  @ValueSource(doubles = {5, 20, 60, 150})
  void withoutRecoveryTheGroundIsReachedAtTheSpeedOfTheDescent(double height) {
    Outcome outcome =
        Encounter.of(DemoCraft.TRAINER)
            .withRecovery(new NoRecovery())
            .withDelay(1)
            .withHeight(height)
            .fly();
    assertEquals(Ending.GROUND, outcome.ending());
    assertEquals(height, outcome.altitudeLoss().orElseThrow(), 1e-9);
    double impact = outcome.impactSpeed().orElseThrow();
    assertTrue(impact > 2 && impact <= outcome.peakDescent().orElseThrow() + 1e-12, "" + impact);
    var last = outcome.occurrences().get(outcome.occurrences().size() - 1);
    assertEquals(EventKind.GROUND, last.kind());
    assertEquals(0, last.height(), 1e-7);
    assertEquals(-impact, last.verticalSpeed(), 1e-7);
  }

  @Test
  void theGroundMayBeReachedBeforeThePilotRecognises() {
    Outcome outcome = Encounter.of(DemoCraft.TRAINER).withDelay(30).withHeight(30).fly();
    assertEquals(Ending.GROUND, outcome.ending());
    assertTrue(outcome.lossAfterRecognition().isEmpty());
    assertFalse(outcome.happened(EventKind.RECOGNITION));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, 0, 0.99, 3001, -5, Double.POSITIVE_INFINITY})
  void aHeightOutsideItsRangeIsRefused(double height) {
    Encounter encounter = Encounter.of(DemoCraft.TRAINER);
    OutOfRangeException refusal =
        assertThrows(OutOfRangeException.class, () -> encounter.withHeight(height));
    assertEquals(Encounter.HEIGHT, refusal.quantity());
  }
}
