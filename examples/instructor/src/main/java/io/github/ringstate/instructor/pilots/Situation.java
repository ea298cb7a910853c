package io.github.ringstate.instructor.pilots;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.CraftWords;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.instructor.option.Clock;
import java.util.List;

/**
 * What is flown, in words.
 *
 * @param craft the craft
 * @param entryName the entry
 * @param entry what happens in it
 * @param note what the entry shows, and what it hides
 * @param wind the wind
 * @param ground where the ground is; empty where that is not said
 * @param clock what delays count from; empty where that is not said
 * @param disturbance what disturbs the flights; empty for nothing
 */
public record Situation(
    String craft,
    String entryName,
    String entry,
    String note,
    String wind,
    String ground,
    String clock,
    String disturbance) {

  /**
   * What is flown without a clock of choice.
   *
   * @param craft the craft
   * @param approach how the flight comes to the ring state
   * @param units the units to speak in
   * @return the words
   */
  public static Situation of(Helicopter craft, Approach approach, UnitSystem units) {
    return new Situation(
        CraftWords.of(craft),
        approach.kind().label(),
        approach.description(units),
        approach.kind().remark(),
        approach.wind(units),
        approach.ground(units),
        "",
        "");
  }

  /**
   * The same with a clock and disturbances.
   *
   * @param craft the craft
   * @param approach how the flight comes to the ring state
   * @param chosen what delays count from
   * @param disturbances what disturbs the flights
   * @param units the units to speak in
   * @return the words
   */
  public static Situation of(
      Helicopter craft,
      Approach approach,
      Clock chosen,
      Disturbances disturbances,
      UnitSystem units) {
    Situation flown = of(craft, approach, units);
    return new Situation(
        flown.craft,
        flown.entryName,
        flown.entry,
        flown.note,
        flown.wind,
        flown.ground,
        chosen.description(approach.entry(), craft, units),
        disturbances.any() ? PilotTerms.disturbances(disturbances, units) : "");
  }

  /**
   * Without a word on the ground, where it plays no part.
   *
   * @return the situation
   */
  public Situation withoutGround() {
    return new Situation(craft, entryName, entry, note, wind, "", clock, disturbance);
  }

  /**
   * The heading of a sheet.
   *
   * @return a line each
   */
  public List<Term> terms() {
    return PilotMessages.SAY.situation(this);
  }
}
