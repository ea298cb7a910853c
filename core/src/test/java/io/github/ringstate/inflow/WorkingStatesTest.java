package io.github.ringstate.inflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.ringstate.quantity.OutOfRangeException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WorkingStatesTest {

  private final RingStateInflow ring = RingStateInflow.standard();
  private final WorkingStates states = new WorkingStates(ring, new HeaveDamping(ring));

  /** Source: the order of the states is that of any rotorcraft textbook. */
  @Test
  void aDeepeningVerticalDescentPassesTheStatesInTheirOrder() {
    List<WorkingState> passed =
        IntStream.rangeClosed(-400, 800).mapToObj(i -> states.at(0, i * -0.005)).toList();
    List<WorkingState> changes = new ArrayList<>();
    for (WorkingState state : passed) {
      if (changes.isEmpty() || changes.get(changes.size() - 1) != state) {
        changes.add(state);
      }
    }
    assertEquals(List.of(WorkingState.values()), changes);
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
