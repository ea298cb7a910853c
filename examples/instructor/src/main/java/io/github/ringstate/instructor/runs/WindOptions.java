package io.github.ringstate.instructor.runs;

import io.github.ringstate.air.PowerLawWind;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.instructor.option.NumberText;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.run.RunWind;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The wind of a run: there is no standard one, for what is planned with it is signed. */
final class WindOptions {

  private static final String FROM = "--wind-from-deg";
  private static final String MEAN = "--wind-kt";
  private static final String GUST = "--gust-kt";
  private static final String EXPONENT = "--wind-exponent";
  private static final String CALM = "--calm";

  private static final Quantity WIND = new Quantity("wind", Unit.KNOT, 0, 60);
  private static final double MOST_GUST_KT = 90;

  /** Gusts over the mean wind where none are reported (assumed). */
  private static final double GUST_FACTOR = 1.5;

  @Option(
      names = CALM,
      description = "There is no wind. Either this or " + FROM + " and " + MEAN + " must be given.")
  private boolean calm;

  @Option(
      names = FROM,
      paramLabel = "DEG",
      description = "Where the wind comes from, clockwise from north.")
  private @Nullable String from;

  @Option(names = MEAN, paramLabel = "KT", description = "Mean wind 33 ft (10 m) above ground.")
  private @Nullable String wind;

  @Option(
      names = GUST,
      paramLabel = "KT",
      description =
          "Greatest wind in gusts there, not below the mean. Unless given: one and a half times the"
              + " mean (assumed).")
  private @Nullable String gust;

  @Option(
      names = EXPONENT,
      paramLabel = "P",
      description =
          "Power of height with which the wind grows: 0.143 open land, 0.11 water, 0.28 wood or"
              + " suburb. Unless given: one seventh.")
  private @Nullable String exponent;

  @Option(
      names = WindAloft.OPTION,
      paramLabel = "FT:DEG/KT",
      description =
          "Forecast mean winds above that: height above ground, where from, speed; several with"
              + " commas between, the lowest first, as in 500:240/18,1000:250/25. Straight lines"
              + " between their vectors, from the wind 33 ft above ground upwards; how far gusts and"
              + " lulls are from the mean grows by the power law. Unless given: the power law alone.")
  private @Nullable String aloft;

  @Option(
      names = "--allowance-kt",
      paramLabel = "KT",
      description =
          "Air that moves from any direction beside that wind, and drift over the ground: taken off"
              + " the least airspeed, in calm air too. Unless given: 3, below which a wind is called"
              + " calm (FAA Order JO 7110.65, 2-6-3, quoted).")
  private @Nullable String allowance;

  /**
   * The wind as reported.
   *
   * @return the wind
   * @throws UserError if there is none, or it is contradictory or wrong
   */
  ReportedWind reported() {
    if (calm) {
      refuseBeside(FROM, from);
      refuseBeside(MEAN, wind);
      refuseBeside(GUST, gust);
      refuseBeside(EXPONENT, exponent);
      refuseBeside(WindAloft.OPTION, aloft);
      return ReportedWind.CALM;
    }
    if (wind == null || from == null) {
      throw UserError.usage(
          (wind == null ? MEAN : FROM)
              + " is not given; "
              + UserError.ALLOWED.substring(2)
              + FROM
              + " with "
              + MEAN
              + ", or "
              + CALM);
    }
    // as typed, so that a gust of the same number is not below it
    double typed = NumberText.one(MEAN, wind, WIND);
    Quantity gusts = new Quantity("gust", WIND.unit(), typed, MOST_GUST_KT);
    double mean = WIND.unit().toSi(typed);
    return new ReportedWind(
        NumberText.si(FROM, from, RunWind.FROM),
        mean,
        gust == null ? GUST_FACTOR * mean : NumberText.si(GUST, gust, gusts),
        gust == null,
        exponent == null
            ? PowerLawWind.EXPONENT_OPEN_LAND
            : NumberText.si(EXPONENT, exponent, PowerLawWind.EXPONENT.quantity()),
        aloft == null ? WindAloft.NONE : WindAloft.read(aloft));
  }

  /**
   * The wind at the height flown.
   *
   * @param height height above ground, m
   * @return the wind
   * @throws UserError if it is none, or becomes too strong
   */
  RunWind at(double height) {
    double beside =
        allowance == null
            ? RunWind.ALLOWANCE
            : NumberText.si("--allowance-kt", allowance, RunWind.ALLOWANCES);
    return reported().at(height, beside);
  }

  private static void refuseBeside(String option, @Nullable String given) {
    if (given != null) {
      throw UserError.usage(CALM + " and " + option + " exclude each other");
    }
  }
}
