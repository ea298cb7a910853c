package io.github.ringstate.encounter;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A built-in entry: what it is called, what happens in it, its numbers, and how it is made of them.
 * A new entry is one constant more, and one more in {@link #ALL}.
 *
 * @param name the entry's name in files and options: one lower-case word, or several with hyphens
 * @param label the entry's name for people
 * @param text what happens, as a part of a sentence; the name of a parameter in braces stands for
 *     its value
 * @param remark what the entry shows, and what it hides: whole sentences
 * @param wind the parameter that is the wind
 * @param windFrom where a positive wind comes from: {@code from ahead} or {@code from behind}
 * @param parameters its numbers
 * @param maker makes the entry
 */
public record EntryKind(
    String name,
    String label,
    String text,
    String remark,
    Parameter wind,
    String windFrom,
    List<Parameter> parameters,
    Function<ParameterSet, Entry> maker) {

  private static final String FROM_AHEAD = "from ahead";
  private static final String FROM_BEHIND = "from behind";

  /** From a steep approach with the wind behind. */
  public static final EntryKind TAILWIND_APPROACH =
      new EntryKind(
          "tailwind-approach",
          "tailwind approach",
          "a steep approach at {approach ground speed} over the ground and {approach angle}, slowed"
              + " towards {arrival ground speed}, the collective left alone or raised to"
              + " {arrival power} of hover power",
          "People arrive like this, with little power. Settling from a hover flatters power: the craft"
              + " holds nearly hover power and has only begun to sink. With more wind behind, onset comes"
              + " before the sink has built up, so the loss counted from it is less; the ring state is"
              + " just as severe.",
          TailwindApproach.WIND,
          FROM_BEHIND,
          TailwindApproach.PARAMETERS,
          TailwindApproach::new);

  /** From a hover. */
  public static final EntryKind SETTLING =
      new EntryKind(
          "settling",
          "settling",
          "from a hover over one point out of ground effect: the collective is lowered a little and"
              + " left there",
          "It flatters power: the craft holds nearly the power of the hover and has only begun to sink.",
          Settling.WIND,
          FROM_AHEAD,
          Settling.PARAMETERS,
          Settling::new);

  /** From a steep approach. */
  public static final EntryKind STEEP =
      new EntryKind(
          "steep",
          "steep",
          "a steep approach at {approach airspeed} airspeed and {approach descent}, slowed towards"
              + " {final airspeed} with the collective left alone",
          "The craft sinks in its approach before it meets the ring state, and holds little power.",
          Steep.WIND,
          FROM_AHEAD,
          Steep.PARAMETERS,
          Steep::new);

  /** From a run with the wind behind. */
  public static final EntryKind DOWNWIND =
      new EntryKind(
          "downwind",
          "downwind",
          "a run at {ground speed} over the ground, held with the nose while the wind, abeam at"
              + " first, comes round behind in {turn time} with the collective left alone",
          "The airspeed goes while the ground speed stays: nothing in the view tells of it.",
          Downwind.WIND,
          FROM_BEHIND,
          Downwind.PARAMETERS,
          Downwind::new);

  /** From a quick stop with the wind behind. */
  public static final EntryKind QUICK_STOP =
      new EntryKind(
          "quick-stop",
          "quick stop",
          "a quick stop from {stop ground speed} over the ground in level flight, the nose up to"
              + " {nose up}, the collective left alone or raised to {stop power} of hover power",
          "The flare carries the craft until the speed is gone; then it holds little power, tail low"
              + " and with the wind behind. More wind behind loses less from onset or misses the ring"
              + " state, for the craft then flies backwards through the air: it is no milder for that,"
              + " and what the tail does there is not modelled.",
          QuickStop.WIND,
          FROM_BEHIND,
          QuickStop.PARAMETERS,
          QuickStop::new);

  /** From a hover out of ground effect with too little power. */
  public static final EntryKind SHORT_HOVER =
      new EntryKind(
          "short-hover",
          "hover short of power",
          "level flight at {arriving ground speed} over the ground, slowed to a hover out of ground"
              + " effect with the collective raised to {power in the hover} of hover power",
          "The craft holds nearly hover power and has only begun to sink, which flatters power: set the"
              + " mass and air in which there is no more of it.",
          ShortHover.WIND,
          FROM_AHEAD,
          ShortHover.PARAMETERS,
          ShortHover::new);

  /** From a hover for a photograph that drifts with the wind. */
  public static final EntryKind PHOTO_DRIFT =
      new EntryKind(
          "photo-drift",
          "photo drift",
          "a hover over one point into the wind, let drift with it to {drift airspeed} airspeed with"
              + " the collective left alone",
          "The wind carried part of the weight and the drift takes that away; more wind means less"
              + " power held at the start.",
          PhotoDrift.WIND,
          FROM_AHEAD,
          PhotoDrift.PARAMETERS,
          PhotoDrift::new);

  /** All of them. */
  public static final List<EntryKind> ALL =
      List.of(TAILWIND_APPROACH, SETTLING, STEEP, DOWNWIND, QUICK_STOP, SHORT_HOVER, PHOTO_DRIFT);

  /** The entry of an encounter, a table or a sweep unless another is asked for. */
  public static final EntryKind STANDARD = TAILWIND_APPROACH;

  /** Copies the list. */
  public EntryKind {
    parameters = List.copyOf(parameters);
  }

  /**
   * Finds an entry.
   *
   * @param name its name
   * @return the entry, or empty if none has that name
   */
  public static Optional<EntryKind> named(String name) {
    return ALL.stream().filter(kind -> kind.name().equals(name)).findFirst();
  }

  /**
   * The standard numbers.
   *
   * @return a value for each of {@link #parameters}
   */
  public ParameterSet numbers() {
    return ParameterSet.standard(parameters);
  }

  /**
   * The entry with the standard value of every number.
   *
   * @return the entry
   */
  public Entry standard() {
    return maker.apply(numbers());
  }

  /**
   * The entry with standard numbers but for one.
   *
   * @param parameter one of the parameters of the kind
   * @param value its value, in the parameter's unit
   * @return the entry
   * @throws IllegalArgumentException if the value is outside the parameter's range
   */
  public Entry with(Parameter parameter, double value) {
    return maker.apply(numbers().with(parameter, value));
  }

  /**
   * Where a wind comes from.
   *
   * @param value the value of {@link #wind}, in any unit
   * @return {@code from ahead} or {@code from behind}
   */
  public String windFrom(double value) {
    boolean behind = windFrom.equals(FROM_BEHIND) == value >= 0;
    return behind ? FROM_BEHIND : FROM_AHEAD;
  }

  /**
   * The value of {@link #wind} for a wind that blows along the flight.
   *
   * @param fromBehind its speed, from behind positive, in any unit
   * @return the value in that unit; it may be outside the range of the parameter
   */
  public double windAlong(double fromBehind) {
    return windFrom.equals(FROM_BEHIND) ? fromBehind : -fromBehind;
  }

  /** The name and the standard numbers. */
  @Override
  public String toString() {
    return name + " (" + numbers() + ")";
  }

  /**
   * What happens in the entry.
   *
   * @param words puts the value of a number in words, in the units of whoever reads them
   * @return a part of a sentence
   */
  public String description(Function<Parameter, String> words) {
    String described = text;
    for (Parameter parameter : parameters) {
      String place = "{" + parameter.name() + "}";
      if (described.contains(place)) {
        described = described.replace(place, words.apply(parameter));
      }
    }
    return described;
  }
}
