package io.github.ringstate.analysis.equilibrium;

import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.dynamics.Trim;
import java.util.List;
import org.hipparchus.analysis.MultivariateVectorFunction;

/**
 * What vanishes in a steady descent: three accelerations, the rate of the induced velocity and that
 * of the rotor speed, with an engine that gives what is asked of it as far as it can. The unknowns
 * are pitch, bank (rad), vertical speed and induced velocity (over the hover induced velocity vh)
 * and rotor speed (over nominal); then one or two of collective (in {@link #COLLECTIVE_SCALE}),
 * airspeed (in vh) and mass (over that of the case).
 */
final class DescentEquations implements MultivariateVectorFunction {

  /** How many unknowns there are. */
  static final int UNKNOWNS = 5;

  /** Unit of the collective, rad, in which it changes as much as the other unknowns. */
  static final double COLLECTIVE_SCALE = 0.1;

  private static final double ACCELERATION_SCALE = 10;

  private final DescentCase descents;
  private final List<Varied> varied;
  private final double collective;
  private final double scale;
  private EquationsOfMotion equations;

  /**
   * Creates the equations.
   *
   * @param descents the case
   * @param collective blade pitch, rad, where it is not varied
   * @param varied what stands behind the unknowns
   */
  DescentEquations(DescentCase descents, double collective, Varied... varied) {
    this.descents = descents;
    this.varied = List.of(varied);
    this.collective = collective;
    equations = descents.equations();
    scale = equations.hoverInduced();
  }

  /** Unknowns of level flight, and its collective behind them. */
  double[] levelFlight() {
    Trim trim = Trim.find(equations, descents.airspeed(), 0);
    double[] place = new double[UNKNOWNS + 1];
    place[0] = trim.pitch();
    place[1] = trim.bank();
    place[3] = trim.induced() / scale;
    place[4] = 1;
    place[UNKNOWNS] = trim.collective() / COLLECTIVE_SCALE;
    return place;
  }

  private double varied(double[] place, Varied what, double otherwise) {
    int index = varied.indexOf(what);
    return index < 0 ? otherwise : place[UNKNOWNS + index];
  }

  double collective(double[] place) {
    return COLLECTIVE_SCALE * varied(place, Varied.COLLECTIVE, collective / COLLECTIVE_SCALE);
  }

  double airspeed(double[] place) {
    return scale * varied(place, Varied.AIRSPEED, descents.airspeed() / scale);
  }

  double mass(double[] place) {
    return descents.craft().mass() * varied(place, Varied.MASS, 1);
  }

  /** The equations of motion at the mass of a place. */
  EquationsOfMotion equations(double[] place) {
    double mass = mass(place);
    if (equations.craft().mass() != mass) {
      equations = descents.equations(mass);
    }
    return equations;
  }

  /** The state of a place, heading north in calm air. */
  double[] state(double[] place) {
    double[] state = moving(place);
    equations(place).inBalance(state).loads().settle(state);
    return state;
  }

  private double[] moving(double[] place) {
    double[] state = new double[State.SIZE];
    state[State.PITCH] = place[0];
    state[State.BANK] = place[1];
    state[State.SPEED_NORTH] = airspeed(place);
    state[State.SPEED_UP] = scale * place[2];
    state[State.INDICATED_VERTICAL_SPEED] = state[State.SPEED_UP];
    state[State.INDUCED] = scale * place[3];
    state[State.COLLECTIVE] = collective(place);
    state[State.ROTOR_SPEED] = equations(place).craft().rotor().nominalSpeed() * place[4];
    return state;
  }

  @Override
  public double[] value(double[] place) {
    if (!(place[4] > 0)) {
      throw new IllegalArgumentException("the rotor speed must be positive, not " + place[4]);
    }
    EquationsOfMotion motion = equations(place);
    Motion at = motion.inBalance(moving(place));
    return new double[] {
      at.rate(State.SPEED_NORTH) / ACCELERATION_SCALE,
      at.rate(State.SPEED_EAST) / ACCELERATION_SCALE,
      at.rate(State.SPEED_UP) / ACCELERATION_SCALE,
      at.rate(State.INDUCED) / (ACCELERATION_SCALE * scale),
      at.rate(State.ROTOR_SPEED) / motion.craft().rotor().nominalSpeed()
    };
  }
}
