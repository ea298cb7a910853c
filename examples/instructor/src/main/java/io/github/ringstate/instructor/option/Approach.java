package io.github.ringstate.instructor.option;

import io.github.ringstate.air.Air;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Entry;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Unit;
import java.util.OptionalDouble;

/**
 * How the flight comes to the ring state.
 *
 * @param kind which entry
 * @param windKt the wind, kt, from where {@link EntryKind#windFrom} says
 * @param heightFt height above the ground at onset, ft; empty if there is no ground
 */
public record Approach(EntryKind kind, double windKt, OptionalDouble heightFt) {

  /**
   * An entry in its standard wind, away from the ground.
   *
   * @param kind which entry
   * @return the approach
   */
  public static Approach standard(EntryKind kind) {
    return new Approach(kind, kind.wind().standard(), OptionalDouble.empty());
  }

  /**
   * The entry to fly.
   *
   * @return the entry
   */
  public Entry entry() {
    return kind.maker().apply(kind.numbers().with(kind.wind(), windKt));
  }

  /**
   * What happens in the entry.
   *
   * @param units the units to speak in
   * @return a part of a sentence
   */
  public String description(UnitSystem units) {
    return kind.description(parameter -> units.given(parameter.unit(), parameter.standard()));
  }

  /**
   * What happens in the entry, the wind, and what the entry shows.
   *
   * @param units the units to speak in
   * @return some sentences
   */
  public String story(UnitSystem units) {
    return description(units) + "; wind " + wind(units) + ". " + kind.remark();
  }

  /**
   * The encounter that this leads to.
   *
   * @param craft the helicopter
   * @param air the air
   * @return the encounter; its recovery and recognition are to be set
   */
  public Encounter encounter(Helicopter craft, Air air) {
    Encounter encounter = Encounter.of(craft).withAir(air).withEntry(entry());
    return heightFt.isPresent()
        ? encounter.withHeight(Unit.FOOT.toSi(heightFt.getAsDouble()))
        : encounter;
  }

  /**
   * Where the ground is, in words.
   *
   * @param units the units to speak in
   * @return for instance {@code 300 ft below the craft at onset}
   */
  public String ground(UnitSystem units) {
    return heightFt.isPresent()
        ? units.given(Unit.FOOT, heightFt.getAsDouble()) + " below the craft at onset"
        : "none within reach";
  }

  /**
   * The wind in words.
   *
   * @param units the units to speak in
   * @return for instance {@code calm} or {@code 10 kt from ahead}
   */
  public String wind(UnitSystem units) {
    return windKt == 0
        ? "calm"
        : units.given(Unit.KNOT, Math.abs(windKt)) + " " + kind.windFrom(windKt);
  }
}
