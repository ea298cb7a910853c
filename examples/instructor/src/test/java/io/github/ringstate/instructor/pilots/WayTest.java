package io.github.ringstate.instructor.pilots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import org.junit.jupiter.api.Test;

/** The way of a recovery over the ground and through the air. */
class WayTest {

  @Test
  void theWindCarriesTheCraftAlongByItsSpeedTimesTheTime() {
    // in a steady wind a way over the ground is that through the air and the drift: kinematics
    ShownFlight flight =
        ShownFlight.fly(Encounter.of(DemoCraft.TRAINER).withDelay(2.5), Technique.LATERAL);
    Way ground = flight.overGround().orElseThrow();
    Way air = flight.throughAir().orElseThrow();
    double wind = Unit.KNOT.toSi(EntryKind.STANDARD.wind().standard());
    // samples stand a tenth of a second apart, so either end may miss as much
    assertEquals(wind * ground.seconds(), ground.ahead() - air.ahead(), 0.2 * wind);
    assertEquals(ground.right(), air.right(), 1e-6, "no wind from the side");
    assertTrue(air.right() > 0, "to the side that the tail rotor pushes to: " + air);
  }

  @Test
  void aWayIsSaidWithItsSides() {
    Way way = new Way(Unit.FOOT.toSi(-40), Unit.FOOT.toSi(-20), 5, 1);
    assertEquals("40 ft behind and 20 ft to the left", way.inWords(UnitSystem.AVIATION));
    assertEquals("-40, 20 L", way.brief(UnitSystem.AVIATION));
  }
}
