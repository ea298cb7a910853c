package io.github.ringstate.craft;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.rotor.BladeDrag;
import java.util.List;
import org.hipparchus.util.FastMath;

/** How the power that an engine can give falls with the density of the air. */
public enum EngineKind {
  /**
   * A piston engine without supercharger: P/P0 = 1.132 sigma - 0.132 (Gagg and Ferrar, SAE Journal
   * 34(6), 1934; from memory).
   */
  PISTON("piston", 0.3) {
    @Override
    public double lapse(double densityRatio, double turbineExponent) {
      return Math.max(0, PISTON_SLOPE * densityRatio - PISTON_LOSS);
    }
  },
  /** A turbine: power in proportion to a power of the density. */
  TURBINE("turbine", 0.5) {
    @Override
    public double lapse(double densityRatio, double turbineExponent) {
      return FastMath.pow(densityRatio, turbineExponent);
    }
  };

  /** Gagg and Ferrar, SAE Journal 34(6), 1934 (from memory). */
  private static final double PISTON_SLOPE = 1.132;

  /** Gagg and Ferrar, SAE Journal 34(6), 1934 (from memory). */
  private static final double PISTON_LOSS = 0.132;

  private final String label;
  private final double responseTime;

  EngineKind(String label, double responseTime) {
    this.label = label;
    this.responseTime = responseTime;
  }

  /**
   * Time constant with which the engine's power follows what is asked of it, unless a craft has its
   * own.
   *
   * <p>A first-order lag, the simplest form in use for fuel control and engine together (Padfield,
   * <i>Helicopter Flight Dynamics</i>, section on powerplant and rotor governor, where the lag of
   * the fuel is of the order of 0.1 s and that of the engine changes with torque). The values are
   * assumed. Piston, 0.3 s: a throttle moved by correlator and governor, and the filling of the
   * intake; 0.1 to 1 s is plausible. Turbine, 0.5 s: from half of its power upward; 0.2 to 1.5 s is
   * plausible, and up to 5 s from idle (14 CFR 33.73, from memory).
   *
   * @return the time, s
   */
  public double responseTime() {
    return responseTime;
  }

  /**
   * The kind in words.
   *
   * @return lower case
   */
  public String label() {
    return label;
  }

  /**
   * Power over that at sea level on a standard day.
   *
   * @param densityRatio the air's density over 1.225 kg/m3; positive
   * @param turbineExponent the exponent of a turbine, {@link Helicopter#TURBINE_LAPSE}; a piston
   *     engine does not heed it
   * @return the ratio, not negative
   */
  public abstract double lapse(double densityRatio, double turbineExponent);

  /**
   * Parameters that a written craft may leave out; see {@link #usual}.
   *
   * @return the parameters
   */
  public static List<Parameter> optional() {
    return List.of(
        BladeDrag.PROFILE_DRAG_SLOPE,
        BladeDrag.PROFILE_DRAG_CURVATURE,
        Helicopter.DRIVE_TRAIN_LIMIT,
        Helicopter.ENGINE_TIME,
        Helicopter.TURBINE_LAPSE,
        CraftLimits.ATTITUDE_TIME,
        CraftLimits.ATTITUDE_RATE_TIME,
        CraftLimits.COLLECTIVE_TIME,
        CraftLimits.HIGH_ROTOR_SPEED);
  }

  /**
   * The value of a craft's parameter that is usual with this kind of engine.
   *
   * @param parameter a parameter of {@link Helicopter#SECTIONS}
   * @return the value, in the parameter's own unit; its standard value unless the engine matters
   */
  public double usual(Parameter parameter) {
    return parameter.equals(Helicopter.ENGINE_TIME) ? responseTime : parameter.standard();
  }
}
