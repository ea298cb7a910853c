package io.github.ringstate.instructor.option;

import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Entry;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.inflow.DescentLimits;
import io.github.ringstate.pilot.Cue;
import io.github.ringstate.pilot.Cues;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.Locale;

/**
 * What a delay counts from.
 *
 * @param kind which clock
 * @param limits the limits that are taught, with which the third clock starts
 */
public record Clock(Kind kind, ParameterSet limits) {

  /** Kinds of clock. */
  public enum Kind {
    /** From onset. */
    BOUNDARY,
    /** From the moment at which the vertical speed indicator gives the sink away. */
    CUE,
    /** From the moment at which limits that pilots are taught are exceeded. */
    LIMITS;

    /**
     * The clock's name.
     *
     * @return one lower-case word
     */
    public String label() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** From onset. */
  public static final Clock BOUNDARY =
      new Clock(Kind.BOUNDARY, ParameterSet.standard(DescentLimits.PARAMETERS));

  /**
   * The clock's name.
   *
   * @return one lower-case word
   */
  public String label() {
    return kind.label();
  }

  /**
   * Whether delays count from limits that are taught.
   *
   * @return false for the ring state's own onset
   */
  public boolean isLimits() {
    return kind == Kind.LIMITS;
  }

  /**
   * An encounter whose pilot acts by this clock without delay. With the limits that are taught,
   * they stand in for the boundary: onset, and with it loss and height, count from there, while the
   * rotor's flow stays what it is.
   *
   * @param encounter the encounter
   * @return the encounter with this clock
   */
  public Encounter on(Encounter encounter) {
    return switch (kind) {
      case BOUNDARY -> encounter.withRecognition(Recognition.afterOnset(0));
      case CUE -> encounter.withRecognition(Recognition.afterCue(cue(encounter.entry()), 0));
      case LIMITS ->
          encounter
              .withRecognition(Recognition.afterOnset(0))
              .withInflow(
                  encounter.inflow(),
                  DescentLimits.of(
                      encounter.craft().hoverInducedVelocity(encounter.air()), limits));
    };
  }

  private static Cue cue(Entry entry) {
    return Cues.sinkShown(
        entry.intendedDescent(), Unit.FOOT_PER_MINUTE.toSi(Cues.SINK_MARGIN.standard()));
  }

  /**
   * Where a delay begins.
   *
   * @return a few words
   */
  public String from() {
    return "from " + start();
  }

  /**
   * What a delay begins with.
   *
   * @return a few words
   */
  public String start() {
    return switch (kind) {
      case BOUNDARY -> "onset";
      case CUE -> "the cue";
      case LIMITS -> "the limits";
    };
  }

  /**
   * What the clock is, in words.
   *
   * @param entry the entry
   * @param craft the craft, whose indicator lags
   * @param units the units to speak in
   * @return a part of a sentence
   */
  public String description(Entry entry, Helicopter craft, UnitSystem units) {
    double margin = Unit.FOOT_PER_MINUTE.toSi(Cues.SINK_MARGIN.standard());
    return switch (kind) {
      case BOUNDARY -> ApproachMessages.SAY.boundary();
      case CUE ->
          ApproachMessages.SAY.cue(
              Decimals.brief(craft.numbers().get(CraftLimits.VERTICAL_SPEED_LAG)),
              units.typed(Unit.FOOT_PER_MINUTE, entry.intendedDescent() + margin),
              units.typed(Unit.FOOT_PER_MINUTE, margin));
      case LIMITS -> ApproachMessages.SAY.limits(sink(units), airspeed(units));
    };
  }

  /**
   * What onset is where delays count from limits that are taught.
   *
   * @param units the units to speak in
   * @return a part of a sentence
   */
  public String onset(UnitSystem units) {
    return ApproachMessages.SAY.limitsExceeded(sink(units), airspeed(units));
  }

  private String sink(UnitSystem units) {
    return units.typed(Unit.FOOT_PER_MINUTE, limits.si(DescentLimits.SINK));
  }

  private String airspeed(UnitSystem units) {
    return units.typed(Unit.KNOT, limits.si(DescentLimits.AIRSPEED));
  }
}
