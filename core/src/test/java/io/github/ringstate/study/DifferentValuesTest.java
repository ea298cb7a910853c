package io.github.ringstate.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.EngineKind;
import io.github.ringstate.craft.Fitted;
import io.github.ringstate.craft.FittedModel;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.FlightEvent;
import io.github.ringstate.encounter.History;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.integrate.Event.Crossing;
import io.github.ringstate.pilot.Cockpit;
import io.github.ringstate.pilot.Delays;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.PilotGroups;
import io.github.ringstate.pilot.Spread;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.UncertainNumbers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Of values that differ in one part alone no two are equal, and each is equal to one made alike.
 */
class DifferentValuesTest {

  private static UncertainNumbers uncertain(int parameters, double mean, double variance) {
    double[] means = new double[parameters];
    Arrays.fill(means, mean);
    double[][] covariance = new double[parameters][parameters];
    for (int i = 0; i < parameters; i++) {
      covariance[i][i] = variance;
    }
    return new UncertainNumbers(
        RingStateInflow.PARAMETERS.subList(0, parameters), means, covariance);
  }

  private static List<Object> uncertain() {
    return List.of(
        uncertain(0, 0, 1),
        uncertain(1, 0, 1),
        uncertain(1, 0.1, 1),
        uncertain(1, 0, 2),
        new UncertainNumbers(
            List.of(RingStateInflow.EXIT_TOTAL), new double[1], new double[][] {{1}}));
  }

  private static List<Object> craft() {
    Helicopter craft = DemoCraft.TRAINER;
    FittedModel fitted = Fitted.of(uncertain(1, 0, 1), 1, 0.2);
    return List.of(
        craft,
        craft.with(Helicopter.MASS, 580),
        craft.withFitted(fitted),
        new Helicopter(
            "other", craft.description(), craft.sense(), craft.engine(), craft.numbers()),
        new Helicopter(craft.name(), "other", craft.sense(), craft.engine(), craft.numbers()),
        new Helicopter(
            craft.name(),
            craft.description(),
            craft.sense() == RotationSense.CLOCKWISE
                ? RotationSense.COUNTER_CLOCKWISE
                : RotationSense.CLOCKWISE,
            craft.engine(),
            craft.numbers()),
        new Helicopter(
            craft.name(),
            craft.description(),
            craft.sense(),
            craft.engine() == EngineKind.PISTON ? EngineKind.TURBINE : EngineKind.PISTON,
            craft.numbers()));
  }

  private static List<Object> spreads() {
    return List.of(
        Spread.normal(Helicopter.MASS, 30),
        Spread.normal(Helicopter.MASS, 31),
        Spread.normal(Forward.PARAMETERS.get(0), 30));
  }

  private static LossSpread losses(Drawing drawing, Ending last, double... losses) {
    Ending[] endings = new Ending[losses.length];
    Arrays.fill(endings, Ending.ARRESTED);
    endings[endings.length - 1] = last;
    return LossSpread.of(endings, losses, drawing);
  }

  private static List<Object> losses() {
    List<Object> all = new ArrayList<>();
    for (Drawing drawing : Drawing.values()) {
      all.add(losses(drawing, Ending.ARRESTED, 3, 5));
      all.add(losses(drawing, Ending.ARRESTED, 3, 6));
      // the same losses, infinite both
      all.add(losses(drawing, Ending.GROUND, 3, 5));
      all.add(losses(drawing, Ending.NOT_ARRESTED, 3, 5));
      all.add(losses(drawing, Ending.NO_ONSET, 3, 5));
    }
    // the same losses in other sets
    all.add(losses(Drawing.SOBOL, Ending.ARRESTED, 5, 3));
    all.add(losses(Drawing.SOBOL, Ending.ARRESTED, 3, 5).stopped());
    return all;
  }

  private static List<Object> studies() {
    PilotStudy study =
        new PilotStudy(
            Encounter.of(DemoCraft.TRAINER),
            PilotGroups.all(Technique.LATERAL.standard()),
            Optional.of(Delays.logNormal(1, 2)),
            5);
    return List.of(
        study,
        new PilotStudy(study.base().withDelay(3), study.pilots(), study.delays(), 5),
        new PilotStudy(
            study.base(), PilotGroups.all(Technique.FORWARD.standard()), study.delays(), 5),
        new PilotStudy(study.base(), study.pilots(), Optional.empty(), 5),
        new PilotStudy(study.base(), study.pilots(), study.delays(), 6));
  }

  private static History flown(double delay) {
    return Encounter.of(DemoCraft.TRAINER).withDelay(delay).record(Simulator.fast()).history();
  }

  private static List<Object> histories() {
    // without any disturbance the first two are one flight up to where the second pilot acts
    return List.of(
        flown(1),
        flown(1.5),
        Encounter.of(DemoCraft.HEAVY).withDelay(1).record(Simulator.fast()).history());
  }

  private static List<Object> instants() {
    History history = flown(1);
    return List.of(history.at(0), history.at(0.1), history.at(history.end()));
  }

  private static List<Object> events() {
    return List.of(
        FlightEvent.note("low", Crossing.FALLING, HEIGHT),
        FlightEvent.note("other", Crossing.FALLING, HEIGHT),
        FlightEvent.note("low", Crossing.RISING, HEIGHT),
        FlightEvent.stop("low", Crossing.FALLING, HEIGHT));
  }

  private static final ToDoubleFunction<Cockpit> HEIGHT = Cockpit::height;

  private static List<Object> numbers() {
    ParameterSet standard = ParameterSet.standard(RingStateInflow.PARAMETERS);
    return List.of(
        standard,
        standard.with(RingStateInflow.EXIT_TOTAL, 1.35),
        ParameterSet.standard(Forward.PARAMETERS),
        ParameterSet.NONE);
  }

  static Stream<List<List<Object>>> makers() {
    return Stream.of(
        List.of(uncertain(), uncertain()),
        List.of(craft(), craft()),
        List.of(spreads(), spreads()),
        List.of(losses(), losses()),
        List.of(studies(), studies()),
        List.of(histories(), histories()),
        List.of(instants(), instants()),
        List.of(events(), events()),
        List.of(numbers(), numbers()));
  }

  @ParameterizedTest
  @MethodSource("makers")
  void oneDifferenceMakesAnotherValueAndNoneMakesTheSame(List<List<Object>> twice) {
    List<Object> ones = twice.get(0);
    List<Object> others = twice.get(1);
    for (int i = 0; i < ones.size(); i++) {
      for (int j = 0; j < ones.size(); j++) {
        if (i == j) {
          assertEquals(ones.get(i), others.get(j));
          assertEquals(ones.get(i).hashCode(), others.get(j).hashCode());
        } else {
          assertNotEquals(ones.get(i), others.get(j), i + " and " + j);
        }
      }
      assertNotEquals(ones.get(i), new Object());
      assertEquals(ones.get(i).toString(), others.get(i).toString());
    }
    // a hash may be one for two values, not for all
    assertTrue(ones.stream().map(Object::hashCode).distinct().count() > 1);
    assertEquals(ones.size(), new HashSet<>(ones).size());
  }

  @Test
  void whatIsPrintedNamesWhatThereIs() {
    assertEquals("", uncertain(0, 0, 1).toString());
    String text = uncertain(2, 0, 1).toString();
    for (int i = 0; i < 2; i++) {
      assertTrue(text.contains(RingStateInflow.PARAMETERS.get(i).key() + " about "), text);
    }
    assertEquals(0, uncertain(2, 0, 4).correlation(0, 1));
    assertEquals(1, uncertain(2, 0, 4).correlation(1, 1));
    LossSpread spread = losses(Drawing.INDEPENDENT, Ending.NO_ONSET, 3, 5, 7);
    assertTrue(spread.toString().contains("losses of 2 pilots"), spread.toString());
    assertTrue(spread.toString().endsWith("median 3.0 m"), spread.toString());
    LossSpread nobody = losses(Drawing.INDEPENDENT, Ending.NO_ONSET, 3);
    assertTrue(nobody.toString().startsWith("losses of 0 pilots"), nobody.toString());
    assertTrue(
        FlightEvent.stop("low", Crossing.FALLING, HEIGHT).toString().startsWith("stops at low"));
    assertTrue(FlightEvent.note("low", Crossing.RISING, HEIGHT).toString().startsWith("notes low"));
  }
}
