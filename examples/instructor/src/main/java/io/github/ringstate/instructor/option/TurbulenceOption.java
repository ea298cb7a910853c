package io.github.ringstate.instructor.option;

import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.files.text.RangeText;
import io.github.ringstate.quantity.Quantity;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How rough the air is. */
public final class TurbulenceOption {

  @Option(
      names = Turbulence.OPTION,
      paramLabel = "WORD|KT",
      description =
          "Turbulence on top of the wind: light, moderate or severe, or the mean wind at 20 ft that"
              + " it goes with, which is 15, 30 and 45 kt for these (MIL-F-8785C, from memory). Unless"
              + " given: off.")
  private @Nullable String turbulence;

  /** Made by picocli. */
  public TurbulenceOption() {}

  /**
   * Whether any is asked for.
   *
   * @return true if so
   */
  public boolean isGiven() {
    return turbulence != null;
  }

  /**
   * The mean wind at 20 ft that the turbulence goes with.
   *
   * @return the wind, kt; 0 for no turbulence
   * @throws io.github.ringstate.files.error.UserError if it is no such word, and no number or out
   *     of range
   */
  public double knots() {
    if (turbulence == null) {
      return 0;
    }
    String given = turbulence;
    return Turbulence.ALL.stream()
        .filter(category -> category.label().equals(given.strip()))
        .findFirst()
        .map(Turbulence::knots)
        .orElseGet(() -> mean(given));
  }

  private static double mean(String given) {
    Quantity allowed = Disturbances.GUST_WIND.quantity();
    String words = String.join(", ", Turbulence.ALL.stream().map(Turbulence::label).toList());
    // what is no number may have been meant as a word
    NumberText.any(Turbulence.OPTION, given, words + " or a number, " + RangeText.of(allowed));
    return NumberText.one(Turbulence.OPTION, given, allowed);
  }
}
