package io.github.ringstate.dynamics;

import io.github.ringstate.quantity.MadeOf;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.util.FastMath;

/**
 * Thrust that fluctuates in the ring state, strongest near a descent of 1.2 hover induced
 * velocities.
 *
 * <p>In time it is a sum of sinusoids with frequencies spread about one in some tens of revolutions
 * and random phases: a smooth function of time for a given seed. In speed it fades as a bell about
 * the strongest descent, and with edgewise speed (to a fiftieth at the reach). A bend keeps the
 * thrust positive; it takes about a tenth off a standard deviation of 30 per cent and next to
 * nothing off one of 5.
 *
 * <p>Sources: greatest at 1.2 to 1.3 times the hover induced velocity (Veismann, Dougherty and
 * Gharib, Flow, 2023, small rotors); up to 95 per cent peak to peak every 20 to 50 revolutions on a
 * small rotor in water (Stack, Caradonna and Savas). Full-scale rotors fluctuate far less; the
 * strength here is assumed.
 */
public final class RingStateShaking extends MadeOf implements ThrustDisturbance {

  /**
   * Standard deviation of the thrust where it shakes most, over its mean. Default 5 %, range 0 to
   * 30 %.
   */
  public static final Parameter STRENGTH =
      Parameter.of("shaking strength", Unit.PERCENT, 0, 30, 5, "assumed; model rotors shake more");

  /**
   * Axial speed at which it shakes most, in units of the hover induced velocity. Default -1.2,
   * range -1.6 to -0.6 (a pure number).
   */
  public static final Parameter STRONGEST =
      Parameter.of(
          "strongest shaking",
          Unit.ONE,
          -1.6,
          -0.6,
          -1.2,
          "greatest losses and fluctuations at 1.2 to 1.3 (Veismann and others, Flow, 2023)");

  /**
   * Width of the bell in axial speed, in units of the hover induced velocity. Default 0.4, range
   * 0.1 to 1 (a pure number).
   */
  public static final Parameter WIDTH =
      Parameter.of("shaking width", Unit.ONE, 0.1, 1, 0.4, "assumed");

  /**
   * Edgewise speed at which the shaking has all but gone. Default 1, range 0.3 to 2 (a pure
   * number).
   */
  public static final Parameter REACH =
      Parameter.of("shaking reach", Unit.ONE, 0.3, 2, 1, "assumed: a little beyond the boundary");

  /**
   * Revolutions of the rotor in one period of the middle frequency. Default 32, range 5 to 100 (a
   * pure number).
   */
  public static final Parameter REVOLUTIONS =
      Parameter.of(
          "shaking revolutions",
          Unit.ONE,
          5,
          100,
          32,
          "20 to 50 revolutions (Stack, Caradonna and Savas, small rotor)");

  /**
   * The longest period over the middle one, and the middle one over the shortest. Default 1.6,
   * range 1 to 4 (a pure number).
   */
  public static final Parameter PERIOD_SPREAD =
      Parameter.of(
          "shaking period spread",
          Unit.ONE,
          1,
          4,
          1.6,
          "assumed: 50 over 32; 20 to 50 revolutions of Stack, Caradonna and Savas");

  /** All parameters. */
  public static final List<Parameter> PARAMETERS =
      List.of(STRENGTH, STRONGEST, WIDTH, REACH, REVOLUTIONS, PERIOD_SPREAD);

  private static final int SINUSOIDS = 9;

  /** Exponent of the fall with edgewise speed at the reach, to a fiftieth: what reach means. */
  private static final double EDGEWISE_FALL = 4;

  /** A fluctuation so small is none (numerical). */
  private static final double NONE_FELT = 1e-9;

  private final double strength;
  private final double strongest;
  private final double width;
  private final double reach;
  private final double[] frequency = new double[SINUSOIDS];
  private final double[] phase = new double[SINUSOIDS];

  /**
   * Draws one realisation.
   *
   * @param numbers a value for each of {@link #PARAMETERS}
   * @param rotorSpeed the rotor's speed, rad/s
   * @param seed the same seed gives the same fluctuation
   */
  public RingStateShaking(ParameterSet numbers, double rotorSpeed, long seed) {
    super(numbers.only(PARAMETERS), rotorSpeed, seed);
    strength = numbers.si(STRENGTH);
    strongest = numbers.si(STRONGEST);
    width = numbers.si(WIDTH);
    reach = numbers.si(REACH);
    double middle = rotorSpeed / numbers.si(REVOLUTIONS);
    double periodSpread = numbers.si(PERIOD_SPREAD);
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < SINUSOIDS; i++) {
      // periods evenly in the logarithm, each moved a little
      double spread = (i + unit(random)) / SINUSOIDS * 2 - 1;
      frequency[i] = middle * FastMath.pow(periodSpread, spread);
      phase[i] = 2 * Math.PI * unit(random);
    }
  }

  @Override
  public double factor(double time, double edgewise, double axial) {
    double level = roughness(edgewise, axial);
    if (level < NONE_FELT) {
      return 1;
    }
    double sum = 0;
    for (int i = 0; i < SINUSOIDS; i++) {
      sum += FastMath.sin(frequency[i] * time + phase[i]);
    }
    // each sinusoid has variance 1/2; the bend keeps the thrust positive whatever adds up
    double swing = level * sum * Math.sqrt(2.0 / SINUSOIDS);
    return 1 + swing / Math.sqrt(1 + swing * swing);
  }

  @Override
  public double roughness(double edgewise, double axial) {
    double z = (axial - strongest) / width;
    double x = edgewise / reach;
    double x2 = x * x;
    return strength * FastMath.exp(-0.5 * z * z - EDGEWISE_FALL * x2 * x2);
  }

  private static double unit(SplittableRandom random) {
    return (random.nextLong() >>> 11) * 0x1.0p-53;
  }
}
