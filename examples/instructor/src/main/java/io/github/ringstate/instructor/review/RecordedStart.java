package io.github.ringstate.instructor.review;

import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.encounter.Entry;
import io.github.ringstate.recording.Channel;
import io.github.ringstate.recording.FoundEncounter;
import io.github.ringstate.recording.Recording;
import io.github.ringstate.recording.VerticalMotion;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.util.FastMath;

/**
 * The state of a recorded flight at its onset, from which the model flies on. Speeds, wind and
 * vertical acceleration are those of the smoothed recording; the nose stands as it must for the
 * recorded change of ground speed; the collective is the one with which the model has the recorded
 * vertical acceleration. Nose and collective are held until the pilot acts.
 *
 * @param groundSpeed m/s, ahead
 * @param fromBehind the wind from behind, m/s
 * @param verticalSpeed m/s, positive up
 * @param slowing the rate at which the ground speed falls, m/s2
 * @param acceleration vertical, m/s2, positive up
 */
record RecordedStart(
    double groundSpeed,
    double fromBehind,
    double verticalSpeed,
    double slowing,
    double acceleration)
    implements Entry {

  private static final String NAME = "as recorded";

  /** The ground speed's change is seen over so long either way, s. */
  private static final double SLOPE = 1.5;

  private static final double GRAVITY = 9.80665; // CGPM, 1901
  private static final double ACCURACY = 1e-6;
  private static final int EVALUATIONS = 100;
  private static final double RATE = FastMath.toRadians(6);

  static RecordedStart of(VerticalMotion motion, FoundEncounter found, double fromBehind) {
    Recording recording = motion.recording();
    double onset = found.onsetTime().value();
    int at = Math.min(recording.size() - 1, recording.indexAt(onset));
    int before = Math.max(0, recording.indexAt(onset - SLOPE));
    int after = Math.min(recording.size() - 1, recording.indexAt(onset + SLOPE));
    double later = recording.time(after) - recording.time(before);
    double change =
        recording.value(Channel.GROUND_SPEED, after)
            - recording.value(Channel.GROUND_SPEED, before);
    double slowing = later > 0 && !Double.isNaN(change) ? -change / later : 0;
    return new RecordedStart(
        recording.value(Channel.GROUND_SPEED, at),
        fromBehind,
        motion.verticalSpeed(at),
        slowing,
        motion.acceleration(at));
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public WindField wind() {
    return new Wind(fromBehind, 0);
  }

  @Override
  public Start start(EquationsOfMotion motion) {
    double ahead = groundSpeed - fromBehind;
    Trim steady = Trim.find(motion, ahead, verticalSpeed);
    double[] state = steady.state(motion, ahead, verticalSpeed);
    double pitch = steady.pitch() + FastMath.atan2(slowing, GRAVITY + acceleration);
    state[State.PITCH] = pitch;
    double collective = collective(motion, state);
    state[State.COLLECTIVE] = collective;
    state[State.ENGINE] = motion.inBalance(state).loads().engineDemand();
    return new Start(
        state,
        (seen, controls) -> {
          controls.pitch(pitch, RATE);
          controls.bank(steady.bank(), RATE);
          controls.collective(collective, RATE);
        });
  }

  /** The collective with which the craft has the recorded vertical acceleration. */
  private double collective(EquationsOfMotion motion, double[] state) {
    double low = motion.craft().si(CraftLimits.MINIMUM_COLLECTIVE);
    double high = motion.craft().si(CraftLimits.MAXIMUM_COLLECTIVE);
    double[] tried = state.clone();
    try {
      return new BracketingNthOrderBrentSolver(ACCURACY, 5)
          .solve(
              EVALUATIONS,
              collective -> {
                tried[State.COLLECTIVE] = collective;
                return motion.inBalance(tried).verticalAcceleration() - acceleration;
              },
              low,
              high);
    } catch (MathRuntimeException none) {
      throw new NoSteadyFlightException(
          motion.craft().name()
              + " cannot have a vertical acceleration of "
              + acceleration
              + " m/s2 in the recorded state",
          none);
    }
  }
}
