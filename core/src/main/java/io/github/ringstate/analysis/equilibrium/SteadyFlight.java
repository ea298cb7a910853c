package io.github.ringstate.analysis.equilibrium;

import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.Unit;
import java.util.Locale;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathRuntimeException;

/**
 * A steady flight that the craft can hold: a {@link Trim} within the limits of controls, attitude
 * and engine.
 *
 * @param trim attitude, collective and induced velocity
 * @param forward the speed through the air along the nose, m/s
 * @param sideways the speed through the air to the right, m/s
 * @param verticalSpeed the vertical speed through the air, m/s, positive up
 * @param power power of rotors and gearbox, W; at most nothing where the air drives the rotor
 */
public record SteadyFlight(
    Trim trim, double forward, double sideways, double verticalSpeed, double power) {

  /** Part of the message where a limit stands against a steady flight. */
  public static final String NEEDS = " needs ";

  /** Deepest descent in which an autorotation is looked for, in hover induced velocities. */
  private static final double DEEPEST = -6;

  /** Shallowest one. */
  private static final double SHALLOWEST = -0.2;

  private static final double STEP = 0.1;

  /**
   * Finds a steady flight: level, climbing or descending, in any wind, the rotor at full speed.
   *
   * @param equations the equations of motion, in any wind; nobody may command them
   * @param forward the speed through the air along the nose, m/s
   * @param sideways the speed through the air to the right, m/s
   * @param verticalSpeed the vertical speed through the air, m/s, positive up
   * @return the flight
   * @throws NoSteadyFlightException if there is none, or a limit of the craft stands against it;
   *     the message says which, with what is needed and what there is
   */
  public static SteadyFlight find(
      EquationsOfMotion equations, double forward, double sideways, double verticalSpeed) {
    SteadyFlight flight = unlimited(equations, forward, sideways, verticalSpeed);
    Helicopter craft = equations.craft();
    flight.refuse(craft, "collective", flight.trim.collective(), CraftLimits.MAXIMUM_COLLECTIVE, 1);
    flight.refuse(
        craft, "collective", -flight.trim.collective(), CraftLimits.MINIMUM_COLLECTIVE, -1);
    flight.refuse(craft, "pitch", Math.abs(flight.trim.pitch()), CraftLimits.PITCH_LIMIT, 1);
    flight.refuse(craft, "bank", Math.abs(flight.trim.bank()), CraftLimits.BANK_LIMIT, 1);
    double available = craft.takeOffPower(equations.air());
    if (!(flight.power <= available)) {
      throw flight.refused(
          craft,
          String.format(
              Locale.ROOT,
              "%.1f kW; the take-off power in this air is %.1f kW",
              Unit.KILOWATT.fromSi(flight.power),
              Unit.KILOWATT.fromSi(available)));
    }
    return flight;
  }

  /**
   * Finds the steady autorotation at a speed through the air: the slowest descent in which the air
   * drives the rotor at full speed, engine and gearbox included.
   *
   * @param equations the equations of motion, in any wind; nobody may command them
   * @param forward the speed through the air along the nose, m/s
   * @param sideways the speed through the air to the right, m/s
   * @return the flight, with no power
   * @throws NoSteadyFlightException if there is none down to 6 hover induced velocities, or a limit
   *     of the craft stands against it
   */
  public static SteadyFlight autorotation(
      EquationsOfMotion equations, double forward, double sideways) {
    double scale = equations.hoverInduced();
    double above = SHALLOWEST;
    for (double below = above - STEP; below >= DEEPEST; below -= STEP) {
      if (!(power(equations, forward, sideways, below * scale) > 0)) {
        try {
          double speed =
              new BracketingNthOrderBrentSolver(1e-12, 1e-10, 5)
                  .solve(200, z -> power(equations, forward, sideways, z * scale), below, above);
          return find(equations, forward, sideways, speed * scale);
        } catch (MathRuntimeException noRoot) {
          throw new NoSteadyFlightException(noAutorotation(equations, forward, sideways), noRoot);
        }
      }
      above = below;
    }
    throw new NoSteadyFlightException(noAutorotation(equations, forward, sideways));
  }

  private static String noAutorotation(
      EquationsOfMotion equations, double forward, double sideways) {
    return String.format(
        Locale.ROOT,
        "%s has no steady autorotation at %.1f m/s ahead and %.1f m/s to the right down to %.0f m/s",
        equations.craft().name(),
        forward,
        sideways,
        -DEEPEST * equations.hoverInduced());
  }

  private static double power(
      EquationsOfMotion equations, double forward, double sideways, double verticalSpeed) {
    return unlimited(equations, forward, sideways, verticalSpeed).power;
  }

  private static SteadyFlight unlimited(
      EquationsOfMotion equations, double forward, double sideways, double verticalSpeed) {
    Trim trim = Trim.find(equations, forward, sideways, verticalSpeed);
    Motion at = equations.at(0, trim.state(equations, forward, sideways, verticalSpeed));
    return new SteadyFlight(trim, forward, sideways, verticalSpeed, at.loads().shaftPower());
  }

  private void refuse(Helicopter craft, String what, double needed, Parameter limit, int sign) {
    double there = sign * craft.si(limit);
    if (!(needed <= there)) {
      throw refused(
          craft,
          String.format(
              Locale.ROOT,
              "a %s of %.2f deg; its %s is %.2f deg",
              what,
              Unit.DEGREE.fromSi(sign * needed),
              limit.name(),
              craft.numbers().get(limit)));
    }
  }

  private NoSteadyFlightException refused(Helicopter craft, String needs) {
    return new NoSteadyFlightException(
        String.format(
            Locale.ROOT,
            "%s at %.1f m/s ahead, %.1f m/s to the right and %.1f m/s up%s%s",
            craft.name(),
            forward,
            sideways,
            verticalSpeed,
            NEEDS,
            needs));
  }
}
