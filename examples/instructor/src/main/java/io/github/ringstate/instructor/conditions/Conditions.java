package io.github.ringstate.instructor.conditions;

import io.github.ringstate.air.Air;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.stream.Stream;

/**
 * A craft at a mass in an air, and what that leaves it in power.
 *
 * @param craft the helicopter
 * @param air the air
 * @param hover the power for a hover
 */
public record Conditions(Helicopter craft, Air air, HoverPower hover) {

  /**
   * Puts a craft into an air.
   *
   * @param craft the helicopter
   * @param air the air
   * @return the conditions
   * @throws UserError if the rotor cannot carry the craft in this air
   */
  public static Conditions of(Helicopter craft, Air air) {
    try {
      return new Conditions(craft, air, HoverPower.of(craft, air));
    } catch (NoSteadyFlightException noHover) {
      Conditions without = new Conditions(craft, air, new HoverPower(0, 0, 0));
      throw UserError.usage(
          "--mass-kg, --pressure-altitude-ft and --oat-c cannot be "
              + without.loadAndAir(UnitSystem.AVIATION)
              + UserError.ALLOWED
              + "a mass that the rotor of "
              + craft.name()
              + " can carry in a hover in that air");
    }
  }

  /**
   * What to say if a craft cannot begin an entry.
   *
   * @param entry the entry's name
   * @param noStart what the library says
   * @return the user error
   */
  public static UserError noStart(String entry, IllegalStateException noStart) {
    return UserError.usage(
        "--entry cannot be " + UserError.quoted(entry) + ": " + noStart.getMessage());
  }

  /**
   * Mass in flight.
   *
   * @return the mass, kg
   */
  public double massKg() {
    return craft.mass();
  }

  /**
   * Outside air temperature.
   *
   * @return the temperature, degrees Celsius
   */
  public double oatC() {
    return air.temperature() - Unit.ZERO_CELSIUS;
  }

  /**
   * Hover induced velocity at the craft's weight.
   *
   * @return the velocity, m/s
   */
  public double hoverInduced() {
    return craft.hoverInducedVelocity(air);
  }

  /**
   * What heads a report on these conditions.
   *
   * @param units the units to speak in
   * @param more what else is said there
   * @return a line for the craft, those of {@link #terms}, and what is said more
   */
  public List<Term> heading(UnitSystem units, List<Term> more) {
    return Stream.of(List.of(new Term("Craft", CraftWords.of(craft))), terms(units), more)
        .flatMap(List::stream)
        .toList();
  }

  /**
   * The conditions in words.
   *
   * @param units the units to speak in
   * @return one line for the load and the air, one for the power, and a warning if it is not enough
   */
  public List<Term> terms(UnitSystem units) {
    return ConditionMessages.SAY.conditions(
        loadAndAir(units),
        units.lengthInWords(air.densityAltitude()),
        kilowatts(hover.needed()),
        percent(hover.continuous()),
        percent(hover.takeOff()),
        kilowatts(hover.continuous()),
        kilowatts(hover.takeOff()),
        hover.isShort());
  }

  /**
   * Mass and air in words.
   *
   * @param units the units to speak in
   * @return for instance {@code 600 kg, pressure altitude 0 ft, OAT 15.0 C}
   */
  public String loadAndAir(UnitSystem units) {
    return ConditionMessages.SAY.loadAndAir(
        units.given(Unit.KILOGRAM, massKg()),
        units.lengthInWords(air.pressureAltitude()),
        units.temperatureInWords(air.temperature()));
  }

  /**
   * What the hover takes, in words.
   *
   * @return for instance {@code hover 94 % of continuous power}
   */
  public String hoverInWords() {
    return ConditionMessages.SAY.hover(percent(hover.continuous()));
  }

  private String percent(double power) {
    return Decimals.fixed(Unit.PERCENT.fromSi(hover.needed() / power), 0);
  }

  private static String kilowatts(double power) {
    return Decimals.fixed(Unit.KILOWATT.fromSi(power), 0);
  }
}
