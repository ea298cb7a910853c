package io.github.ringstate.study.sweep;

import io.github.ringstate.quantity.Unit;
import java.io.Serializable;

/**
 * What the rows of a sweep hold beside the standard columns, and in which units.
 *
 * @param units the units of the results; what is set keeps the unit of its setting
 * @param drawnNumbers whether the numbers of each drawn pilot's technique are columns
 * @param sensitive whether a column says if the outcome is sensitive, for which each point is flown
 *     twice more; see {@link io.github.ringstate.encounter.EdgeCheck}
 */
public record Output(Units units, boolean drawnNumbers, boolean sensitive) implements Serializable {

  /** Aviation units, and neither drawn numbers nor what is sensitive. */
  public static final Output STANDARD = new Output(Units.AVIATION, false, false);

  /** Units of results. */
  public enum Units {
    /** Feet and feet per minute. */
    AVIATION("aviation", Unit.FOOT, Unit.FOOT_PER_MINUTE),
    /** Metres and metres per second. */
    SI("si", Unit.METRE, Unit.METRE_PER_SECOND);

    private final String label;
    private final Unit length;
    private final Unit rate;

    Units(String label, Unit length, Unit rate) {
      this.label = label;
      this.length = length;
      this.rate = rate;
    }

    /**
     * The units in a word.
     *
     * @return lower case
     */
    public String label() {
      return label;
    }

    /**
     * The unit of heights.
     *
     * @return foot or metre
     */
    public Unit length() {
      return length;
    }

    /**
     * The unit of vertical speeds.
     *
     * @return foot per minute or metre per second
     */
    public Unit rate() {
      return rate;
    }
  }
}
