package io.github.ringstate.pilot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.dynamics.AtSeaLevel;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Leg;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What a technique does first is common practice, no source. */
class RecoveriesTest {

  static Stream<Recovery> recoveries() {
    return Technique.ALL.stream().map(Technique::standard);
  }

  static Stream<List<Parameter>> parameters() {
    return Technique.ALL.stream().map(Technique::parameters);
  }

  @Test
  void theNamesAreTheTradesDescriptiveWords() {
    assertEquals(
        List.of("forward", "lateral", "autorotation", "collective", "collective-raised", "none"),
        recoveries().map(Recovery::name).toList());
  }

  @ParameterizedTest
  @MethodSource("recoveries")
  void aRecoveryNamesItsPhases(Recovery recovery) {
    assertFalse(recovery.phases().isEmpty());
    assertTrue(recovery.phases().stream().map(Phase::name).noneMatch(String::isBlank));
    int last = recovery.phases().size() - 1;
    assertTrue(recovery.phases().subList(0, last).stream().allMatch(Phase::ends));
    assertFalse(recovery.phases().get(last).ends());
  }

  @ParameterizedTest
  @MethodSource("parameters")
  void everyNumberOfATechniqueHasARangeAndSaysWhereItComesFrom(List<Parameter> parameters) {
    ParameterSet standard = ParameterSet.standard(parameters);
    for (Parameter parameter : parameters) {
      assertTrue(parameter.quantity().low() < parameter.quantity().high(), parameter::name);
      assertFalse(parameter.origin().isBlank(), parameter::name);
      assertThrows(IllegalArgumentException.class, () -> standard.with(parameter, Double.NaN));
    }
  }

  /** The state after some time of the first phase, begun in a descent at 600 ft/min. */
  private static double[] begun(Helicopter craft, ControlLaw law, double time) {
    EquationsOfMotion motion = AtSeaLevel.calm(craft);
    PilotView pilot = PilotView.of(motion, Trim.find(motion, 0, 0));
    pilot.follow(law);
    pilot.begin(0, 0, 0);
    double sink = -Unit.FOOT_PER_MINUTE.toSi(600);
    double[] start = Trim.find(motion, 0, sink).state(motion, 0, sink);
    pilot.held(start[State.COLLECTIVE]);
    return Leg.fly(motion, 0, start, time).state();
  }

  private static ControlLaw first(Recovery recovery) {
    return recovery.phases().get(0)::command;
  }

  private static double[] start(Helicopter craft) {
    return begun(craft, (seen, controls) -> {}, 1e-6);
  }

  @Test
  void forwardRecoveryPutsTheNoseDownAndTakesCollectiveOff() {
    double[] first = start(DemoCraft.TRAINER);
    double[] then = begun(DemoCraft.TRAINER, first(new Forward()), 1);
    assertTrue(then[State.PITCH] < first[State.PITCH] - Math.toRadians(5));
    assertEquals(
        first[State.COLLECTIVE]
            - Forward.COLLECTIVE_REDUCTION.unit().toSi(Forward.COLLECTIVE_REDUCTION.standard()),
        then[State.COLLECTIVE],
        Math.toRadians(0.2));
    assertTrue(then[State.SPEED_NORTH] > 0.3);
  }

  @Test
  void theRaisedLeverStaysRaisedWhateverTheRotorDoes() {
    double[] first = start(DemoCraft.TRAINER);
    double[] then = begun(DemoCraft.TRAINER, first(new CollectiveRaised()), 6);
    assertEquals(Math.toRadians(4), then[State.COLLECTIVE] - first[State.COLLECTIVE], 1e-3);
    assertTrue(then[State.ROTOR_SPEED] < 0.95 * first[State.ROTOR_SPEED], "the rotor droops");
    double[] kept = begun(DemoCraft.TRAINER, first(new CollectiveOnly()), 6);
    assertTrue(kept[State.ROTOR_SPEED] > 0.95 * first[State.ROTOR_SPEED], "its speed is kept");
  }

  @ParameterizedTest
  @EnumSource
  void lateralRecoveryBanksToTheSideOfTheTailRotorsPushWithMorePower(RotationSense sense) {
    Helicopter craft = DemoCraft.TRAINER.with(sense);
    double[] first = start(craft);
    double[] then = begun(craft, first(new Lateral()), 1);
    assertTrue(sense.tailPush() * then[State.BANK] > Math.toRadians(5));
    assertTrue(sense.tailPush() * then[State.SPEED_EAST] > 0.3);
    assertTrue(then[State.COLLECTIVE] > first[State.COLLECTIVE]);
    assertEquals(0, then[State.HEADING], 1e-9, "the pedal holds the heading");
  }

  @Test
  void autorotationTakesTheCollectiveDownAndTheNoseDown() {
    double[] first = start(DemoCraft.TRAINER);
    double[] then = begun(DemoCraft.TRAINER, first(new Autorotation()), 1.5);
    assertTrue(then[State.COLLECTIVE] < first[State.COLLECTIVE] - Math.toRadians(3));
    assertTrue(then[State.PITCH] < first[State.PITCH] - Math.toRadians(5));
  }

  @Test
  void collectiveAlonePullsAndLeavesTheAttitude() {
    double[] first = start(DemoCraft.TRAINER);
    double[] then = begun(DemoCraft.TRAINER, first(new CollectiveOnly()), 1);
    assertTrue(then[State.COLLECTIVE] > first[State.COLLECTIVE]);
    assertEquals(first[State.PITCH], then[State.PITCH], Math.toRadians(1));
    assertEquals(first[State.BANK], then[State.BANK], Math.toRadians(1));
  }

  @Test
  void noRecoveryLeavesTheCollectiveWhereItIs() {
    double[] first = start(DemoCraft.TRAINER);
    double[] then = begun(DemoCraft.TRAINER, first(new NoRecovery()), 5);
    assertEquals(first[State.COLLECTIVE], then[State.COLLECTIVE], 1e-12);
  }

  @ParameterizedTest
  @FieldSource("io.github.ringstate.pilot.Technique#ALL")
  void aTechniqueIsRegisteredWithWhatItIsMadeOf(Technique technique) {
    assertEquals(technique.name(), technique.standard().name());
    assertEquals(technique, Technique.named(technique.name()).orElseThrow());
    for (RotationSense sense : RotationSense.values()) {
      assertFalse(technique.description(sense).contains("{"), technique::text);
    }
    assertTrue(technique.remark().endsWith("."), technique::remark);
    assertTrue(technique.toString().startsWith(technique.name()), technique::toString);
    for (Spread spread : technique.spreads()) {
      assertTrue(technique.toString().contains(spread.toString()), technique::toString);
      assertTrue(spread.toString().startsWith(spread.parameter().key() + " "), spread::toString);
      assertTrue(spread.toString().endsWith(")"), spread::toString);
    }
    assertEquals(technique.wayOut(), !technique.remark().startsWith("Not a way out"));
  }

  /** The side that the tail rotor pushes to: the right of a rotor that turns counter-clockwise. */
  @Test
  void theDescriptionNamesTheSide() {
    assertTrue(Technique.LATERAL.description(RotationSense.COUNTER_CLOCKWISE).contains("(right)"));
    assertTrue(Technique.LATERAL.description(RotationSense.CLOCKWISE).contains("(left)"));
    assertEquals(Technique.FORWARD.text(), Technique.FORWARD.description(RotationSense.CLOCKWISE));
  }

  @Test
  void pilotsAreNamedAfterWhatTheyDo() {
    ParameterSet limits = ParameterSet.standard(Limited.PARAMETERS);
    assertEquals("forward", PilotGroups.all(new Forward()).name());
    assertEquals("lateral", PilotGroups.within(Technique.LATERAL, limits).name());
    Cue cue = Cues.vibration(0.1);
    assertEquals(
        "first-to-fire",
        new FirstToFire(List.of(new FirstToFire.Branch(cue, new Forward()))).name());
  }

  /** Source: the trade's handbooks hold neither for a way out (common practice, no source). */
  @Test
  void powerAloneAndNothingAreNoWaysOut() {
    assertEquals(
        List.of("forward", "lateral", "autorotation"),
        Technique.ALL.stream().filter(Technique::wayOut).map(Technique::name).toList());
  }
}
