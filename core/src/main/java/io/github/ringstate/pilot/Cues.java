package io.github.ringstate.pilot;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The cues that are built in, as values: equal if made alike. */
public final class Cues {

  /**
   * How much faster than intended the craft must sink before it is noticed. Default 300 ft/min,
   * range 50 to 2000 ft/min.
   */
  public static final Parameter SINK_MARGIN =
      Parameter.of(
          "sink margin",
          Unit.FOOT_PER_MINUTE,
          50,
          2000,
          300,
          "assumed: the rate of descent at which the handbooks place the hazard");

  /**
   * How much the thrust must fluctuate, over weight, before it is felt as vibration. Default 0.02,
   * range 0.001 to 0.5 (a pure number).
   */
  public static final Parameter FELT_FLUCTUATION =
      Parameter.of("felt fluctuation", Unit.ONE, 0.001, 0.5, 0.02, "assumed");

  /**
   * Airspeed below which the airspeed indicator is not to be relied on. Default 20 kt, range 0 to
   * 60 kt.
   */
  public static final Parameter UNRELIABLE_AIRSPEED =
      Parameter.of(
          "unreliable airspeed",
          Unit.KNOT,
          0,
          60,
          20,
          "common practice, no source: pitot pressure there is small beside the downwash");

  /** Airspeed shown below which it is noticed as low. Default 16 kt, range 1 to 60 kt. */
  public static final Parameter LOW_AIRSPEED =
      Parameter.of(
          "low airspeed",
          Unit.KNOT,
          1,
          60,
          16,
          "lower end of effective translational lift in the handbooks, 16 to 24 kt");

  /**
   * Departure from the intended speed over the ground that is noticed as drift. Default 5 kt, range
   * 1 to 40 kt.
   */
  public static final Parameter DRIFT = Parameter.of("drift", Unit.KNOT, 1, 40, 5, "assumed");

  /**
   * Collective above that of the hover that counts, for sink that does not answer, as much as 1 m/s
   * of sink. Default 0.01 rad, range 0.001 to 0.1 rad.
   */
  public static final Parameter NOTICED_COLLECTIVE =
      Parameter.of("noticed collective", Unit.RADIAN, 0.001, 0.1, 0.01, "assumed");

  /**
   * Upward acceleration that is felt as an answer to the collective. Default 0.3 m/s2, range 0.05
   * to 3 m/s2.
   */
  public static final Parameter NOTICED_ACCELERATION =
      Parameter.of("noticed acceleration", Unit.METRE_PER_SECOND_SQUARED, 0.05, 3, 0.3, "assumed");

  /** All parameters of cues. */
  public static final List<Parameter> PARAMETERS =
      List.of(
          SINK_MARGIN,
          FELT_FLUCTUATION,
          UNRELIABLE_AIRSPEED,
          LOW_AIRSPEED,
          DRIFT,
          NOTICED_COLLECTIVE,
          NOTICED_ACCELERATION);

  private Cues() {}

  /**
   * What a pilot without special equipment may notice: the first of too much sink shown, sink that
   * does not answer, and vibration. Vibration is felt only where the thrust is disturbed.
   *
   * <p>Low airspeed and drift are not among them: in an approach to a hover they are there long
   * before the ring state. Put {@link #together} with sink they are cues of their own.
   *
   * @param intended the intended rate of descent, m/s, 0 to 60
   * @param numbers a value for each of {@link #PARAMETERS}
   * @return the cue
   */
  public static Cue standard(double intended, ParameterSet numbers) {
    double margin = numbers.si(SINK_MARGIN);
    return first(
        sinkShown(intended, margin),
        sinkNotAnswering(intended + margin, numbers),
        vibration(numbers.si(FELT_FLUCTUATION)));
  }

  /**
   * The standard cue with the standard value of each parameter.
   *
   * @param intended the intended rate of descent, m/s, 0 to 60
   * @return the cue
   */
  public static Cue standard(double intended) {
    return standard(intended, ParameterSet.standard(PARAMETERS));
  }

  /**
   * The vertical speed indicator shows more sink than was intended, by a margin.
   *
   * @param intended the intended rate of descent, m/s, 0 to 60
   * @param margin what is shown beyond that before it is noticed, m/s, 0 to 60
   * @return the cue
   */
  public static Cue sinkShown(double intended, double margin) {
    return new BuiltInCues.SinkShown(intended, margin);
  }

  /**
   * The craft sinks although the collective is above that of the hover, and no upward acceleration
   * is felt. The entries of this library leave the collective low; the cue is for pilots who have
   * raised it, as in a wrong first instinct.
   *
   * @param sink the rate of descent from which it is noticed, m/s, 0 to 60
   * @param numbers values for at least {@link #NOTICED_COLLECTIVE} and {@link
   *     #NOTICED_ACCELERATION}
   * @return the cue
   */
  public static Cue sinkNotAnswering(double sink, ParameterSet numbers) {
    return new BuiltInCues.SinkNotAnswering(
        sink, numbers.si(NOTICED_COLLECTIVE), numbers.si(NOTICED_ACCELERATION));
  }

  /**
   * The same with the standard value of each parameter.
   *
   * @param sink the rate of descent from which it is noticed, m/s, 0 to 60
   * @return the cue
   */
  public static Cue sinkNotAnswering(double sink) {
    return sinkNotAnswering(sink, ParameterSet.standard(PARAMETERS));
  }

  /**
   * The body feels the thrust fluctuate.
   *
   * @param level the fluctuation, as a standard deviation over weight, from which it is noticed, 0
   *     to 1
   * @return the cue
   */
  public static Cue vibration(double level) {
    return new BuiltInCues.Vibration(level);
  }

  /**
   * The airspeed indicator shows little. Below the speed at which it can be relied on it shows, in
   * this model, too little: the airspeed squared over that speed (assumed).
   *
   * @param airspeed the airspeed shown from which it is noticed, m/s, 0 to 60
   * @param reliable the airspeed from which the indicator can be relied on, m/s, 0 to 60
   * @return the cue
   */
  public static Cue lowAirspeed(double airspeed, double reliable) {
    return new BuiltInCues.LowAirspeed(airspeed, reliable);
  }

  /**
   * The craft drifts over the ground: its speed there departs from the intended one.
   *
   * @param intended the intended speed over the ground along the nose, m/s, 0 to 60
   * @param margin the departure, in any level direction, from which it is noticed, m/s, 0 to 60
   * @return the cue
   */
  public static Cue drift(double intended, double margin) {
    return new BuiltInCues.OverGround(intended, margin);
  }

  /**
   * Several cues that count only when all of them are there.
   *
   * @param cues the cues; at least one
   * @return the cue that fires when the last of them does
   */
  public static Cue together(Cue... cues) {
    return new BuiltInCues.Together(List.of(cues));
  }

  /**
   * Several cues of which the first to fire counts.
   *
   * @param cues the cues; at least one
   * @return the cue that fires when the first of them does
   */
  public static Cue first(Cue... cues) {
    return new BuiltInCues.First(List.of(cues));
  }

  /**
   * Time has passed since the pilot recognised the ring state.
   *
   * @param seconds the time, s, 0 to 60
   * @return the cue
   */
  public static Cue sinceRecognition(double seconds) {
    return new BuiltInCues.SinceRecognition(seconds);
  }

  /**
   * A cue from its level. Such cues are equal only if the level is the same object; where
   * encounters are to be compared, write a record instead.
   *
   * @param name the cue's name
   * @param level how strong it is: negative below the threshold of notice, positive above
   * @return the cue
   */
  public static Cue of(String name, ToDoubleFunction<Cockpit> level) {
    return new BuiltInCues.Plain(name, level);
  }
}
