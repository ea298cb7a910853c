package io.github.ringstate.instructor.conditions;

import io.github.ringstate.air.Air;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

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
   * Pressure altitude.
   *
   * @return the altitude, ft
   */
  public double pressureAltitudeFt() {
    return Unit.FOOT.fromSi(air.pressureAltitude());
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
   * Density altitude.
   *
   * @return the altitude, ft
   */
  public double densityAltitudeFt() {
    return Unit.FOOT.fromSi(air.densityAltitude());
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
   * The conditions in words.
   *
   * @param units the units to speak in
   * @return one line for the load and the air, one for the power, and a warning if it is not enough
   */
  public List<Term> terms(UnitSystem units) {
    List<Term> terms = new ArrayList<>();
    terms.add(
        new Term(
            "Conditions",
            loadAndAir(units)
                + ", density altitude "
                + units.lengthInWords(air.densityAltitude())));
    terms.add(
        new Term(
            "Power",
            "a hover out of ground effect in calm air takes "
                + Decimals.fixed(hover.neededKw(), 0)
                + " kW, "
                + share(hover.continuousKw())
                + " of continuous and "
                + share(hover.shortTimeKw())
                + " of short-time power in this air ("
                + Decimals.fixed(hover.continuousKw(), 0)
                + " and "
                + Decimals.fixed(hover.shortTimeKw(), 0)
                + " kW)"));
    if (hover.isShort()) {
      terms.add(
          new Term(
              "WARNING",
              "the hover takes more power than there is: this craft cannot hold a hover out of ground"
                  + " effect here"));
    }
    return terms;
  }

  private String loadAndAir(UnitSystem units) {
    return Decimals.brief(massKg())
        + " kg, pressure altitude "
        + units.lengthInWords(air.pressureAltitude())
        + ", OAT "
        + Decimals.fixed(oatC(), 1)
        + " C";
  }

  private String share(double power) {
    return Decimals.fixed(100 * hover.neededKw() / power, 0) + " %";
  }
}
