package io.github.ringstate.instructor.option;

import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Entry;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.pilot.Cues;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.quantity.Unit;

/** What a delay counts from. */
public enum Clock {
  /** From onset. */
  BOUNDARY("boundary"),
  /** From the moment at which the vertical speed indicator gives the sink away. */
  CUE("cue");

  private final String label;

  Clock(String label) {
    this.label = label;
  }

  /**
   * The clock's name.
   *
   * @return one lower-case word
   */
  public String label() {
    return label;
  }

  /**
   * When a pilot acts by this clock.
   *
   * @param entry the entry, whose intended rate of descent the cue is beyond
   * @return the recognition, without delay
   */
  public Recognition recognition(Entry entry) {
    return switch (this) {
      case BOUNDARY -> Recognition.afterOnset(0);
      case CUE ->
          Recognition.afterCue(
              Cues.sinkShown(
                  entry.intendedDescent(), Unit.FOOT_PER_MINUTE.toSi(Cues.SINK_MARGIN.standard())),
              0);
    };
  }

  /**
   * Where a delay begins.
   *
   * @return two words
   */
  public String from() {
    return "from " + start();
  }

  /**
   * What a delay begins with.
   *
   * @return one word or two
   */
  public String start() {
    return this == BOUNDARY ? "onset" : "the cue";
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
    return this == BOUNDARY
        ? ApproachMessages.SAY.boundary()
        : ApproachMessages.SAY.cue(
            Decimals.brief(craft.numbers().get(CraftLimits.VERTICAL_SPEED_LAG)),
            units.typed(Unit.FOOT_PER_MINUTE, entry.intendedDescent() + margin),
            units.typed(Unit.FOOT_PER_MINUTE, margin));
  }
}
