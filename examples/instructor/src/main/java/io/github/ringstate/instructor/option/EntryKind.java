package io.github.ringstate.instructor.option;

import io.github.ringstate.encounter.Downwind;
import io.github.ringstate.encounter.Entry;
import io.github.ringstate.encounter.Settling;
import io.github.ringstate.encounter.Steep;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import java.util.List;

/** The entries that the tool offers, in the words of its users. */
public enum EntryKind {
  /** From a hover. */
  SETTLING("settling", "from ahead"),
  /** From a steep approach. */
  STEEP("steep", "from ahead"),
  /** From a run with the wind behind. */
  DOWNWIND("downwind", "from behind");

  private final String label;
  private final String windFrom;

  EntryKind(String label, String windFrom) {
    this.label = label;
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
   * @param units the units to speak in
   * @return a part of a sentence
   */
  public String description(UnitSystem units) {
    return switch (this) {
      case SETTLING ->
          "from a hover over one point out of ground effect: the collective is lowered a little and"
              + " left there";
      case STEEP ->
          "a steep approach at "
              + standard(Steep.APPROACH_AIRSPEED, units)
              + " airspeed and "
              + standard(Steep.DESCENT, units)
              + ", slowed towards "
              + standard(Steep.FINAL_AIRSPEED, units)
              + " with the collective left alone";
      case DOWNWIND ->
          "a run at "
              + standard(Downwind.GROUND_SPEED, units)
              + " over the ground, held with the nose while the wind, abeam at first, comes round"
              + " behind in "
              + standard(Downwind.TURN_TIME, units)
              + " with the collective left alone";
    };
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

  private static String standard(Parameter parameter, UnitSystem units) {
    return units.given(parameter.unit(), parameter.standard());
  }
}
