package io.github.ringstate.dynamics;

import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.quantity.SoftLimit;

/**
 * Attitude, heading and collective: they follow what is commanded, at limited rates and (attitude)
 * accelerations. Those limits are {@link SoftLimit}s; a command beyond the limits of the craft is
 * cut off where they are.
 */
final class ControlTerm implements Term {

  private final Controls controls = new Controls();
  private final double minimumCollective;
  private final double maximumCollective;
  private final double collectiveRate;
  private final double pitchLimit;
  private final double bankLimit;
  private final double pitchRate;
  private final double bankRate;
  private final double yawRate;
  private final double pitchAcceleration;
  private final double bankAcceleration;
  private final double inverseAttitudeTime;
  private final double inverseRateTime;
  private final double inverseCollectiveTime;
  private Commander commander = (seen, unmoved) -> {};

  ControlTerm(Helicopter craft) {
    minimumCollective = craft.si(CraftLimits.MINIMUM_COLLECTIVE);
    maximumCollective = craft.si(CraftLimits.MAXIMUM_COLLECTIVE);
    collectiveRate = craft.si(CraftLimits.COLLECTIVE_RATE);
    pitchLimit = craft.si(CraftLimits.PITCH_LIMIT);
    bankLimit = craft.si(CraftLimits.BANK_LIMIT);
    pitchRate = craft.si(CraftLimits.PITCH_RATE);
    bankRate = craft.si(CraftLimits.BANK_RATE);
    yawRate = craft.si(CraftLimits.YAW_RATE);
    pitchAcceleration = craft.si(CraftLimits.PITCH_ACCELERATION);
    bankAcceleration = craft.si(CraftLimits.BANK_ACCELERATION);
    inverseAttitudeTime = 1 / craft.si(CraftLimits.ATTITUDE_TIME);
    inverseRateTime = 1 / craft.si(CraftLimits.ATTITUDE_RATE_TIME);
    inverseCollectiveTime = 1 / craft.si(CraftLimits.COLLECTIVE_TIME);
  }

  void commandedBy(Commander other) {
    commander = other;
  }

  @Override
  public void add(Motion at, double[] rates) {
    double[] y = at.state;
    Controls c = controls;
    // as they are, and unchecked: a search for trim may pass through attitudes that nobody commands
    c.hold(y[State.PITCH], y[State.BANK], y[State.COLLECTIVE]);
    c.pitchRate = pitchRate;
    c.bankRate = bankRate;
    c.collectiveRate = collectiveRate;
    commander.command(at, c);
    follow(c, y, rates);
  }

  private void follow(Controls c, double[] y, double[] rates) {
    double pitch = within(c.pitch, -pitchLimit, pitchLimit);
    double bank = within(c.bank, -bankLimit, bankLimit);
    double collective = within(c.collective, minimumCollective, maximumCollective);
    double yaw = within(c.yawRate, -yawRate, yawRate);
    double wantedPitchRate =
        SoftLimit.within(
            (pitch - y[State.PITCH]) * inverseAttitudeTime, lesser(c.pitchRate, pitchRate));
    double wantedBankRate =
        SoftLimit.within(
            (bank - y[State.BANK]) * inverseAttitudeTime, lesser(c.bankRate, bankRate));
    rates[State.PITCH] = y[State.PITCH_RATE];
    rates[State.BANK] = y[State.BANK_RATE];
    rates[State.HEADING] = y[State.HEADING_RATE];
    rates[State.PITCH_RATE] =
        SoftLimit.within(
            (wantedPitchRate - y[State.PITCH_RATE]) * inverseRateTime, pitchAcceleration);
    rates[State.BANK_RATE] =
        SoftLimit.within((wantedBankRate - y[State.BANK_RATE]) * inverseRateTime, bankAcceleration);
    rates[State.HEADING_RATE] =
        SoftLimit.within((yaw - y[State.HEADING_RATE]) * inverseRateTime, pitchAcceleration);
    rates[State.COLLECTIVE] =
        SoftLimit.within(
            (collective - y[State.COLLECTIVE]) * inverseCollectiveTime,
            lesser(c.collectiveRate, collectiveRate));
  }

  private static double within(double value, double low, double high) {
    if (!(value >= low)) {
      return low;
    }
    return lesser(value, high);
  }

  /** The lesser of two numbers, at the cost of a comparison: Math.min also orders NaN and zeros. */
  private static double lesser(double one, double other) {
    return one < other ? one : other;
  }
}
