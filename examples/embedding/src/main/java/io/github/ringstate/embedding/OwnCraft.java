package io.github.ringstate.embedding;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.Wind;
import io.github.ringstate.craft.EngineKind;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.rotor.Rotor;
import java.io.PrintStream;
import java.util.Locale;

/** Makes a craft of the numbers of a data sheet, and trims it in a hover. */
public final class OwnCraft {

  private OwnCraft() {}

  /**
   * The craft; its numbers are invented, no real type.
   *
   * @return an invented two-seater
   */
  public static Helicopter craft() {
    return new Helicopter(
            "two-seater",
            "Invented two-seat helicopter; no real type.",
            RotationSense.COUNTER_CLOCKWISE,
            EngineKind.PISTON,
            Helicopter.STANDARD_NUMBERS)
        .with(Rotor.RADIUS, 3.9) // m
        .with(Rotor.TIP_SPEED, 205) // m/s
        .with(Rotor.SOLIDITY, 0.034)
        .with(Helicopter.MAXIMUM_MASS, 680) // kg
        .with(Helicopter.MASS, 640); // kg
  }

  /**
   * Runs the program.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    run(System.out);
  }

  static void run(PrintStream out) {
    EquationsOfMotion motion =
        new EquationsOfMotion(
            craft(), StandardAtmosphere.at(0), Wind.CALM, RingStateInflow.standard(), false);
    Trim hover = Trim.find(motion, 0, 0);
    double power = motion.at(0, hover.state(motion, 0, 0)).loads().shaftPower();
    out.printf(
        Locale.ROOT,
        "collective %.1f deg, %.0f kW%n",
        Unit.DEGREE.fromSi(hover.collective()),
        Unit.KILOWATT.fromSi(power));
  }
}
