package io.github.ringstate.analysis.equilibrium;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.Propagators;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.integrate.Propagator;
import io.github.ringstate.integrate.Sampler;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A flown hysteresis loop: the collective is lowered slowly until the sink has jumped down, and
 * raised again until it has jumped back, the airspeed held by attitude throughout. The ring keeps
 * its memory, so the way back shows what a ring that persists does beside the folds.
 *
 * @param lowering the way down, sample by sample
 * @param raising the way back
 */
public record HysteresisLoop(List<Sample> lowering, List<Sample> raising) {

  /**
   * An instant of the loop.
   *
   * @param time since the collective began to move, s
   * @param collective blade pitch at three quarters of the radius, rad
   * @param verticalSpeed vertical speed, m/s, positive up
   * @param acceleration vertical acceleration, m/s2, positive up
   * @param rotorSpeed rotor speed over nominal
   */
  public record Sample(
      double time,
      double collective,
      double verticalSpeed,
      double acceleration,
      double rotorSpeed) {}

  /** How far beyond the folds the collective goes, rad. */
  private static final double BEYOND = Unit.DEGREE.toSi(0.4);

  /** Time that the flight takes to settle at either end, s. */
  private static final double SETTLING = 60;

  private static final double SAMPLE_STEP = 0.2;

  /** Attitude for an error of airspeed, rad s/m. */
  private static final double SPEED_GAIN = 0.02;

  private static final double ATTITUDE_RATE = 0.5;

  private static final double COLLECTIVE_RATE = 0.2;

  /** Copies the lists. */
  public HysteresisLoop {
    lowering = List.copyOf(lowering);
    raising = List.copyOf(raising);
  }

  /**
   * Flies the loop over the folds of a case.
   *
   * @param descents the case
   * @param rate how fast the collective moves, rad/s, positive and finite; 0.02 deg/s is slow
   *     beside everything else
   * @return the loop, or empty if the steady descents do not fold over
   */
  public static Optional<HysteresisLoop> fly(DescentCase descents, double rate) {
    if (!(rate > 0 && rate < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "the rate must be positive and finite, not " + rate + " rad/s");
    }
    List<Equilibrium> folds = EquilibriumCurve.againstCollective(descents).folds();
    if (folds.size() < 2) {
      return Optional.empty();
    }
    double low = folds.get(0).collective() - BEYOND;
    double high = folds.get(1).collective() + BEYOND;
    EquationsOfMotion equations = descents.equations();
    Trim level = Trim.find(equations, descents.airspeed(), 0);
    Propagator<String, Motion> propagator = Propagators.precise();
    propagator.start(0, level.state(equations, descents.airspeed(), 0));
    double travel = (high - low) / rate;
    leg(propagator, equations, descents.airspeed(), SETTLING, t -> high);
    List<Sample> lowering = new ArrayList<>();
    propagator.sample(sampler(lowering));
    leg(propagator, equations, descents.airspeed(), travel, t -> high - rate * t);
    leg(propagator, equations, descents.airspeed(), SETTLING, t -> low);
    List<Sample> raising = new ArrayList<>();
    propagator.sample(sampler(raising));
    leg(propagator, equations, descents.airspeed(), travel, t -> low + rate * t);
    leg(propagator, equations, descents.airspeed(), SETTLING, t -> high);
    return Optional.of(new HysteresisLoop(lowering, raising));
  }

  private interface Lever {
    double collective(double since);
  }

  private static Sampler<Motion> sampler(List<Sample> to) {
    return new Sampler<>(
        SAMPLE_STEP,
        at ->
            to.add(
                new Sample(
                    at.time() - SETTLING,
                    at.collective(),
                    at.verticalSpeed(),
                    at.verticalAcceleration(),
                    at.rotorSpeed())));
  }

  private static void leg(
      Propagator<String, Motion> propagator,
      EquationsOfMotion equations,
      double airspeed,
      double duration,
      Lever lever) {
    double begin = propagator.time();
    equations.commandedBy(
        (seen, controls) -> {
          holdSpeed(seen, airspeed, controls);
          controls.collective(lever.collective(seen.time() - begin), COLLECTIVE_RATE);
        });
    propagator.propagate(equations, begin + duration, List.of());
  }

  /** Attitude goes to where nothing accelerates, and a little to where the error of speed goes. */
  private static void holdSpeed(Motion seen, double airspeed, Controls controls) {
    double gravity = StandardAtmosphere.STANDARD_GRAVITY_CGPM_1901;
    controls.pitch(
        seen.pitch()
            + seen.rate(State.SPEED_NORTH) / gravity
            + SPEED_GAIN * (seen.forwardAirspeed() - airspeed),
        ATTITUDE_RATE);
    controls.bank(
        seen.bank() - seen.rate(State.SPEED_EAST) / gravity - SPEED_GAIN * seen.sidewaysAirspeed(),
        ATTITUDE_RATE);
  }

  /**
   * The jump down: where the craft accelerates downward most.
   *
   * @return the instant
   */
  public Sample jumpDown() {
    return lowering.stream().min(Comparator.comparingDouble(Sample::acceleration)).orElseThrow();
  }

  /**
   * The jump back: where the craft accelerates upward most.
   *
   * @return the instant
   */
  public Sample jumpUp() {
    return raising.stream().max(Comparator.comparingDouble(Sample::acceleration)).orElseThrow();
  }
}
