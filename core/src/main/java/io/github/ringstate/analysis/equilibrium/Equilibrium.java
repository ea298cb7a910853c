package io.github.ringstate.analysis.equilibrium;

import io.github.ringstate.analysis.linear.Coordinate;
import io.github.ringstate.analysis.linear.LinearModel;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Loads;
import io.github.ringstate.dynamics.State;
import java.util.ArrayList;
import java.util.List;

/**
 * A steady descent: collective and airspeed held, the rotor speed free.
 *
 * @param collective blade pitch at three quarters of the radius, rad
 * @param airspeed airspeed along the nose, m/s
 * @param mass mass in flight, kg
 * @param verticalSpeed vertical speed, m/s, positive up
 * @param pitch pitch attitude that holds the airspeed, rad, positive nose up
 * @param bank bank that holds it, rad, positive to the right
 * @param induced induced velocity, m/s
 * @param rotorSpeed rotor speed over nominal
 * @param power power that rotors and gearbox take, W
 * @param edgewise edgewise speed of the disc, in hover induced velocities of the thrust
 * @param axial axial speed of the disc, positive in climb, same unit
 * @param growth how fast a disturbance grows that grows most, 1/s; negative where all die away
 */
public record Equilibrium(
    double collective,
    double airspeed,
    double mass,
    double verticalSpeed,
    double pitch,
    double bank,
    double induced,
    double rotorSpeed,
    double power,
    double edgewise,
    double axial,
    double growth) {

  static Equilibrium at(DescentEquations equations, double[] place) {
    EquationsOfMotion motion = equations.equations(place);
    double[] state = equations.state(place);
    double growth = heldSpeed(motion, state).modes().get(0).real();
    Loads loads = motion.inBalance(state).loads();
    double scale =
        motion.craft().rotor().hoverInducedVelocity(loads.thrust(), motion.air().density());
    return new Equilibrium(
        equations.collective(place),
        equations.airspeed(place),
        equations.mass(place),
        state[State.SPEED_UP],
        state[State.PITCH],
        state[State.BANK],
        state[State.INDUCED],
        place[4],
        loads.shaftPower(),
        loads.edgewise() / scale,
        loads.axial() / scale,
        growth);
  }

  /** The linear model of vertical motion, inflow, rotor speed and engine, the airspeed held. */
  private static LinearModel heldSpeed(EquationsOfMotion motion, double[] state) {
    List<Coordinate> speeds = List.of(Coordinate.SURGE, Coordinate.SWAY);
    List<Coordinate> attitude = List.of(Coordinate.PITCH, Coordinate.BANK);
    List<Coordinate> all = new ArrayList<>(speeds);
    all.addAll(List.of(Coordinate.HEAVE, Coordinate.INFLOW, Coordinate.ROTOR_SPEED));
    if (motion.craft().si(Helicopter.ENGINE_TIME) > 0) {
      all.add(Coordinate.ENGINE);
    }
    if (motion.inflow().hasGradient()) {
      all.addAll(List.of(Coordinate.GRADIENT_NOSE, Coordinate.GRADIENT_RIGHT));
    }
    return LinearModel.about(motion, state, all, attitude).holding(speeds, attitude);
  }

  /**
   * Whether a small disturbance dies away.
   *
   * @return false if it grows
   */
  public boolean stable() {
    return growth < 0;
  }
}
