package io.github.ringstate.analysis.sensitivity;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Spread;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.model.OpenNumbers;
import java.util.ArrayList;
import java.util.List;

/**
 * The numbers of an encounter that a study of its sensitivity changes.
 *
 * <p>The numbers of the model vary over what is thought possible ({@link OpenNumbers}). Those of
 * the craft and of the technique vary by a tenth to either side, pressure altitude by 1000 ft, the
 * delay by half a second: conventions that make bars comparable, and no statement on how well they
 * are known.
 */
public final class Inputs {

  /** Part of its value by which a number of craft or technique varies to either side. */
  public static final double PART = 0.1;

  /** By how much the pressure altitude varies to either side, ft. */
  private static final double ALTITUDE = 1000;

  private static final double DELAY = 0.5;

  private Inputs() {}

  /**
   * The numbers of a craft that are not zero and may vary by a tenth to either side.
   *
   * @param craft the helicopter
   * @return the inputs, in the order in which a craft is written down
   */
  public static List<Input> craft(Helicopter craft) {
    List<Input> inputs = new ArrayList<>();
    Helicopter.STANDARD_NUMBERS.parameters().stream()
        .forEach(
            parameter -> {
              double value = craft.numbers().get(parameter);
              Quantity range = around(parameter, value);
              if (range.low() < value && value < range.high() && allowed(craft, parameter, range)) {
                inputs.add(
                    new Input(
                        "craft",
                        range,
                        value,
                        (base, other) -> base.withCraft(base.craft().with(parameter, other))));
              }
            });
    return List.copyOf(inputs);
  }

  /** Whether limits of the craft, such as its greatest mass, leave room for both ends. */
  private static boolean allowed(Helicopter craft, Parameter parameter, Quantity range) {
    try {
      craft.with(parameter, range.low());
      craft.with(parameter, range.high());
      return true;
    } catch (IllegalArgumentException broken) {
      return false;
    }
  }

  private static Quantity around(Parameter parameter, double value) {
    Quantity whole = parameter.quantity();
    double by = PART * Math.abs(value);
    return whole.within(Math.max(whole.low(), value - by), Math.min(whole.high(), value + by));
  }

  /**
   * The pressure altitude, about that of some air, 1000 ft to either side; the temperature stays as
   * far from that of the standard atmosphere.
   *
   * @param air the air of the base
   * @return the input
   */
  public static Input pressureAltitude(Air air) {
    double warmer = air.temperature() - StandardAtmosphere.at(air.pressureAltitude()).temperature();
    double altitude = Unit.FOOT.fromSi(air.pressureAltitude());
    return new Input(
        "air",
        new Quantity("pressure altitude", Unit.FOOT, altitude - ALTITUDE, altitude + ALTITUDE),
        altitude,
        (base, other) -> base.withAir(StandardAtmosphere.at(Unit.FOOT.toSi(other), warmer)));
  }

  /**
   * The delay of an encounter, half a second to either side, not below zero.
   *
   * @param base the encounter
   * @return the input
   */
  public static Input delay(Encounter base) {
    double delay = base.delay();
    return new Input(
        "pilot",
        Recognition.DELAY.within(Math.max(0, delay - DELAY), delay + DELAY),
        delay,
        Encounter::withDelay);
  }

  /**
   * The numbers of a technique that are not zero, with the standard value of the others.
   *
   * @param technique the technique
   * @return the inputs
   */
  public static List<Input> technique(Technique technique) {
    ParameterSet standard = technique.standard().numbers();
    List<Input> inputs = new ArrayList<>();
    for (Parameter parameter : technique.parameters()) {
      double value = standard.get(parameter);
      Quantity range = around(parameter, value);
      if (range.low() < value && value < range.high()) {
        inputs.add(
            new Input(
                "pilot",
                range,
                value,
                (base, other) ->
                    base.withRecovery(
                        technique
                            .maker()
                            .apply(base.recovery().numbers().with(parameter, other)))));
      }
    }
    return List.copyOf(inputs);
  }

  /**
   * The numbers of the ring-state model that nobody has measured. The encounter's inflow must be
   * that model; a boundary that is read off the inflow moves with it.
   *
   * @return the inputs
   */
  public static List<Input> model() {
    List<Input> inputs = new ArrayList<>();
    for (Spread spread : OpenNumbers.SPREADS) {
      Parameter parameter = spread.parameter();
      inputs.add(
          new Input(
              "model",
              parameter
                  .quantity()
                  .within(
                      spread.distribution().getSupportLowerBound(),
                      spread.distribution().getSupportUpperBound()),
              parameter.standard(),
              (base, other) -> changed(base, parameter, other)));
    }
    return List.copyOf(inputs);
  }

  private static Encounter changed(Encounter base, Parameter parameter, double value) {
    RingStateInflow inflow = new RingStateInflow(base.inflow().numbers().with(parameter, value));
    return base.withInflow(
        inflow,
        base.boundary() instanceof HeaveDamping ? new HeaveDamping(inflow) : base.boundary());
  }
}
