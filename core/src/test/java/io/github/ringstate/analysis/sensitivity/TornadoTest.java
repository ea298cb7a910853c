package io.github.ringstate.analysis.sensitivity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.CraftBody;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.study.Sensitivity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TornadoTest {

  private static final Encounter BASE = Encounter.of(DemoCraft.TRAINER).withDelay(1.5);

  private static final Tornado TORNADO = Tornado.of(BASE, some());

  private static List<Input> some() {
    return Stream.of(
            Inputs.craft(BASE.craft()),
            Inputs.technique(Technique.FORWARD),
            Inputs.model(),
            List.of(Inputs.delay(BASE), Inputs.pressureAltitude(BASE.air())))
        .flatMap(List::stream)
        .filter(
            input ->
                List.of(
                        Helicopter.MINIMUM_MASS.name(),
                        CraftBody.UNDERSIDE_AREA.name(),
                        "delay",
                        "pressure altitude",
                        "nose down",
                        RingStateInflow.EXIT_TOTAL.name())
                    .contains(input.name()))
        .toList();
  }

  /** Two ways that share the equations alone. */
  @Test
  void theTwoWaysToADerivativeAgree() {
    assertEquals(6, TORNADO.bars().size());
    for (Tornado.Bar bar : TORNADO.bars()) {
      assertTrue(bar.agrees(), bar.toString());
    }
  }

  @Test
  void barsAreInOrderAndThoseThatChangeNothingAreLast() {
    List<Tornado.Bar> bars = TORNADO.bars();
    List<Double> lengths = new ArrayList<>();
    bars.forEach(bar -> lengths.add(-bar.length()));
    assertEquals(lengths.stream().sorted().toList(), lengths);
    Tornado.Bar last = bars.get(bars.size() - 1);
    assertEquals(Helicopter.MINIMUM_MASS.name(), last.input().name());
    assertEquals(0, last.length());
    // half a second more of delay costs more height, whatever the model
    Tornado.Bar delay =
        bars.stream().filter(bar -> bar.input().name().contains("delay")).findFirst().orElseThrow();
    assertTrue(
        delay.high().orElseThrow() > TORNADO.base() && delay.low().orElseThrow() < TORNADO.base());
  }

  /** The shares of the numbers of the model: each between none and all, and together about all. */
  @Test
  void theLossHasIndices() {
    List<Input> inputs = new ArrayList<>(Inputs.model().subList(0, 4));
    inputs.add(Inputs.delay(BASE));
    LossIndices found = LossIndices.of(BASE, inputs, 300, 64, 3);
    double sum = 0;
    for (SobolIndices.Index index : found.indices().indices()) {
      assertTrue(
          index.first() > -index.firstHalfWidth() - 0.02 && index.first() < 1, index.toString());
      assertTrue(index.total() > -0.01, index.toString());
      sum += index.total();
    }
    assertTrue(sum > 0.9, "total indices " + sum);
    assertTrue(found.bounded() < 0.05, "bounded " + found.bounded());
  }

  /** The loss grows with the delay, so at the middle delay it parts the losses in half. */
  @Test
  void aBoundHoldsTheLossesBeyondIt() {
    double middle = BASE.fly().altitudeLoss().orElseThrow();
    LossIndices found = LossIndices.of(BASE, List.of(Inputs.delay(BASE)), middle, 64, 3);
    assertEquals(0.5, found.bounded(), 0.05);
    assertTrue(found.indices().mean() < middle);
  }

  /** A side that ends on the ground is longer than any other, and without both ways none agree. */
  @Test
  void aBarWithoutALossIsTheLongestAndAgreesWithNothing() {
    Input delay = Inputs.delay(BASE);
    Optional<Sensitivity> one = Optional.of(new Sensitivity(30, 0.01));
    OptionalDouble none = OptionalDouble.empty();
    OptionalDouble five = OptionalDouble.of(5);
    OptionalDouble nine = OptionalDouble.of(9);
    assertEquals(4, new Tornado.Bar(delay, five, nine, one, none).length());
    assertEquals(Double.POSITIVE_INFINITY, new Tornado.Bar(delay, none, nine, one, none).length());
    assertEquals(Double.POSITIVE_INFINITY, new Tornado.Bar(delay, five, none, one, none).length());
    assertFalse(new Tornado.Bar(delay, five, nine, one, none).agrees());
    OptionalDouble second = OptionalDouble.of(30.025);
    assertFalse(new Tornado.Bar(delay, five, nine, Optional.empty(), second).agrees());
    assertTrue(new Tornado.Bar(delay, five, nine, one, second).agrees());
    assertFalse(new Tornado.Bar(delay, five, nine, one, OptionalDouble.of(30.04)).agrees());
  }
}
