package io.github.ringstate.instructor.option;

import io.github.ringstate.inflow.DescentLimits;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Limits of sink and airspeed that pilots are taught, or an operator's own. */
public final class LimitOptions {

  private static final String SINK = "--limit-fpm";
  private static final String AIRSPEED = "--limit-kt";

  @Option(
      names = SINK,
      paramLabel = "FPM",
      description =
          "Rate of descent that pilots are taught not to exceed below the airspeed of --limit-kt."
              + " Unless given: 300 (FAA-H-8083-21B, Helicopter Flying Handbook, chapter 11, as"
              + " quoted).")
  private @Nullable String sink;

  @Option(
      names = AIRSPEED,
      paramLabel = "KT",
      description =
          "Airspeed below which that rate of descent is not to be exceeded. Unless given: 16, the"
              + " lower end of effective translational lift.")
  private @Nullable String airspeed;

  /** Made by picocli. */
  public LimitOptions() {}

  /**
   * Whether one was given.
   *
   * @return false for the handbook's
   */
  boolean given() {
    return sink != null || airspeed != null;
  }

  /**
   * The limits.
   *
   * @return a value for each parameter of {@link DescentLimits}
   * @throws io.github.ringstate.files.error.UserError if a number is wrong
   */
  public ParameterSet limits() {
    ParameterSet limits = ParameterSet.standard(DescentLimits.PARAMETERS);
    limits = with(limits, SINK, sink, DescentLimits.SINK);
    return with(limits, AIRSPEED, airspeed, DescentLimits.AIRSPEED);
  }

  private static ParameterSet with(
      ParameterSet limits, String option, @Nullable String text, Parameter parameter) {
    return text == null
        ? limits
        : limits.with(parameter, NumberText.one(option, text, parameter.quantity()));
  }
}
