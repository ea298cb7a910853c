package io.github.ringstate.instructor.option;

import io.github.ringstate.encounter.Downwind;
import io.github.ringstate.encounter.Entry;
import io.github.ringstate.encounter.Settling;
import io.github.ringstate.encounter.Steep;
import io.github.ringstate.instructor.report.Decimals;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import java.util.List;

/** The entries that the tool offers, in the words of its users. */
public enum EntryKind {
  /** From a hover. */
  SETTLING(
      "settling",
      "from a hover over one point out of ground effect: the collective is lowered a little and left"
          + " there",
      "from ahead"),
  /** From a steep approach. */
  STEEP(
      "steep",
      "a steep approach at "
          + standard(Steep.APPROACH_AIRSPEED)
          + " airspeed and "
          + standard(Steep.DESCENT)
          + ", slowed towards "
          + standard(Steep.FINAL_AIRSPEED)
          + " with the collective left alone",
      "from ahead"),
  /** From a run with the wind behind. */
  DOWNWIND(
      "downwind",
      "a run at "
          + standard(Downwind.GROUND_SPEED)
          + " over the ground, held with the nose while the wind, abeam at first, comes round behind"
          + " in "
          + standard(Downwind.TURN_TIME)
          + " with the collective left alone",
      "from behind");

  private final String label;
  private final String description;
  private final String windFrom;

  EntryKind(String label, String description, String windFrom) {
    this.label = label;
    this.description = description;
    this.windFrom = windFrom;
  }

  /**
   * The entry's name.
   *
   * @return one lower-case word
   */
  public String label() {
    return label;
  }

  /**
   * What happens in the entry.
   *
   * @return a part of a sentence
   */
  public String description() {
    return description;
  }

  /**
   * Where the wind of this entry comes from.
   *
   * @return {@code from ahead} or {@code from behind}
   */
  public String windFrom() {
    return windFrom;
  }

  /**
   * The wind that the entry takes.
   *
   * @return the parameter, in knots
   */
  Parameter wind() {
    return switch (this) {
      case SETTLING -> Settling.WIND;
      case STEEP -> Steep.WIND;
      case DOWNWIND -> Downwind.WIND;
    };
  }

  /**
   * Makes the entry.
   *
   * @param windKt the wind, kt, within the range of {@link #wind}
   * @return the entry, its other numbers standard
   */
  public Entry entry(double windKt) {
    return switch (this) {
      case SETTLING -> new Settling(standardBut(Settling.PARAMETERS, windKt));
      case STEEP -> new Steep(standardBut(Steep.PARAMETERS, windKt));
      case DOWNWIND -> new Downwind(standardBut(Downwind.PARAMETERS, windKt));
    };
  }

  private ParameterSet standardBut(List<Parameter> parameters, double windKt) {
    return ParameterSet.standard(parameters).with(wind(), windKt);
  }

  private static String standard(Parameter parameter) {
    return Decimals.brief(parameter.standard()) + " " + parameter.unit().symbol();
  }
}
