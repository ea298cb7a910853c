package io.github.ringstate.analysis;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.analysis.best.BestRecovery;
import io.github.ringstate.analysis.best.ControlHistory;
import io.github.ringstate.analysis.best.ControlHistory.Knot;
import io.github.ringstate.analysis.best.ControlHistory.Rates;
import io.github.ringstate.analysis.equilibrium.DescentCase;
import io.github.ringstate.analysis.equilibrium.EquilibriumCurve;
import io.github.ringstate.analysis.equilibrium.HysteresisLoop;
import io.github.ringstate.analysis.equilibrium.Varied;
import io.github.ringstate.analysis.sensitivity.Input;
import io.github.ringstate.analysis.sensitivity.Inputs;
import io.github.ringstate.analysis.sensitivity.LossIndices;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.SmoothMomentum;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What an analysis refuses, and that the sentence holds the value that was given. */
class AnalysisGuardsTest {

  private static final Encounter ENCOUNTER = Encounter.of(DemoCraft.HEAVY);
  private static final DescentCase DESCENTS = DescentCase.of(DemoCraft.UTILITY);
  private static final int COMMANDS = 3 * BestRecovery.TIMES.size();

  private static void refused(String given, Executable asked) {
    String sentence = assertThrows(IllegalArgumentException.class, asked).getMessage();
    assertTrue(sentence.contains(given), sentence);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1})
  void whatIsNoPositiveFiniteNumberIsNamed(double value) {
    String given = "not " + value;
    refused(given, () -> new Knot(value, 0, 0, 0));
    refused(given, () -> new Rates(value, 1, 1));
    refused(given, () -> new Rates(1, value, 1));
    refused(given, () -> new Rates(1, 1, value));
    refused(given, () -> HysteresisLoop.fly(DESCENTS, value));
    refused(given, () -> DESCENTS.withAirspeed(value));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void whatIsNoFiniteNumberIsNamed(double value) {
    String given = "not " + value;
    refused(given, () -> new Knot(0, value, 0, 0));
    refused(given, () -> new Knot(0, 0, value, 0));
    refused(given, () -> new Knot(0, 0, 0, value));
    refused(given, () -> EquilibriumCurve.against(DESCENTS, value, Varied.AIRSPEED));
    refused(given, () -> EquilibriumCurve.against(DESCENTS, value, Varied.MASS));
  }

  @Test
  void theCollectiveThatIsHeldIsNotVaried() {
    refused("held", () -> EquilibriumCurve.against(DESCENTS, 0.1, Varied.COLLECTIVE));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN})
  void aBoundOfTheLossThatIsNotPositiveIsNamed(double bound) {
    List<Input> inputs = List.of(Inputs.delay(ENCOUNTER));
    refused("not " + bound, () -> LossIndices.of(ENCOUNTER, inputs, bound, 64, 1));
  }

  @Test
  void aHistoryKnowsNoCommandAtATimeThatIsNoNumber() {
    ControlHistory history =
        new ControlHistory(List.of(new Knot(0, 0, 0, 0)), 1, new Rates(1, 1, 1));
    refused("NaN", () -> history.at(Double.NaN));
  }

  @Test
  void aSearchWithoutProperStartsIsRefusedAndNotFoundWanting() {
    refused("at least one start", () -> search(List.of()));
    refused("not 3", () -> search(List.of(new double[3])));
    double[] beyond = new double[COMMANDS];
    beyond[4] = 1.5;
    refused("not 1.5", () -> search(List.of(new double[COMMANDS], beyond)));
    beyond[4] = Double.NaN;
    refused("not NaN", () -> search(List.of(beyond)));
    refused("not 0.0", () -> BestRecovery.find(ENCOUNTER, 0, 1));
  }

  private static BestRecovery search(List<double[]> starts) {
    return BestRecovery.find(ENCOUNTER, 1, 1, starts);
  }

  /** Momentum theory, smoothed, is damped everywhere, so a flight with it never meets a ring. */
  @Test
  void indicesOfFlightsThatNeverMeetTheRingStateAreRefused() {
    SmoothMomentum damped = SmoothMomentum.standard();
    Encounter never = ENCOUNTER.withInflow(damped, new HeaveDamping(damped));
    refused("delay", () -> LossIndices.of(never, List.of(Inputs.delay(never)), 100, 64, 1));
  }
}
