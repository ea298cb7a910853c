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
 * @param wind the wind, in the unit of {@link EntryKind#wind}, from where {@link
 *     EntryKind#windFrom} says
 * @param height height above the ground at onset, m; empty if there is no ground
 */
public record Approach(EntryKind kind, double wind, OptionalDouble height) {

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
    return kind.maker().apply(kind.numbers().with(kind.wind(), wind));
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
   * The encounter that this leads to.
   *
   * @param craft the helicopter
   * @param air the air
   * @return the encounter; its recovery and recognition are to be set
   */
  public Encounter encounter(Helicopter craft, Air air) {
    Encounter encounter = Encounter.of(craft).withAir(air).withEntry(entry());
    return height.isPresent() ? encounter.withHeight(height.getAsDouble()) : encounter;
  }

  /**
   * Where the ground is, in words.
   *
   * @param units the units to speak in
   * @return for instance {@code 300 ft below the craft at onset}
   */
  public String ground(UnitSystem units) {
    return ApproachMessages.SAY.ground(
        height.isPresent() ? units.typed(Unit.FOOT, height.getAsDouble()) : "");
  }

  /**
   * The wind in words.
   *
   * @param units the units to speak in
   * @return for instance {@code calm} or {@code 10 kt from ahead}
   */
  public String wind(UnitSystem units) {
    return ApproachMessages.SAY.wind(
        wind == 0 ? "" : units.given(kind.wind().unit(), Math.abs(wind)), kind.windFrom(wind));
  }

  /**
   * The wind for machines.
   *
   * @return the wind, m/s
   */
  public double windSpeed() {
    return kind.wind().unit().toSi(wind);
  }
}
