package io.github.ringstate.pilot;

import static org.junit.jupiter.api.Assertions.assertFalse;

import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A number of a pilot that may be set is heeded: with another value something else is done. */
class EveryNumberCountsTest {

  private static final List<Cockpit> COCKPITS = cockpits();

  private static List<Cockpit> cockpits() {
    SplittableRandom random = new SplittableRandom(2024);
    List<Cockpit> cockpits = new ArrayList<>();
    for (int i = 0; i < 300; i++) {
      Map<String, Double> shown = new HashMap<>();
      for (String angle : List.of("pitch", "bank", "hoverPitch", "hoverBank", "pitchRate")) {
        shown.put(angle, random.nextDouble(-0.5, 0.5));
      }
      for (String lever : List.of("collective", "heldCollective", "hoverCollective")) {
        shown.put(lever, random.nextDouble(0, 0.3));
      }
      for (String speed : List.of("indicatedVerticalSpeed", "verticalSpeed", "forwardAirspeed")) {
        shown.put(speed, random.nextDouble(-15, 15));
      }
      shown.put("sidewaysGroundSpeed", random.nextDouble(-5, 5));
      shown.put("verticalAcceleration", random.nextDouble(-1, 1));
      shown.put("roughness", random.nextDouble(0, 0.3));
      shown.put("rotorSpeed", random.nextDouble(0.9, 1.1));
      shown.put("loadFactor", random.nextDouble(0.5, 1.2));
      shown.put("power", random.nextDouble(0, 1.5));
      shown.put("takeOffPower", 1.2);
      shown.put("sinceTechniqueBegan", random.nextDouble(0, 2));
      shown.put("tailPush", 1.0);
      cockpits.add(Seen.of(shown));
    }
    return cockpits;
  }

  private static ParameterSet changed(ParameterSet numbers, Parameter parameter) {
    double low = parameter.quantity().low();
    double high = parameter.quantity().high();
    double value = numbers.get(parameter);
    return numbers.with(parameter, (value + (value - low > high - value ? low : high)) / 2);
  }

  /** All that a recovery commands in these cockpits, and where its phases end. */
  private static List<Double> done(Recovery recovery) {
    List<Double> done = new ArrayList<>();
    for (Cockpit seen : COCKPITS) {
      for (Phase phase : recovery.phases()) {
        Controls controls = new Controls();
        phase.command(seen, controls);
        done.add(controls.pitch());
        done.add(controls.pitchRate());
        done.add(controls.bank());
        done.add(controls.bankRate());
        done.add(controls.collective());
        done.add(controls.collectiveRate());
        done.add(phase.end(seen));
      }
    }
    return done;
  }

  private static void assertHeeded(
      ParameterSet numbers, Parameter parameter, Function<ParameterSet, List<Double>> come) {
    boolean same = come.apply(numbers).equals(come.apply(changed(numbers, parameter)));
    assertFalse(same, parameter::name);
  }

  static Stream<Arguments> numbersOfTechniques() {
    return Technique.ALL.stream()
        .flatMap(
            technique ->
                technique.parameters().stream()
                    .map(parameter -> Arguments.of(technique, parameter)));
  }

  @ParameterizedTest(name = "{index}")
  @MethodSource
  void numbersOfTechniques(Technique technique, Parameter parameter) {
    ParameterSet standard = ParameterSet.standard(technique.parameters());
    if (technique.parameters().contains(Hands.COLLECTIVE_LATER)) {
      // else no hand comes in later than the other
      standard = standard.with(Hands.COLLECTIVE_LATER, 0.5);
    }
    assertHeeded(standard, parameter, numbers -> done(technique.maker().apply(numbers)));
  }

  /** Of pilots who ask for more than the limits allow, in attitude and in lowering the lever. */
  @ParameterizedTest
  @FieldSource("io.github.ringstate.pilot.Limited#PARAMETERS")
  void limits(Parameter parameter) {
    ParameterSet tight =
        ParameterSet.standard(Limited.PARAMETERS)
            .with(Limited.PITCH, 8)
            .with(Limited.BANK, 8)
            .with(Limited.RATE, 10)
            .with(Limited.REVERSAL_RATE, 5)
            .with(Limited.FULL_REVERSAL, 0.02);
    assertHeeded(
        tight,
        parameter,
        numbers ->
            Stream.of(new Forward(), new Lateral())
                .flatMap(recovery -> done(new Limited(recovery, numbers)).stream())
                .toList());
  }

  @ParameterizedTest
  @FieldSource("io.github.ringstate.pilot.Cues#PARAMETERS")
  void cues(Parameter parameter) {
    assertHeeded(
        ParameterSet.standard(Cues.PARAMETERS),
        parameter,
        numbers ->
            Stream.of(
                    Cues.standard(0, numbers),
                    Cues.lowAirspeed(
                        numbers.si(Cues.LOW_AIRSPEED), numbers.si(Cues.UNRELIABLE_AIRSPEED)),
                    Cues.drift(0, numbers.si(Cues.DRIFT)))
                .flatMap(cue -> COCKPITS.stream().map(cue::level))
                .toList());
  }
}
