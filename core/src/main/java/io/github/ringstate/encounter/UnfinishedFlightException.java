package io.github.ringstate.encounter;

import io.github.ringstate.integrate.UnfinishedLegException;

/**
 * A flight that used up its {@linkplain FlightLimits#EVALUATIONS budget}: a part of it jumps or
 * swings faster than can be followed, as a control law does that switches at a threshold. The
 * message names the time, the phase and the recovery.
 */
public final class UnfinishedFlightException extends IllegalStateException {

  private static final long serialVersionUID = 1L;

  private final double time;
  private final String phase;
  private final String flown;

  UnfinishedFlightException(String flown, String phase, UnfinishedLegException cause) {
    super(
        "the flight with "
            + flown
            + " came no further than "
            + cause.time()
            + " s, in the phase '"
            + phase
            + "', in "
            + cause.evaluations()
            + " evaluations: a command, a cue, a wind or an inflow jumps there; see Switching",
        cause);
    this.time = cause.time();
    this.phase = phase;
    this.flown = flown;
  }

  /**
   * How far the flight came.
   *
   * @return the time since it began, s
   */
  public double time() {
    return time;
  }

  /**
   * In which phase it was.
   *
   * @return the name of the phase; {@code entry} before onset, {@code unrecognised} until the pilot
   *     acts
   */
  public String phase() {
    return phase;
  }

  /**
   * What was flown.
   *
   * @return the name of the recovery; before onset that of the entry
   */
  public String flown() {
    return flown;
  }
}
