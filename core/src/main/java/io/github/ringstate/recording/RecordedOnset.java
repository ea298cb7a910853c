package io.github.ringstate.recording;

import io.github.ringstate.air.Wind;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.encounter.Entry;
import io.github.ringstate.quantity.Unit;
import java.util.Optional;
import org.hipparchus.util.FastMath;

/**
 * An entry that begins at the onset of a recorded encounter: with the speeds and accelerations that
 * were recorded there, and with the attitude, collective and inflow by which the model's craft
 * moves so. Attitude and collective are then held until the pilot acts. Where its nose points the
 * model calls north.
 *
 * <p>Where the heading is not recorded, the nose points along the track; or against it, where the
 * craft flew against it through the air in the 20 s before: it hovered into the wind and now drifts
 * with it, tail first (assumed).
 *
 * <p>What no recording shows is taken as in steady flight: the rotor is at full speed, the power is
 * what the rotor asks for, and there was no ring before.
 *
 * @param wind the wind in that frame
 * @param ahead speed over the ground along the nose, m/s
 * @param sideways speed over the ground to the right of it, m/s
 * @param verticalSpeed vertical speed, m/s, positive up
 * @param forward acceleration along the nose, m/s2
 * @param right acceleration to the right of it, m/s2
 * @param up vertical acceleration, m/s2, positive up
 */
public record RecordedOnset(
    Wind wind,
    double ahead,
    double sideways,
    double verticalSpeed,
    double forward,
    double right,
    double up)
    implements Entry {

  /** An acceleration less well known than this says too little to hold the controls by, m/s2. */
  private static final double VAGUE = 1;

  /** How fast attitude and collective would be brought back, rad/s; they are where they belong. */
  private static final double RATE = Unit.DEGREE_PER_SECOND.toSi(6);

  /** The horizontal acceleration is the slope of the ground velocity over so long either way, s. */
  private static final double SLOPE_TIME = 0.75;

  /** The way through the air in so long before the onset tells which way the nose points, s. */
  private static final double FLOWN = 20;

  /**
   * The entry of an encounter.
   *
   * @param motion the smoothed recording
   * @param found an encounter in it
   * @param wind the wind over the ground
   * @return the entry; empty if ground speed and track are not recorded around the onset, or the
   *     vertical acceleration is less well known than to 1 m/s2
   */
  public static Optional<RecordedOnset> of(VerticalMotion motion, FoundEncounter found, Wind wind) {
    Recording recording = motion.recording();
    double onset = found.onsetTime().value();
    int at = Math.min(recording.indexAt(onset), recording.size() - 1);
    int from = Math.max(0, recording.indexAt(onset - SLOPE_TIME) - 1);
    int to = Math.min(recording.size() - 1, recording.indexAt(onset + SLOPE_TIME));
    double[] before = velocity(recording, from);
    double[] after = velocity(recording, to);
    double[] here = velocity(recording, at);
    double time = recording.time(to) - recording.time(from);
    double north = (after[0] - before[0]) / time;
    double east = (after[1] - before[1]) / time;
    if (!(time > 0)
        || !Double.isFinite(north + east + here[0] + here[1])
        || !(motion.accelerationDeviation(at) <= VAGUE)) {
      return Optional.empty();
    }
    double heading = heading(recording, at, here, wind);
    double cos = FastMath.cos(heading);
    double sin = FastMath.sin(heading);
    double forward = north * cos + east * sin;
    double right = east * cos - north * sin;
    double late = onset - recording.time(at);
    return Optional.of(
        new RecordedOnset(
            new Wind(
                wind.north() * cos + wind.east() * sin, wind.east() * cos - wind.north() * sin),
            here[0] * cos + here[1] * sin + late * forward,
            here[1] * cos - here[0] * sin + late * right,
            motion.verticalSpeed(at) + late * motion.acceleration(at),
            forward,
            right,
            motion.acceleration(at)));
  }

  /**
   * The same onset with another vertical acceleration.
   *
   * @param other the vertical acceleration, m/s2, positive up
   * @return the onset with it
   */
  public RecordedOnset withUp(double other) {
    return new RecordedOnset(wind, ahead, sideways, verticalSpeed, forward, right, other);
  }

  /** Where the nose points: as recorded, or as the way through the air says. */
  private static double heading(Recording recording, int at, double[] here, Wind wind) {
    double recorded = recording.value(Channel.HEADING, at);
    if (!Double.isNaN(recorded)) {
      return recorded;
    }
    double along = 0;
    for (int k = recording.indexAt(recording.time(at) - FLOWN); k <= at; k++) {
      double[] over = velocity(recording, k);
      double through = (over[0] - wind.north()) * here[0] + (over[1] - wind.east()) * here[1];
      along += Double.isNaN(through) ? 0 : through;
    }
    double track = FastMath.atan2(here[1], here[0]);
    return along < 0 ? track + FastMath.PI : track;
  }

  /** Velocity over the ground, north and east, m/s. */
  private static double[] velocity(Recording recording, int k) {
    double speed = recording.value(Channel.GROUND_SPEED, k);
    double track = recording.value(Channel.TRACK, k);
    return new double[] {speed * FastMath.cos(track), speed * FastMath.sin(track)};
  }

  @Override
  public String name() {
    return "recorded-onset";
  }

  @Override
  public double intendedDescent() {
    return Math.max(0, -verticalSpeed);
  }

  @Override
  public Start start(EquationsOfMotion motion) {
    double[] air = motion.windAtStart();
    double airAhead = ahead - air[0];
    double airSideways = sideways - air[1];
    double climb = verticalSpeed - air[2];
    Trim trim = Trim.accelerating(motion, airAhead, airSideways, climb, forward, right, up);
    return new Start(
        trim.state(motion, airAhead, airSideways, climb),
        (seen, controls) -> {
          controls.pitch(trim.pitch(), RATE);
          controls.bank(trim.bank(), RATE);
          controls.collective(trim.collective(), RATE);
        });
  }
}
