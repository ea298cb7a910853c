package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.WindField;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.quantity.Parameter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

class EntryWindTest {

  private static final WindField BLOWN =
      (time, north, east, height, velocity) -> {
        velocity[0] = 2;
        velocity[1] = 3;
        velocity[2] = 0.5;
      };

  /** Entries fly north at first: a wind from behind blows toward north. */
  @ParameterizedTest
  @FieldSource("io.github.ringstate.encounter.EntryKind#ALL")
  void theWindOfAnEntryBlowsFromWhereItIsSaidTo(EntryKind kind) {
    for (double fromBehind : new double[] {4, -4}) {
      double value = kind.windAlong(fromBehind);
      assertEquals(4, Math.abs(value));
      assertEquals(fromBehind > 0 ? "from behind" : "from ahead", kind.windFrom(value));
    }
    if (kind.equals(EntryKind.DOWNWIND)) {
      return; // it begins across its wind and turns out of it
    }
    Parameter wind = kind.wind();
    double value = wind.quantity().low() < 0 ? wind.quantity().low() : wind.quantity().high();
    double[] blows = new double[3];
    kind.maker().apply(kind.numbers().with(wind, value)).wind().velocity(0, 0, 0, 30, blows);
    assertTrue(blows[0] != 0, "a wind of " + value);
    assertEquals(blows[0] > 0 ? "from behind" : "from ahead", kind.windFrom(value));
  }

  /** Newton's first law, in a wind from behind, from the left and from below. */
  @ParameterizedTest
  @FieldSource("io.github.ringstate.encounter.EntryKind#ALL")
  void anEntryBeginsInASteadyFlight(EntryKind kind) {
    EquationsOfMotion motion =
        new EquationsOfMotion(
            DemoCraft.TRAINER,
            StandardAtmosphere.at(500),
            BLOWN,
            RingStateInflow.standard(),
            false);
    double[] state = kind.maker().apply(kind.numbers()).start(motion).state();
    Motion at = motion.at(0, state);
    // straight ahead over the ground, whatever blows across
    assertEquals(0, state[State.SPEED_EAST], 1e-12, kind.name());
    for (int rate : new int[] {State.SPEED_NORTH, State.SPEED_EAST, State.SPEED_UP}) {
      assertEquals(0, at.rate(rate), 1e-6, kind.name());
    }
  }

  /** By hand: 30 kt are 15.43 m/s, and 12 deg below the horizon go down by 0.2126 of that. */
  @Test
  void aTailwindApproachComesAtItsSpeedAndAngleOverTheGround() {
    EquationsOfMotion motion =
        new EquationsOfMotion(
            DemoCraft.TRAINER, StandardAtmosphere.at(0), BLOWN, RingStateInflow.standard(), false);
    double[] state =
        EntryKind.TAILWIND_APPROACH.with(TailwindApproach.GROUND_SPEED, 30).start(motion).state();
    assertEquals(15.433, state[State.SPEED_NORTH], 1e-3);
    assertEquals(-0.21256 * 15.433, state[State.SPEED_UP], 1e-3);
  }
}
