package io.github.ringstate.validation.catalogue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.rotor.Rotor;
import io.github.ringstate.validation.check.Check;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;

/** Thrust of a small rotor in hover at set blade pitch. */
final class ModelHover {

  private static final double SOLIDITY = 2 * 0.1905 / (Math.PI * 1.143);

  private ModelHover() {}

  static List<Check> checks(Models models) {
    List<Check> checks = new ArrayList<>();
    for (int degrees : new int[] {5, 8, 12}) {
      Measured thrust = Measured.of("model-thrust-" + degrees);
      checks.add(
          thrust
              .near(
                  "thrust of a two-bladed model rotor at " + degrees + " degrees",
                  "CT",
                  HeldOut.source("model-hover"),
                  thrustCoefficient(models, Math.toRadians(degrees)))
              .butDiffers(
                  1.1 * thrust.value(), 1.4 * thrust.value(), Hover.TEXT.say("thrust-differs")));
    }
    return checks;
  }

  private static double thrustCoefficient(Models models, double pitch) {
    ParameterSet numbers =
        DemoCraft.TRAINER
            .numbers()
            .with(Rotor.TWIST, 0)
            .with(Rotor.ROOT_CUTOUT, 1.0 / 6)
            .with(Rotor.SOLIDITY, SOLIDITY);
    Rotor rotor = models.rotor(numbers);
    double tipSpeed = DemoCraft.TRAINER.si(Rotor.TIP_SPEED);
    double scale = Craft.density() * rotor.area() * tipSpeed * tipSpeed;
    return new BrentSolver(1e-9)
        .solve(
            100,
            coefficient ->
                rotor.thrust(
                            Craft.density(),
                            tipSpeed,
                            pitch,
                            0,
                            Math.sqrt(coefficient / 2) * tipSpeed)
                        / scale
                    - coefficient,
            1e-5,
            0.05);
  }
}
