package io.github.ringstate.inflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.ringstate.quantity.OutOfRangeException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WorkingStatesTest {

  private final RingStateInflow ring = RingStateInflow.standard();
  private final WorkingStates states = new WorkingStates(ring, new HeaveDamping(ring));

  /** Source: the order of the states is that of any rotorcraft textbook. */
  @Test
  void aDeepeningVerticalDescentPassesTheStatesInTheirOrder() {
    int before = 0;
    for (double z = 2; z >= -4; z -= 0.005) {
      int now = states.at(0, z).ordinal();
      assertEquals(true, now == before || now == before + 1, "z = " + z);
      before = now;
    }
    assertEquals(WorkingState.WINDMILL_BRAKE.ordinal(), before);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 1, NORMAL_WORKING",
    "0, -0.4, NORMAL_WORKING",
    "0, -1, VORTEX_RING",
    "0, -1.6, TURBULENT_WAKE",
    "0, -1.9, WINDMILL_BRAKE",
    "2, -0.3, NORMAL_WORKING",
    "2, -0.6, WINDMILL_BRAKE",
    "0.9, -0.8, NORMAL_WORKING"
  })
  void theStatesMeetAtOnsetExitAndAutorotation(double x, double z, WorkingState expected) {
    assertEquals(expected, states.at(x, z));
  }

  @Test
  void withACriterionThatHasNoExitTheRingEndsAtAutorotation() {
    WorkingStates byTipVortex = new WorkingStates(ring, new TipVortex());
    double autorotation = Autorotation.axialSpeed(ring, 0).orElseThrow();
    assertEquals(WorkingState.VORTEX_RING, byTipVortex.at(0, autorotation + 1e-6));
    assertEquals(WorkingState.WINDMILL_BRAKE, byTipVortex.at(0, autorotation - 1e-6));
  }

  @Test
  void everyStateHasALabelForPeople() {
    assertEquals("normal working state", WorkingState.NORMAL_WORKING.label());
    assertEquals("vortex ring state", WorkingState.VORTEX_RING.label());
    assertEquals("turbulent wake state", WorkingState.TURBULENT_WAKE.label());
    assertEquals("windmill brake state", WorkingState.WINDMILL_BRAKE.label());
  }

  @Test
  void noNumberHasNoState() {
    assertThrows(OutOfRangeException.class, () -> states.at(0, Double.NaN));
    assertThrows(OutOfRangeException.class, () -> states.at(Double.NaN, 0));
  }
}
