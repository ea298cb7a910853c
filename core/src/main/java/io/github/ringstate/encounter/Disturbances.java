package io.github.ringstate.encounter;

import io.github.ringstate.air.Gusts;
import io.github.ringstate.air.GustyWind;
import io.github.ringstate.air.LowAltitudeGusts;
import io.github.ringstate.air.PowerLawWind;
import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.flight.RingStateShaking;
import io.github.ringstate.flight.ThrustDisturbance;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.rotor.Rotor;
import java.util.List;

/**
 * What disturbs an encounter: thrust that fluctuates in the ring state, gusts, and wind that
 * changes with height. Each is off unless set.
 *
 * @param numbers a value for each of {@link #PARAMETERS}
 * @param seed the same seed gives the same gusts and the same shaking
 */
public record Disturbances(ParameterSet numbers, long seed) {

  /**
   * Standard deviation of the thrust where the ring state shakes it most; see the rotor's shaking.
   */
  public static final Parameter SHAKING =
      Parameter.of("shaking strength", Unit.PERCENT, 0, 30, 0, "off unless set");

  /** Mean wind at 20 ft that scales the gusts; the gusts are added to the wind of the entry. */
  public static final Parameter GUST_WIND =
      Parameter.of("gust wind", Unit.KNOT, 0, 60, 0, "off unless set; 15 kt is light turbulence");

  /** Exponent of the power law by which the wind of the entry changes with height. */
  public static final Parameter SHEAR =
      Parameter.of("shear exponent", Unit.ONE, 0, 0.6, 0, "off unless set; 1/7 over open land");

  /** All parameters. */
  public static final List<Parameter> PARAMETERS = List.of(SHAKING, GUST_WIND, SHEAR);

  /** Nothing disturbs. */
  public static final Disturbances NONE = new Disturbances(ParameterSet.standard(PARAMETERS), 0);

  /** Height for the scale of gusts where there is no ground, m (assumed). */
  private static final double HEIGHT_WITHOUT_GROUND = Unit.FOOT.toSi(300);

  /**
   * Least speed at which gusts pass the craft, m/s (assumed: it never quite stays in one place).
   */
  private static final double LEAST_CONVECTION = 5;

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
    return PARAMETERS.stream().anyMatch(parameter -> numbers.get(parameter) > 0);
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
   * The wind with shear and gusts.
   *
   * @param mean the wind of the entry, as it is at the height of onset
   * @param height the height above ground at onset, m; not positive if there is no ground, then
   *     there is no shear
   * @param rotor the rotor, which averages gusts smaller than itself
   * @return the disturbed wind
   */
  WindField wind(WindField mean, double height, Rotor rotor) {
    WindField field = mean;
    double exponent = numbers.si(SHEAR);
    if (exponent > 0 && height > 0) {
      PowerLawWind profile = PowerLawWind.of(new Wind(1, 0), exponent);
      double atOnset = profile.speedRatio(height);
      field =
          (time, north, east, up, result) -> {
            mean.velocity(time, north, east, up, result);
            double ratio = profile.speedRatio(Math.max(up, 0)) / atOnset;
            result[0] *= ratio;
            result[1] *= ratio;
          };
    }
    double gustWind = numbers.si(GUST_WIND);
    if (gustWind > 0) {
      double low = Unit.FOOT.toSi(10);
      double high = Unit.FOOT.toSi(1000);
      double gustHeight =
          Math.min(Math.max(height > 0 ? height : HEIGHT_WITHOUT_GROUND, low), high);
      Gusts gusts =
          Gusts.of(
                  LowAltitudeGusts.at(gustHeight, gustWind),
                  Math.max(gustWind, LEAST_CONVECTION),
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
}
