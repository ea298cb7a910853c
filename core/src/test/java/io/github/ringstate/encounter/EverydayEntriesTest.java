package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.Wind;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.AtSeaLevel;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.quantity.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The quick stop, the hover that is short of power and the drift from a hover. */
class EverydayEntriesTest {

  private static Motion start(Entry entry, Helicopter craft) {
    EquationsOfMotion motion = AtSeaLevel.in(entry.wind(), craft);
    return motion.at(0, entry.start(motion).state());
  }

  @ParameterizedTest
  @CsvSource({
    // ground speed and wind along the nose at the start, kt, by the entries' own numbers; airspeed
    // is their difference, by the wind triangle
    "quick-stop, 40, 10",
    "short-hover, 20, 0",
    "photo-drift, 0, -20"
  })
  void theFlightBeginsLevelAndSteadyAtItsSpeed(String name, double groundKt, double windKt) {
    Entry entry = EntryKind.named(name).orElseThrow().standard();
    for (Helicopter craft : DemoCraft.ALL) {
      Motion motion = start(entry, craft);
      assertEquals(0, motion.verticalSpeed(), 1e-9);
      assertEquals(0, motion.verticalAcceleration(), 1e-4);
      assertEquals(Unit.KNOT.toSi(groundKt), motion.groundSpeed(), 1e-9);
      assertEquals(Unit.KNOT.toSi(groundKt - windKt), motion.forwardAirspeed(), 1e-6);
    }
  }

  @ParameterizedTest
  @CsvSource({"quick-stop", "short-hover", "photo-drift"})
  void itLeadsIntoTheRingStateAndALateRecoveryCostsMore(String name) {
    Entry entry = EntryKind.named(name).orElseThrow().standard();
    for (Helicopter craft : DemoCraft.ALL) {
      Encounter encounter = Encounter.of(craft).withEntry(entry);
      Outcome early = encounter.withDelay(0).fly();
      Outcome late = encounter.withDelay(3).fly();
      assertTrue(early.onsetTime().isPresent(), craft.name());
      assertTrue(
          late.altitudeLoss().isEmpty()
              || late.altitudeLoss().getAsDouble() > early.altitudeLoss().getAsDouble(),
          craft.name());
    }
  }

  @ParameterizedTest
  @CsvSource({"20", "-10", "0"})
  void theWindOfTheQuickStopComesFromBehind(double windKt) {
    Entry stop = EntryKind.QUICK_STOP.with(QuickStop.WIND, windKt);
    assertEquals(new Wind(Unit.KNOT.toSi(windKt), 0), stop.wind());
  }
}
