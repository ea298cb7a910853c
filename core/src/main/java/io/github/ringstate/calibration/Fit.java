package io.github.ringstate.calibration;

import io.github.ringstate.craft.FittedModel;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.quantity.UncertainNumbers;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Numbers of a model fitted to recorded encounters.
 *
 * @param prior what was known of the numbers before
 * @param posterior what is known of them after
 * @param chiSquare chi-square of heights and vertical speeds per degree of freedom, over all
 *     encounters
 * @param encounters how the fitted model follows each
 * @param leftOut each encounter predicted from the others; empty if that was not asked for
 */
public record Fit(
    UncertainNumbers prior,
    UncertainNumbers posterior,
    double chiSquare,
    List<FittedEncounter> encounters,
    List<LeftOut> leftOut) {

  /** Copies the lists. */
  public Fit {
    encounters = List.copyOf(encounters);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * The deviation of a number after the fit over that before.
   *
   * @param index the index of its parameter
   * @return the ratio, about 0 to 1
   */
  public double ratio(int index) {
    return posterior.deviation(index) / prior.deviation(index);
  }

  /**
   * What the recordings tell of a number.
   *
   * @param index the index of its parameter
   * @return the word for it
   */
  public Told told(int index) {
    return Told.by(ratio(index));
  }

  /**
   * The craft with the fitted numbers and with what is left open of them.
   *
   * @param craft the craft whose numbers were fitted
   * @param recordings the recordings, by name
   * @param date the day of the fit, year-month-day, or a word that it is not known
   * @param revision the revision of the model
   * @return the craft
   */
  public Helicopter craft(Helicopter craft, List<String> recordings, String date, String revision) {
    FittedModel model =
        new FittedModel(
            craft.inflow().numbers(), posterior, encounters.size(), recordings, date, revision);
    return model.with(
        craft,
        IntStream.range(0, posterior.mean().length).mapToDouble(posterior::median).toArray());
  }
}
