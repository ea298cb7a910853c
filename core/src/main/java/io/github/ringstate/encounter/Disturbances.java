package io.github.ringstate.encounter;

import io.github.ringstate.air.Gusts;
import io.github.ringstate.air.GustyWind;
import io.github.ringstate.air.LowAltitudeGusts;
import io.github.ringstate.air.PowerLawWind;
import io.github.ringstate.air.TurningWind;
import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.dynamics.RingStateShaking;
import io.github.ringstate.dynamics.ThrustDisturbance;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.rotor.Rotor;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What disturbs an encounter: thrust that fluctuates in the ring state, gusts, wind that changes
 * with height, and wind that comes round. Each is off unless set.
 *
 * <p>Where an encounter has no ground, onset counts as at 300 ft (assumed) for gusts and winds.
 *
 * <p>Gusts are those of a wind that the entry need not have: a hover in calm air with gusts of 25
 * kt meets horizontal gusts of some knots, which carry the disc sideways out of its own wake. The
 * ring is weaker by then, and late recoveries lose less: lateral after 4 s a median of 140 ft in
 * place of 167 for a light craft, and power alone arrests more often. A disc that happens to stay
 * in its wake loses as in calm air; vertical gusts alone scatter the losses about those of calm
 * air. Gusts of several hundred feet move the whole disc, so this is no artefact of one gust for
 * all of it; it is one of the mean wind that is left out. In a wind as strong as its gusts a craft
 * that hovers into it does not meet the ring state.
 *
 * @param numbers a value for each of {@link #PARAMETERS}
 * @param seed the same seed gives the same gusts and the same shaking
 */
public record Disturbances(ParameterSet numbers, long seed) {

  /**
   * Standard deviation of the thrust where the ring state shakes it most; see the rotor's shaking.
   * Default 0 %, range 0 to 30 %.
   */
  public static final Parameter SHAKING =
      Parameter.of("shaking strength", Unit.PERCENT, 0, 30, 0, "off unless set");

  /**
   * Mean wind at 20 ft that scales the gusts; the gusts are added to the wind of the entry. Default
   * 0 kt, range 0 to 60 kt.
   */
  public static final Parameter GUST_WIND =
      Parameter.of("gust wind", Unit.KNOT, 0, 60, 0, "off unless set; 15 kt is light turbulence");

  /**
   * Exponent of the power law by which the wind of the entry changes with height. Default 0, range
   * 0 to 0.6 (a pure number).
   */
  public static final Parameter SHEAR =
      Parameter.of("shear exponent", Unit.ONE, 0, 0.6, 0, "off unless set; 1/7 over open land");

  /**
   * How far the wind of the entry comes round from the start of the flight on. Default 0 deg, range
   * -360 to 360 deg.
   */
  public static final Parameter WIND_TURN =
      Parameter.of(
          "wind turn", Unit.DEGREE, -360, 360, 0, "off unless set; positive clockwise from above");

  /** Time in which the wind comes round. Default 10 s, range 2 to 60 s. */
  public static final Parameter TURN_TIME =
      Parameter.of("wind turn time", Unit.SECOND, 2, 60, 10, "assumed");

  /** All parameters. */
  public static final List<Parameter> PARAMETERS =
      List.of(SHAKING, GUST_WIND, SHEAR, WIND_TURN, TURN_TIME);

  /** Nothing disturbs. */
  public static final Disturbances NONE = new Disturbances(ParameterSet.standard(PARAMETERS), 0);

  /** Height of onset above the ground where an encounter has none, m (assumed). */
  static final double HEIGHT_WITHOUT_GROUND = Unit.FOOT.toSi(300);

  /**
   * Least speed at which gusts pass the craft, m/s (assumed: it never quite stays in one place).
   */
  private static final double MINIMUM_CONVECTION = 5;

  /**
   * The same disturbances with one number changed.
   *
   * @param parameter one of {@link #PARAMETERS}
   * @param value its new value, in the parameter's unit
   * @return the changed disturbances
   * @throws IllegalArgumentException if the value is outside the parameter's range
   */
  public Disturbances with(Parameter parameter, double value) {
    return new Disturbances(numbers.with(parameter, value), seed);
  }

  /**
   * The same disturbances with another seed.
   *
   * @param other the seed
   * @return the changed disturbances
   */
  public Disturbances withSeed(long other) {
    return new Disturbances(numbers, other);
  }

  /**
   * Whether anything disturbs.
   *
   * @return true if so
   */
  public boolean any() {
    return random() || sheared() || numbers.get(WIND_TURN) != 0;
  }

  /**
   * Whether the seed matters: whether there is chance in what disturbs.
   *
   * @return true if so
   */
  public boolean random() {
    return numbers.get(SHAKING) > 0 || numbers.get(GUST_WIND) > 0;
  }

  /**
   * Whether the wind changes with height.
   *
   * @return true if so
   */
  boolean sheared() {
    return numbers.si(SHEAR) > 0;
  }

  /**
   * The wind with shear, in which flights are trimmed.
   *
   * @param mean the mean wind, as it is at the height of onset
   * @param height the height above ground at onset, m; empty if there is no ground
   * @return the wind; heights count from the ground
   */
  WindField sheared(WindField mean, OptionalDouble height) {
    double exponent = numbers.si(SHEAR);
    if (!(exponent > 0)) {
      return mean;
    }
    PowerLawWind profile = PowerLawWind.of(new Wind(1, 0), exponent);
    double ratioAtOnset = profile.speedRatio(height.orElse(HEIGHT_WITHOUT_GROUND));
    return (time, north, east, up, result) -> {
      mean.velocity(time, north, east, up, result);
      double ratio = profile.speedRatio(Math.max(up, 0)) / ratioAtOnset;
      result[0] *= ratio;
      result[1] *= ratio;
    };
  }

  /**
   * The wind with shear, turn and gusts.
   *
   * @param mean the mean wind, as it is at the height of onset
   * @param height the height above ground at onset, m; empty if there is no ground
   * @param rotor the rotor, which averages gusts smaller than itself
   * @return the disturbed wind; heights count from the ground
   */
  WindField wind(WindField mean, OptionalDouble height, Rotor rotor) {
    WindField field = sheared(mean, height);
    double atOnset = height.orElse(HEIGHT_WITHOUT_GROUND);
    double turn = numbers.si(WIND_TURN);
    if (turn != 0) {
      field = TurningWind.of(field, turn, 0, numbers.si(TURN_TIME));
    }
    double gustWind = numbers.si(GUST_WIND);
    if (gustWind > 0) {
      double low = Unit.FOOT.toSi(10);
      double high = Unit.FOOT.toSi(1000);
      double gustHeight = Math.min(Math.max(atOnset, low), high);
      Gusts gusts =
          Gusts.of(
                  LowAltitudeGusts.at(gustHeight, gustWind),
                  Math.max(gustWind, MINIMUM_CONVECTION),
                  seed)
              .withoutWavesShorterThan(2 * rotor.radius());
      field = GustyWind.of(field, gusts, 0);
    }
    return field;
  }

  /**
   * The shaking of the thrust.
   *
   * @param rotor the rotor
   * @return the disturbance
   */
  ThrustDisturbance shaking(Rotor rotor) {
    double strength = numbers.get(SHAKING);
    if (!(strength > 0)) {
      return ThrustDisturbance.NONE;
    }
    return new RingStateShaking(
        ParameterSet.standard(RingStateShaking.PARAMETERS)
            .with(RingStateShaking.STRENGTH, strength),
        rotor.nominalSpeed(),
        ~seed);
  }

  /** Every number with its unit, and the seed. */
  @Override
  public String toString() {
    return numbers + ", seed " + seed;
  }
}
