package outside;

import io.github.ringstate.craft.EngineKind;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.rotor.Rotor;

/** An invented craft, from numbers as a data sheet has them. No real type. */
public final class DataSheet {

  private DataSheet() {}

  /** The craft. */
  public static Helicopter craft() {
    return new Helicopter(
            "outsider",
            "Invented four-seat helicopter; no real type.",
            RotationSense.CLOCKWISE,
            EngineKind.TURBINE,
            Helicopter.STANDARD_NUMBERS)
        .with(Rotor.RADIUS, 5.2) // m
        .with(Rotor.TIP_SPEED, 210) // m/s
        .with(Rotor.SOLIDITY, 0.045)
        .with(Helicopter.MAXIMUM_MASS, 1500) // kg
        .with(Helicopter.MASS, 1350); // kg
  }
}
