package io.github.ringstate.validation.catalogue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.rotor.Rotor;
import io.github.ringstate.validation.check.Check;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;

/** The rate of descent at which a rotor of constant pitch and speed pulls least. */
final class LeastThrust {

  private LeastThrust() {}

  static List<Check> checks(Models models) {
    Measured least = Measured.of("least-thrust");
    List<Check> checks = new ArrayList<>();
    for (var declared : DemoCraft.ALL) {
      Craft craft = Craft.of(models, declared);
      Check check =
          least.near(
              "rate of descent of the least thrust, " + craft.name(),
              "axial speed over the induced velocity of the hover",
              Sources.SMALL_ROTORS,
              leastThrust(craft, models.ring()));
      // the trainer has the least blade area for its weight, so its thrust falls least
      checks.add(
          declared.equals(DemoCraft.TRAINER)
              ? check.butDiffers(-1.4, -1.351, DescentFits.TEXT.say("least-thrust-trainer-differs"))
              : check);
    }
    return checks;
  }

  private static double leastThrust(Craft craft, InflowModel inflow) {
    Rotor rotor = craft.motion().craft().rotor();
    double tipSpeed = craft.si(Rotor.TIP_SPEED);
    double weight = craft.motion().craft().weight();
    double vh = craft.hoverInduced(weight);
    double collective =
        new BrentSolver(1e-12)
            .solve(
                100,
                c ->
                    rotor.thrust(Craft.density(), tipSpeed, c, 0, inflow.total(0, 0) * vh) - weight,
                0,
                0.5);
    return Arrays.stream(Grid.spaced(-1.6, -0.2, 281))
        .boxed()
        .min(
            Comparator.comparingDouble(
                axial -> thrust(craft, inflow, collective, axial * vh, weight)))
        .orElseThrow();
  }

  /** The thrust that its own induced velocity leaves of the blades' lift. */
  private static double thrust(
      Craft craft, InflowModel inflow, double collective, double axial, double weight) {
    Rotor rotor = craft.motion().craft().rotor();
    double tipSpeed = craft.si(Rotor.TIP_SPEED);
    return new BrentSolver(1e-6 * weight)
        .solve(
            200,
            thrust -> {
              double vh = craft.hoverInduced(thrust);
              double total = inflow.total(0, axial / vh) * vh;
              return rotor.thrust(Craft.density(), tipSpeed, collective, 0, total) - thrust;
            },
            0.2 * weight,
            2 * weight);
  }
}
