package io.github.ringstate.validation.catalogue;

import static io.github.ringstate.analysis.linear.Coordinate.HEAVE;
import static io.github.ringstate.analysis.linear.Coordinate.INFLOW;

import io.github.ringstate.air.Wind;
import io.github.ringstate.analysis.linear.LinearModel;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.rotor.Rotor;
import io.github.ringstate.validation.check.Check;
import java.util.List;

/** Heave damping in level flight beside one that was identified from flight tests. */
final class ForwardDamping {

  /** 80 kt, taken as the true airspeed. */
  private static final double SPEED = Unit.KNOT.toSi(80);

  /** 5,000 ft. */
  private static final double HEIGHT = Unit.FOOT.toSi(5000);

  private ForwardDamping() {}

  static Check check(Models models) {
    return Measured.of("forward-heave-damping")
        .near(
            "heave damping of the tested rotor at 80 kt",
            "-Zw",
            Sources.SHORT_PERIOD,
            -damping(models));
  }

  /** Change of vertical acceleration with vertical speed, 1/s, attitude and controls held. */
  private static double damping(Models models) {
    EquationsOfMotion equations =
        new EquationsOfMotion(
            models.craft(tested()), models.air(HEIGHT), Wind.CALM, models.ring(), false);
    double[] level = Trim.find(equations, SPEED, 0).state(equations, SPEED, 0);
    LinearModel both = LinearModel.about(equations, level, List.of(HEAVE, INFLOW), List.of());
    // with the induced velocity settled, as an identified model without inflow has it
    return both.a().get(0, 0) - both.a().get(0, 1) * both.a().get(1, 0) / both.a().get(1, 1);
  }

  /** The rotor of the craft that was tested, from memory; the rest is that of a demo craft. */
  private static Helicopter tested() {
    return DemoCraft.TWIN
        .with(Helicopter.MINIMUM_MASS, 1600)
        .with(Helicopter.MASS, 2200)
        .with(Helicopter.MAXIMUM_MASS, 2540)
        .with(Rotor.RADIUS, 5.345)
        .with(Rotor.SOLIDITY, 3 * 0.35 / (Math.PI * 5.345))
        .with(Rotor.TIP_SPEED, 394 * 2 * Math.PI / 60 * 5.345);
  }
}
