package io.github.ringstate.pilot;

import io.github.ringstate.flight.Cockpit;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.function.ToDoubleFunction;

/**
 * Something by which a pilot may notice the ring state. A cue fires when its level rises through
 * zero.
 *
 * <p>The level comes from what the cockpit shows or the body feels, not from the state of the craft
 * as it is.
 */
public interface Cue {

  /**
   * The cue's name.
   *
   * @return a few lower-case words
   */
  String name();

  /**
   * How strong the cue is.
   *
   * @param seen what can be known at this instant; not to be kept
   * @return negative below the threshold of notice, positive above; continuous along the flight
   */
  double level(Cockpit seen);

  /** How much faster than intended the craft must sink before it is noticed. */
  Parameter SINK_MARGIN =
      Parameter.of(
          "sink margin",
          Unit.FOOT_PER_MINUTE,
          50,
          2000,
          300,
          "assumed: the rate of descent at which the handbooks place the hazard");

  /** How much the thrust must fluctuate, over weight, before it is felt as vibration. */
  Parameter FELT_FLUCTUATION =
      Parameter.of("felt fluctuation", Unit.ONE, 0.001, 0.5, 0.02, "assumed");

  /** Airspeed below which the airspeed indicator is not to be relied on. */
  Parameter UNRELIABLE_AIRSPEED =
      Parameter.of(
          "unreliable airspeed",
          Unit.KNOT,
          0,
          60,
          20,
          "common practice, no source: pitot pressure there is small beside the downwash");

  /** Ground speed that is noticed as drift. */
  Parameter DRIFT = Parameter.of("drift", Unit.KNOT, 1, 40, 5, "assumed");

  /** Airspeeds that a cue accepts. */
  Quantity AIRSPEED = new Quantity("noticed airspeed", Unit.METRE_PER_SECOND, 0, 60);

  /**
   * The vertical speed indicator shows more sink than was intended, by a margin.
   *
   * @param intended the intended rate of descent, m/s, positive
   * @param margin what is shown beyond that before it is noticed, m/s, positive
   * @return the cue
   */
  static Cue sinkShown(double intended, double margin) {
    return of("sink shown", seen -> -seen.shownVerticalSpeed() - intended - margin);
  }

  /**
   * The craft goes on sinking faster although the collective is above that of the hover.
   *
   * @param sink the rate of descent from which it is noticed, m/s, positive
   * @return the cue
   */
  static Cue sinkNotAnswering(double sink) {
    return of(
        "sink not answering collective",
        seen ->
            Math.min(
                -seen.verticalSpeed() - sink,
                // a hundredth of a radian of collective counts as much as 1 m/s of sink
                100 * (seen.collective() - seen.hoverCollective())));
  }

  /**
   * The body feels the thrust fluctuate.
   *
   * @param level the fluctuation, as a standard deviation over weight, from which it is noticed
   * @return the cue
   */
  static Cue vibration(double level) {
    return of("vibration", seen -> seen.roughness() - level);
  }

  /**
   * The airspeed indicator shows little. Below the speed at which it can be relied on it shows, in
   * this model, too little: the airspeed squared over that speed (assumed).
   *
   * @param airspeed the airspeed shown from which it is noticed, m/s, positive
   * @return the cue
   */
  static Cue lowAirspeed(double airspeed) {
    AIRSPEED.check(airspeed);
    return of("low airspeed", seen -> airspeed - shownAirspeed(seen));
  }

  /**
   * The craft drifts over the ground, faster than intended.
   *
   * @param speed the speed over the ground from which it is noticed, m/s, positive
   * @return the cue
   */
  static Cue drift(double speed) {
    return of("drift", seen -> Math.abs(seen.groundSpeed()) - speed);
  }

  /**
   * Several cues of which the strongest is noticed.
   *
   * @param cues the cues; at least one
   * @return the cue that fires when the first of them does
   */
  static Cue first(Cue... cues) {
    Cue[] copy = cues.clone();
    if (copy.length == 0) {
      throw new IllegalArgumentException("a pilot needs at least one cue");
    }
    return of(
        "first of several",
        seen -> {
          double strongest = Double.NEGATIVE_INFINITY;
          for (Cue cue : copy) {
            strongest = Math.max(strongest, cue.level(seen));
          }
          return strongest;
        });
  }

  private static double shownAirspeed(Cockpit seen) {
    double forward = Math.max(0, seen.forwardAirspeed());
    double reliable = Unit.KNOT.toSi(UNRELIABLE_AIRSPEED.standard());
    return forward >= reliable ? forward : forward * forward / reliable;
  }

  /**
   * A cue from its level.
   *
   * @param name the cue's name
   * @param level how strong it is: negative below the threshold of notice, positive above
   * @return the cue
   */
  static Cue of(String name, ToDoubleFunction<Cockpit> level) {
    return new Cue() {
      @Override
      public String name() {
        return name;
      }

      @Override
      public double level(Cockpit seen) {
        return level.applyAsDouble(seen);
      }
    };
  }
}
