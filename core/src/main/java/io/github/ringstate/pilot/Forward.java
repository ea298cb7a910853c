package io.github.ringstate.pilot;

import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.quantity.MadeOf;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * Nose down and collective reduced until the craft flies out of its own wake, then power back as
 * airspeed comes and the nose up to climb away. The recovery of older teaching.
 */
public final class Forward extends MadeOf implements Recovery {

  /** How far the nose goes down. Default 15 deg, range 5 to 30 deg. */
  public static final Parameter NOSE_DOWN =
      Parameter.of(
          "nose down",
          Unit.DEGREE,
          5,
          30,
          15,
          "assumed: the attitude for a climb speed and a little more; common practice, no source");

  /** How fast the nose goes down and up. Default 12 deg/s, range 2 to 30 deg/s. */
  public static final Parameter RATE =
      Parameter.of("attitude rate", Unit.DEGREE_PER_SECOND, 2, 30, 12, "assumed");

  /**
   * How far the collective goes below the one that was held at recognition. Default 0.9 deg, range
   * 0 to 8 deg.
   */
  public static final Parameter COLLECTIVE_REDUCTION =
      Parameter.of("collective reduction", Unit.DEGREE, 0, 8, 0.9, "assumed");

  /** How fast the collective moves. Default 6 deg/s, range 1 to 20 deg/s. */
  public static final Parameter COLLECTIVE_RATE =
      Parameter.of("collective rate", Unit.DEGREE_PER_SECOND, 1, 20, 6, "assumed");

  /** Airspeed at which power begins to come back. Default 8 kt, range 0 to 40 kt. */
  public static final Parameter POWER_AIRSPEED =
      Parameter.of(
          "power airspeed",
          Unit.KNOT,
          0,
          40,
          8,
          "assumed: as soon as the craft plainly moves ahead");

  /** Airspeed at which the nose comes up. Default 24 kt, range 10 to 60 kt. */
  public static final Parameter EXIT_AIRSPEED =
      Parameter.of(
          "exit airspeed",
          Unit.KNOT,
          10,
          60,
          24,
          "upper end of effective translational lift in the handbooks, 16 to 24 kt");

  /** Power of the climb, over continuous power. Default 100 %, range 50 to 110 %. */
  public static final Parameter CLIMB_POWER =
      Parameter.of("climb power", Unit.PERCENT, 50, 110, 100, "assumed: continuous power");

  /**
   * How much later the collective moves than the nose; earlier if negative. Default 0 s, range -3
   * to 3 s.
   */
  public static final Parameter COLLECTIVE_LATER =
      Parameter.of("collective later", Unit.SECOND, -3, 3, 0, "assumed: both at once");

  /** All parameters of the technique. */
  public static final List<Parameter> PARAMETERS =
      List.of(
          NOSE_DOWN,
          RATE,
          COLLECTIVE_REDUCTION,
          COLLECTIVE_RATE,
          POWER_AIRSPEED,
          EXIT_AIRSPEED,
          CLIMB_POWER,
          COLLECTIVE_LATER,
          PowerSetting.GAIN,
          Drift.GAIN,
          Drift.MAXIMUM);

  private final ParameterSet numbers;
  private final double noseDown;
  private final double rate;
  private final double reduction;
  private final double collectiveRate;
  private final double powerAirspeed;
  private final double exitAirspeed;
  private final double climbPower;
  private final Drift drift;
  private final PowerSetting power;
  private final StepOrder order;
  private final List<Phase> phases;

  /**
   * Creates the technique.
   *
   * @param numbers a value for each of {@link #PARAMETERS}
   */
  public Forward(ParameterSet numbers) {
    super(numbers.only(PARAMETERS));
    this.numbers = numbers.only(PARAMETERS);
    noseDown = numbers.si(NOSE_DOWN);
    rate = numbers.si(RATE);
    reduction = numbers.si(COLLECTIVE_REDUCTION);
    collectiveRate = numbers.si(COLLECTIVE_RATE);
    powerAirspeed = numbers.si(POWER_AIRSPEED);
    exitAirspeed = numbers.si(EXIT_AIRSPEED);
    climbPower = numbers.si(CLIMB_POWER);
    drift = Drift.of(numbers);
    power = new PowerSetting(numbers.si(PowerSetting.GAIN));
    order = new StepOrder(numbers.si(COLLECTIVE_LATER));
    phases =
        List.of(
            Phase.of("nose down", this::noseDown, this::awayAhead),
            Phase.of("power back", this::powerBack, seen -> seen.forwardAirspeed() - exitAirspeed),
            Phase.last("climb away", this::climbAway));
  }

  /**
   * The numbers of the technique.
   *
   * @return a value for each of {@link #PARAMETERS}
   */
  @Override
  public ParameterSet numbers() {
    return numbers;
  }

  /** Creates the technique with the standard value of each parameter. */
  public Forward() {
    this(ParameterSet.standard(PARAMETERS));
  }

  @Override
  public String name() {
    return "forward";
  }

  @Override
  public List<Phase> phases() {
    return phases;
  }

  private void noseDown(Cockpit seen, Controls controls) {
    double collective = seen.heldCollective() - reduction;
    command(seen.hoverPitch() - noseDown, collective, seen, controls);
  }

  /**
   * The nose is at least half down and the airspeed is there: one without the other is an approach
   * that still slows, or a nose that has just been put down.
   */
  private double awayAhead(Cockpit seen) {
    double lowered = seen.hoverPitch() - seen.pitch() - 0.5 * noseDown;
    return Math.min(lowered, seen.forwardAirspeed() - powerAirspeed);
  }

  private void powerBack(Cockpit seen, Controls controls) {
    double collective = power.collective(seen, climbPower);
    command(seen.hoverPitch() - noseDown, collective, seen, controls);
  }

  private void climbAway(Cockpit seen, Controls controls) {
    command(seen.hoverPitch(), power.collective(seen, climbPower), seen, controls);
  }

  private void command(double nose, double collective, Cockpit seen, Controls controls) {
    controls.bank(order.attitude(seen, seen.bank(), drift.bank(seen, seen.hoverBank())), rate);
    controls.pitch(order.attitude(seen, seen.pitch(), nose), rate);
    controls.collective(order.collective(seen, collective), collectiveRate);
  }
}
