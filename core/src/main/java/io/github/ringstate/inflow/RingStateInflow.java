package io.github.ringstate.inflow;

import io.github.ringstate.quantity.IncompatibleValuesException;
import io.github.ringstate.quantity.MadeOf;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.stream.Stream;

/**
 * Inflow with the runaway of the vortex ring state in it: an axial curve with a fold between an
 * onset and an exit, faded out with edgewise speed, on momentum theory everywhere else.
 *
 * <p>Along curves fitted to measured mean inflow the total inflow never stops rising with the axial
 * speed, so a rotor that follows them is always damped. In flight a rotor in the ring state is not:
 * the rate of descent runs away at constant collective. The idea to define the model by the
 * boundary of heave stability, where d(total)/d(axial) = 0, is that of Johnson, Model for Vortex
 * Ring State Influence on Rotorcraft Flight Dynamics, NASA/TP-2005-213477, 2005. The formulation is
 * an own one and its numbers are fitted to published statements on the boundary, on the growth of
 * the rate of descent and on autorotation; they are not that report's.
 *
 * <pre>
 *   w(x, z) = S(x, z) + f(x) (wa(z) - S(0, z))   for lower join &lt; z &lt; 0
 *   w(x, z) = S(x, z)                            elsewhere
 *   f(x)    = (1 - (x / fade)^4)^2               for x &lt; fade, 0 beyond
 * </pre>
 *
 * with S the total inflow of {@link SmoothMomentum} and wa the axial curve through hover (w = 1,
 * slope 1/2), the onset (slope 0), the exit (slope 0) and the lower join (value and slope of
 * momentum theory). The slope of w in both directions is continuous everywhere. Accepts 0 to 200
 * edgewise and -200 to 200 axial.
 *
 * <p>With the standard values d(total)/d(axial) is negative in one closed region: -0.50 to -1.45 on
 * the axis, -0.56 to -1.43 at x = 0.5, -0.75 to -1.24 at x = 0.7, closed at x = 0.770; the steepest
 * slope is -0.55, vertical autorotation at z = -1.860. Whatever the parameters there is exactly one
 * fold on the axis, at the onset and the exit that they name. Off the axis, about one random set in
 * thirty splits the last few hundredths of the region's reach in two; the slope between the parts
 * is below 0.02 then.
 *
 * <p>The axial curve contains the losses that a non-uniform inflow adds to the induced power, since
 * measured induced velocity was deduced from thrust and power. {@link #lossShare} says how much of
 * them, so that an induced power factor is not applied to them a second time, and {@link #ring}
 * what the ring's own losses are and how it outlasts its flow.
 */
public final class RingStateInflow extends MadeOf implements InflowModel {

  /**
   * The axial speed at which damping is lost in vertical descent. Default -0.5, range -1 to -0.3 (a
   * pure number).
   */
  public static final Parameter ONSET_AXIAL =
      Parameter.of(
          "ring onset axial speed",
          Unit.ONE,
          -1.0,
          -0.3,
          -0.5,
          "fitted, not published: vertical descents are reported to become unsteady near half the"
              + " hover induced velocity");

  /** The total inflow at the onset. Default 0.9, range 0.75 to 0.97 (a pure number). */
  public static final Parameter ONSET_TOTAL =
      Parameter.of(
          "ring onset total inflow",
          Unit.ONE,
          0.75,
          0.97,
          0.90,
          "fitted, not published: near the total inflow of measured curves at that axial speed");

  /**
   * The axial speed at which damping returns in vertical descent. Default -1.45, range -1.7 to -1
   * (a pure number).
   */
  public static final Parameter EXIT_AXIAL =
      Parameter.of(
          "ring exit axial speed",
          Unit.ONE,
          -1.7,
          -1.0,
          -1.45,
          "fitted, not published: vertical descents are reported steady again near one and a half"
              + " times the hover induced velocity");

  /** The total inflow at the exit. Default 1.25, range 0.95 to 1.7 (a pure number). */
  public static final Parameter EXIT_TOTAL =
      Parameter.of(
          "ring exit total inflow",
          Unit.ONE,
          0.95,
          1.7,
          1.25,
          "fitted, not published: the least that, with the losses of the hover on top, keeps the"
              + " reported runaway; the sum, 1.40, is 2 per cent above the two-segment fit");

  /**
   * The edgewise speed from which the ring state has no part in the model. Default 1.15, range 0.8
   * to 1.2 (a pure number).
   */
  public static final Parameter FADE_EDGEWISE =
      Parameter.of(
          "ring fade edgewise speed",
          Unit.ONE,
          0.8,
          1.2,
          1.15,
          "fitted, not published: puts the edge of the boundary near 0.8 hover induced velocities");

  /**
   * The losses of the ring over those of the hover: g in P = T (z + v) + (k - 1) T [(1 - s) v + g s
   * vh]. Default 1, range 0 to 2.5 (a pure number).
   *
   * <p>The axial curve is anchored at the ideal hover, w = 1, so what of the losses it contains is
   * not known; with g = 0 power would fall by the whole of k - 1 on the way to the onset. The total
   * inflow with its losses, over the hover induced velocity and at k = 1.15, is:
   *
   * <table>
   *   <caption>Total inflow and losses by axial speed</caption>
   *   <tr><th>Curve</th><th>0</th><th>-0.5</th><th>-1.0</th><th>-1.45</th></tr>
   *   <tr><td>quartic fit</td><td>1.15</td><td>1.04</td><td>0.97</td><td>0.79</td></tr>
   *   <tr><td>two-segment fit</td><td>1.15</td><td>1.22</td><td>1.30</td><td>1.37</td></tr>
   *   <tr><td>this model, g = 0</td><td>1.15</td><td>0.90</td><td>1.09</td><td>1.25</td></tr>
   *   <tr><td>this model, g = 1</td><td>1.15</td><td>1.05</td><td>1.24</td><td>1.40</td></tr>
   *   <tr><td>this model, g = 2</td><td>1.15</td><td>1.20</td><td>1.39</td><td>1.55</td></tr>
   * </table>
   *
   * <p>In the quartic fit k is added, which is g = 1 all along. In the two-segment fit it is a
   * factor, and the losses grow as (k - 1) (1 - z): g from 1.5 at the onset to 2.45 at the exit.
   * With g = 1 the model meets the quartic at the onset, where that fit is at its best, and lies
   * between the two fits to shortly before the exit. Total inflow of the onset and of the exit and
   * g were chosen together: a calibration, and no check of anything.
   */
  public static final Parameter LOSSES =
      Parameter.of(
          "ring losses",
          Unit.ONE,
          0,
          2.5,
          1,
          "assumed: losses keep their size of the hover, as in the quartic fit, where k is added;"
              + " 1.5 to 2.45 by the two-segment fit");

  /** Every number in the model that may be set. */
  public static final List<Parameter> PARAMETERS =
      Stream.of(
              Stream.of(ONSET_AXIAL, ONSET_TOTAL, EXIT_AXIAL, EXIT_TOTAL, FADE_EDGEWISE, LOSSES),
              RingMemory.PARAMETERS.stream(),
              SmoothMomentum.PARAMETERS.stream())
          .flatMap(parameters -> parameters)
          .toList();

  /** Slope of the total inflow, downward, from which a ring feeds itself in full. */
  private static final double FULL_FEEDING = 0.1;

  /** Part of that slope at which it begins to: a table's slope is not exact. */
  private static final double FIRST_FEEDING = 0.1;

  /** The least depth of the fold, so that it has a middle and not only an edge. */
  private static final double MINIMUM_FOLD = 0.05;

  private final ParameterSet numbers;
  private final SmoothMomentum smooth;
  private final AxialCurve axialCurve;
  private final double onset;
  private final double exit;
  private final double join;
  private final double fade;
  private final double inverseOnset;
  private final double inverseFootWidth;
  private final double inverseFade;
  private final VortexRing ring;

  /**
   * Creates the model.
   *
   * @param parameters values for {@link #PARAMETERS}; others are ignored
   * @throws IncompatibleValuesException if the exit is not below the onset, or its total inflow not
   *     above that of the onset, each by 0.05 or more
   */
  public RingStateInflow(ParameterSet parameters) {
    super(parameters.only(PARAMETERS));
    numbers = parameters.only(PARAMETERS);
    smooth = new SmoothMomentum(parameters);
    onset = parameters.get(ONSET_AXIAL);
    exit = parameters.get(EXIT_AXIAL);
    join = parameters.get(SmoothMomentum.LOWER_JOIN);
    fade = parameters.get(FADE_EDGEWISE);
    inverseOnset = 1 / onset;
    inverseFootWidth = 1 / (exit - join);
    inverseFade = 1 / fade;
    double onsetTotal = parameters.get(ONSET_TOTAL);
    double exitTotal = parameters.get(EXIT_TOTAL);
    requireApart(ONSET_AXIAL, onset, EXIT_AXIAL, exit);
    requireApart(EXIT_TOTAL, exitTotal, ONSET_TOTAL, onsetTotal);
    axialCurve = new AxialCurve(onset, onsetTotal, exit, exitTotal, join);
    ring = new Ring(new RingMemory(parameters, onset), parameters.get(LOSSES));
  }

  /**
   * The model with its standard values.
   *
   * @return the model
   */
  public static RingStateInflow standard() {
    return new RingStateInflow(ParameterSet.standard(PARAMETERS));
  }

  private static void requireApart(Parameter upper, double high, Parameter lower, double low) {
    if (!(high - low >= MINIMUM_FOLD)) {
      throw new IncompatibleValuesException(
          "the "
              + upper.name()
              + " "
              + high
              + " must exceed the "
              + lower.name()
              + " "
              + low
              + " by at least "
              + MINIMUM_FOLD
              + " hover induced velocities");
    }
  }

  /**
   * The same model with one number changed.
   *
   * @param parameter one of {@link #PARAMETERS}
   * @param value its new value, in the parameter's unit
   * @return the changed model
   * @throws IllegalArgumentException if the value is outside the parameter's range or does not fit
   *     the others
   */
  public RingStateInflow with(Parameter parameter, double value) {
    return new RingStateInflow(numbers.with(parameter, value));
  }

  /**
   * The numbers of the model.
   *
   * @return a value for each of {@link #PARAMETERS}
   */
  @Override
  public ParameterSet numbers() {
    return numbers;
  }

  @Override
  public String name() {
    return "ring-state";
  }

  @Override
  public double induced(double edgewise, double axial) {
    HoverUnits.check(edgewise, axial);
    double v = smooth.inducedAt(edgewise, axial);
    return inRing(edgewise, axial)
        ? v + faded(edgewise) * (axialCurve.value(axial) - smooth.axialTotal(axial))
        : v;
  }

  @Override
  public double slope(double edgewise, double axial) {
    HoverUnits.check(edgewise, axial);
    double slope = smooth.slopeAt(edgewise, axial);
    return inRing(edgewise, axial)
        ? slope + faded(edgewise) * (axialCurve.slope(axial) - smooth.axialSlope(axial))
        : slope;
  }

  /**
   * {@inheritDoc} Zero in climb and hover, rising smoothly to one at the onset; one to the exit;
   * back to zero at the lower join; all of it faded with edgewise speed like the inflow itself. The
   * inflow of the ring state stands for measured inflow, which was deduced from thrust and power
   * and so contains the losses of a non-uniform flow. Its slope is continuous in both directions.
   */
  @Override
  public double lossShare(double edgewise, double axial) {
    HoverUnits.check(edgewise, axial);
    if (!inRing(edgewise, axial)) {
      return 0;
    }
    double share = 1;
    if (axial > onset) {
      share = smoothStep(axial * inverseOnset);
    } else if (axial < exit) {
      share = smoothStep((axial - join) * inverseFootWidth);
    }
    return faded(edgewise) * share;
  }

  @Override
  public VortexRing ring() {
    return ring;
  }

  private final class Ring implements VortexRing {

    private final RingMemory memory;
    private final double losses;

    Ring(RingMemory memory, double losses) {
      this.memory = memory;
      this.losses = losses;
    }

    @Override
    public RingMemory memory() {
      return memory;
    }

    @Override
    public double losses() {
      return losses;
    }

    @Override
    public double feeding(InflowModel inflow, double edgewise, double axial) {
      if (!(axial < onset && axial > exit && edgewise < fade)) {
        return 0;
      }
      double steepness = -inflow.slope(edgewise, axial) / FULL_FEEDING;
      double t = (steepness - FIRST_FEEDING) / (1 - FIRST_FEEDING);
      return t <= 0 ? 0 : t >= 1 ? 1 : smoothStep(t);
    }

    @Override
    public double own(double axial) {
      return axial < 0 && axial > join ? axialCurve.value(axial) - smooth.axialTotal(axial) : 0;
    }

    @Override
    public double left(double edgewise) {
      return edgewise < fade ? faded(edgewise) : 0;
    }
  }

  private boolean inRing(double x, double z) {
    return z < 0 && z > join && x < fade;
  }

  private double faded(double x) {
    double q = x * inverseFade;
    double qq = q * q;
    double rest = 1 - qq * qq;
    return rest * rest;
  }

  private static double smoothStep(double t) {
    return t * t * (3 - 2 * t);
  }
}
