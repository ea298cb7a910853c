package io.github.ringstate.analysis.best;

import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.pilot.Cockpit;
import io.github.ringstate.pilot.Phase;
import io.github.ringstate.pilot.PowerSetting;
import io.github.ringstate.pilot.Recovery;
import java.util.List;

/**
 * A recovery that follows a history of commands, linear between knots and held after the last one.
 * The collective never goes where the power would exceed a cap, or the take-off power of that air.
 *
 * @param knots the commands, in order of time, at least one
 * @param power the cap, over the power that may be used without limit of time, positive
 * @param rates the craft's own greatest rates, with which the commands are followed
 */
public record ControlHistory(List<Knot> knots, double power, Rates rates) implements Recovery {

  /**
   * What is commanded at an instant.
   *
   * @param time since recognition, s, finite and not negative
   * @param pitch pitch attitude beyond that of the hover, rad, positive nose up; finite, as all
   *     angles here
   * @param bank bank beyond that of the hover, rad, positive to the right
   * @param collective blade pitch beyond that of the hover, rad
   */
  public record Knot(double time, double pitch, double bank, double collective) {

    /** Checks that the numbers are finite, and the time not negative. */
    public Knot {
      if (!(time >= 0 && time < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException(
            "the time of a knot must be finite and not negative, not " + time + " s");
      }
      finite("pitch", pitch);
      finite("bank", bank);
      finite("collective", collective);
    }

    private static void finite(String name, double angle) {
      if (!(Math.abs(angle) < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException(
            "the " + name + " of a knot must be finite, not " + angle + " rad");
      }
    }
  }

  /**
   * Greatest rates.
   *
   * @param pitch of pitch attitude, rad/s, positive
   * @param bank of bank, rad/s, positive
   * @param collective of collective, rad/s, positive
   */
  public record Rates(double pitch, double bank, double collective) {

    /** Checks that the rates are positive and finite. */
    public Rates {
      positive("pitch", pitch);
      positive("bank", bank);
      positive("collective", collective);
    }

    private static void positive(String name, double rate) {
      if (!(rate > 0 && rate < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException(
            "the greatest rate of "
                + name
                + " must be positive and finite, not "
                + rate
                + " rad/s");
      }
    }

    /**
     * The rates of a craft.
     *
     * @param craft the helicopter
     * @return its limits
     */
    public static Rates of(Helicopter craft) {
      return new Rates(
          craft.si(CraftLimits.PITCH_RATE),
          craft.si(CraftLimits.BANK_RATE),
          craft.si(CraftLimits.COLLECTIVE_RATE));
    }
  }

  private static final PowerSetting POWER = new PowerSetting(PowerSetting.GAIN.standard());

  /** Checks the order of the knots. */
  public ControlHistory {
    knots = List.copyOf(knots);
    if (knots.isEmpty()) {
      throw new IllegalArgumentException("a history needs a knot");
    }
    if (!(power > 0)) {
      throw new IllegalArgumentException("the cap of power must be positive, not " + power);
    }
    for (int i = 1; i < knots.size(); i++) {
      if (!(knots.get(i).time() > knots.get(i - 1).time())) {
        throw new IllegalArgumentException(
            "knots must be in order of time, not "
                + knots.get(i).time()
                + " s after "
                + knots.get(i - 1).time()
                + " s");
      }
    }
  }

  @Override
  public String name() {
    return "history";
  }

  @Override
  public List<Phase> phases() {
    return List.of(Phase.last("history", this::command));
  }

  private void command(Cockpit seen, Controls controls) {
    Knot wanted = at(seen.sinceTechniqueBegan());
    controls.pitch(seen.hoverPitch() + wanted.pitch, rates.pitch);
    controls.bank(seen.hoverBank() + wanted.bank, rates.bank);
    controls.collective(
        Math.min(seen.hoverCollective() + wanted.collective, POWER.collective(seen, power)),
        rates.collective);
  }

  /**
   * What is commanded at an instant.
   *
   * @param time since recognition, s; before the first knot its command holds
   * @return the command
   */
  public Knot at(double time) {
    if (Double.isNaN(time)) {
      throw new IllegalArgumentException("the time must be a number of seconds, not NaN");
    }
    Knot before = knots.get(0);
    for (Knot after : knots) {
      if (time < after.time) {
        if (after.time == before.time) {
          return after;
        }
        double part = Math.max(0, (time - before.time) / (after.time - before.time));
        return new Knot(
            time,
            before.pitch + part * (after.pitch - before.pitch),
            before.bank + part * (after.bank - before.bank),
            before.collective + part * (after.collective - before.collective));
      }
      before = after;
    }
    return before;
  }
}
