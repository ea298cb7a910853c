package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.WindField;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.inflow.BoundaryCriterion;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.InflowOver;
import io.github.ringstate.inflow.RingBand;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.Cockpit;
import io.github.ringstate.pilot.Phase;
import io.github.ringstate.pilot.Phases;
import io.github.ringstate.study.LossTable;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Parts of one's own that give nothing, or something else each time, are refused by name. */
class CrookedPartsTest {

  private static final RingStateInflow MODEL = RingStateInflow.standard();
  private static final Encounter BASE = Encounter.of(DemoCraft.TRAINER);

  /** An encounter with a crooked part, and what its refusal has to say. */
  record Crooked(String said, Supplier<Encounter> encounter) {
    @Override
    public String toString() {
      return said;
    }
  }

  /** Ends at once and says null of what follows. */
  private record NothingNext(String name) implements Phase {
    @Override
    public void command(Cockpit seen, Controls controls) {}

    @Override
    public double end(Cockpit seen) {
      return 1;
    }

    @Override
    public List<Phase> instead(Cockpit seen) {
      return null;
    }
  }

  private record OwnEntry(String name, WindField wind, Start start) implements Entry {
    @Override
    public Start start(EquationsOfMotion motion) {
      return start;
    }
  }

  private static final class Drawing extends InflowOver {
    private final String name;
    private final SplittableRandom random;

    Drawing(String name, SplittableRandom random) {
      super(MODEL, name, random);
      this.name = name;
      this.random = random;
    }

    @Override
    public String name() {
      return name;
    }

    @Override
    public double induced(double edgewise, double axial) {
      return super.induced(edgewise, axial) * random.nextDouble(0.99, 1.01);
    }
  }

  /** A model whose induced velocity is larger and whose slope is left as it was. */
  private static final class Thicker extends InflowOver {

    Thicker(InflowModel model) {
      super(model);
    }

    @Override
    public double induced(double edgewise, double axial) {
      return super.induced(edgewise, axial) * 1.2;
    }
  }

  private record Coin(String name, SplittableRandom random) implements BoundaryCriterion {
    @Override
    public double margin(double edgewise, double axial) {
      return random.nextBoolean() ? 1 : -1;
    }

    @Override
    public List<RingBand> bands(double edgewise) {
      return List.of();
    }

    @Override
    public OptionalDouble reach() {
      return OptionalDouble.empty();
    }
  }

  /** A wind that counts how often it is asked. */
  private static final class Counting implements WindField {

    private int count;

    @Override
    public void velocity(double time, double north, double east, double height, double[] result) {
      Arrays.fill(result, 0);
      result[0] = 4 + 1e-4 * count++;
    }
  }

  private static Entry entry(Entry.Start start) {
    return new OwnEntry("mine", new Settling().wind(), start);
  }

  static Stream<Crooked> crooked() {
    HeaveDamping boundary = new HeaveDamping(MODEL);
    return Stream.of(
        new Crooked(
            "the recovery mine" + Encounter.NO_PHASES,
            () -> BASE.withRecovery(new Phases("mine", List.of()))),
        new Crooked("mine has no phases", () -> BASE.withRecovery(new Phases("mine", null))),
        new Crooked(
            "mine has null in place of phase 2",
            () ->
                BASE.withRecovery(
                    new Phases("mine", Arrays.asList(new NothingNext("first"), null)))),
        new Crooked(
            "mine has null in place of what follows 'first'",
            () -> BASE.withRecovery(new Phases("mine", List.of(new NothingNext("first"))))),
        new Crooked("the entry mine gives no state", () -> BASE.withEntry(entry(null))),
        new Crooked(
            "the entry mine gives no state",
            () -> BASE.withEntry(entry(new Entry.Start(null, (seen, controls) -> {})))),
        new Crooked(
            "the entry mine gives no state",
            () -> BASE.withEntry(entry(new Entry.Start(new double[20], null)))),
        new Crooked(
            "the entry mine starts with a state of 3 numbers",
            () -> BASE.withEntry(entry(new Entry.Start(new double[3], (seen, controls) -> {})))),
        new Crooked(
            "the wind of the entry mine", () -> BASE.withEntry(new OwnEntry("mine", null, null))),
        new Crooked(
            "the inflow mine" + ConstantAnswers.DIFFER,
            () -> BASE.withInflow(new Drawing("mine", new SplittableRandom(1)), boundary)),
        new Crooked(
            "the inflow ring-state states a slope of",
            () -> BASE.withInflow(new Thicker(MODEL), boundary)),
        new Crooked(
            "the boundary mine" + ConstantAnswers.DIFFER,
            () -> BASE.withInflow(MODEL, new Coin("mine", new SplittableRandom(1)))),
        new Crooked("Counting", () -> BASE.withWind(new Counting())));
  }

  @ParameterizedTest
  @MethodSource("crooked")
  void aCrookedPartIsRefusedByNameInAFlightAndInATable(Crooked crooked) {
    RuntimeException flown =
        assertThrows(RuntimeException.class, () -> crooked.encounter().get().fly());
    assertTrue(flown.getMessage().contains(crooked.said()), flown.getMessage());
    RuntimeException tabled =
        assertThrows(
            RuntimeException.class,
            () -> {
              Encounter one = crooked.encounter().get();
              LossTable.fly(
                  one,
                  List.of(one.craft()),
                  List.of(one.air()),
                  List.of(one.recovery()),
                  List.of(1.0));
            });
    assertTrue(tabled.getMessage().contains(crooked.said()), tabled.getMessage());
  }
}
