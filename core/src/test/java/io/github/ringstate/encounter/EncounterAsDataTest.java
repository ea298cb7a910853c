package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.inflow.BoundaryCriterion;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.TabulatedInflow;
import io.github.ringstate.pilot.Cues;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.pilot.Limited;
import io.github.ringstate.pilot.NoRecovery;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Switched;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** Encounters that are made alike are equal, and what was given can be read back. */
class EncounterAsDataTest {

  private static RingStateInflow inflow() {
    return RingStateInflow.standard().with(RingStateInflow.EXIT_TOTAL, 1.35);
  }

  private static Encounter made(double bank) {
    Helicopter craft = DemoCraft.TRAINER;
    InflowModel model = inflow();
    return Encounter.of(craft.with(Helicopter.MASS, 590))
        .withAir(StandardAtmosphere.at(1000))
        .withEntry(new Settling(ParameterSet.standard(Settling.PARAMETERS).with("wind", 3)))
        .withRecovery(
            Switched.after(
                new NoRecovery(),
                0.5,
                new Limited(
                    new Lateral(ParameterSet.standard(Lateral.PARAMETERS).with("bank", bank)))))
        .withInflow(new TabulatedInflow(model), new HeaveDamping(model))
        .withRecognition(Recognition.afterCue(Cues.standard(1), 0.75))
        .withHeight(90);
  }

  @Test
  void encountersMadeAlikeAreEqualAndFlyOnFromEachOthersApproach() {
    Encounter one = made(14);
    Encounter other = made(14);
    assertEquals(one, other);
    assertEquals(one.hashCode(), other.hashCode());
    assertEquals(one.toString(), other.toString());
    Simulator simulator = Simulator.precise();
    assertEquals(one.fly(), other.fly(Approach.fly(one, simulator), simulator, null));
  }

  @Test
  void oneNumberThatDiffersMakesAnotherEncounter() {
    assertNotEquals(made(14), made(15));
    assertTrue(made(14).toString().contains("bank_deg = 14.0"), made(14)::toString);
    Approach approach = Approach.fly(made(14), Simulator.fast());
    Encounter elsewhere = made(14).withAir(StandardAtmosphere.at(1001));
    assertThrows(
        IllegalArgumentException.class, () -> elsewhere.fly(approach, Simulator.precise(), null));
  }

  @Test
  void whatWasGivenCanBeReadBack() {
    Encounter encounter = made(14);
    Switched switched = (Switched) encounter.recovery();
    assertEquals(new NoRecovery(), switched.first());
    Limited limited = (Limited) switched.second();
    assertEquals(14, ((Lateral) limited.recovery()).numbers().get(Lateral.BANK));
    assertEquals(25, limited.numbers().get(Limited.PITCH));
    assertEquals(3, ((Settling) encounter.entry()).numbers().get(Settling.WIND));
    assertEquals(inflow(), ((TabulatedInflow) encounter.inflow()).model());
    BoundaryCriterion boundary = encounter.boundary();
    RingStateInflow judged = (RingStateInflow) ((HeaveDamping) boundary).inflow();
    assertEquals(1.35, judged.numbers().get(RingStateInflow.EXIT_TOTAL));
  }

  @ParameterizedTest
  @FieldSource("io.github.ringstate.encounter.EntryKind#ALL")
  void anEntryIsRegisteredWithWhatItIsMadeOf(EntryKind kind) {
    assertEquals(kind.name(), kind.standard().name());
    assertEquals(kind, EntryKind.named(kind.name()).orElseThrow());
    assertTrue(kind.parameters().contains(kind.wind()));
    String text = kind.description(Parameter::key);
    assertTrue(!text.contains("{") && !text.isBlank(), text);
    assertThrows(
        IllegalArgumentException.class,
        () -> kind.maker().apply(ParameterSet.standard(List.of())),
        "numbers that are missing are refused");
  }
}
