package io.github.ringstate.recording;

import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.hipparchus.util.FastMath;

/**
 * How height, vertical speed and acceleration go on from one reading to the next, with the slow
 * error of each height that is recorded.
 *
 * <p>The acceleration is the integral of white noise (Y. Bar-Shalom, X. R. Li and T. Kirubarajan,
 * Estimation with Applications to Tracking and Navigation, 2001, section 6.2.3, from memory). The
 * slow errors are first-order Gauss-Markov; the level of a second height is unknown and stays, and
 * so does that of the first from a step on.
 */
final class VerticalModel {

  static final int HEIGHT = 0;
  static final int SPEED = 1;
  static final int ACCELERATION = 2;
  private static final int OFFSETS = 3;

  /** Beyond a gap as long as this nothing of the motion before it is known, s. */
  private static final double LONGEST_GAP = 60;

  /** Before the first reading: 1 km around it, 30 m/s and 10 m/s2 either way. */
  private static final double[] FIRST_DEVIATION = {1e3, 30, 10};

  /** How far apart the levels of two heights may lie, m. */
  private static final double LEVELS_APART = 2000;

  private final List<Channel> channels = new ArrayList<>();
  private final List<Channel> heights = new ArrayList<>();
  private final Noise noise;
  final int size;

  VerticalModel(Recording recording, Noise noise) {
    this.noise = noise;
    for (Channel channel :
        List.of(Channel.HEIGHT, Channel.PRESSURE_ALTITUDE, Channel.VERTICAL_SPEED)) {
      if (recording.channels().contains(channel)) {
        channels.add(channel);
        if (channel != Channel.VERTICAL_SPEED) {
          heights.add(channel);
        }
      }
    }
    if (heights.isEmpty()) {
      throw new IllegalArgumentException("a recording without any height cannot be smoothed");
    }
    size = OFFSETS + heights.size();
  }

  /** The channels that say something of vertical motion. */
  List<Channel> channels() {
    return channels;
  }

  /** The place of a channel's slow error in the state; negative if it has none. */
  int offset(Channel channel) {
    int index = heights.indexOf(channel);
    return index < 0 ? -1 : OFFSETS + index;
  }

  /** The place of what a channel measures in the state. */
  int measured(Channel channel) {
    return channel == Channel.VERTICAL_SPEED ? SPEED : HEIGHT;
  }

  double deviation(Channel channel) {
    return noise.of(channel);
  }

  /** The state before anything is known: the first height that is recorded, at rest. */
  void first(double height, DMatrixRMaj state, DMatrixRMaj covariance) {
    state.zero();
    covariance.zero();
    state.set(HEIGHT, 0, height);
    for (int i = 0; i < OFFSETS; i++) {
      covariance.set(i, i, FIRST_DEVIATION[i] * FIRST_DEVIATION[i]);
    }
    for (int i = OFFSETS; i < size; i++) {
      double apart = i == OFFSETS ? 0 : LEVELS_APART;
      covariance.set(i, i, driftVariance() + apart * apart);
    }
  }

  private double driftVariance() {
    return Math.max(noise.drift() * noise.drift(), 1e-12);
  }

  /** The height from whose first level the others are counted. */
  Channel firstHeight() {
    return heights.get(0);
  }

  /** The matrix that takes the state over a time, s, before or after a step of the first height. */
  void transition(double dt, boolean stepped, DMatrixRMaj result) {
    result.zero();
    result.set(HEIGHT, HEIGHT, 1);
    if (dt < LONGEST_GAP) {
      result.set(HEIGHT, SPEED, dt);
      result.set(HEIGHT, ACCELERATION, dt * dt / 2);
      result.set(SPEED, SPEED, 1);
      result.set(SPEED, ACCELERATION, dt);
      result.set(ACCELERATION, ACCELERATION, 1);
    }
    for (int i = OFFSETS; i < size; i++) {
      result.set(i, i, comesBack(i, stepped) ? FastMath.exp(-dt / noise.driftTime()) : 1);
    }
  }

  /** Whether a slow error comes back to a level that is known. */
  private static boolean comesBack(int offset, boolean stepped) {
    return offset == OFFSETS && !stepped;
  }

  /** The covariance that the noise adds over a time, s: the integral of what jerks do. */
  void addNoise(double dt, boolean stepped, DMatrixRMaj covariance) {
    if (dt < LONGEST_GAP) {
      addJerks(dt, covariance);
    } else {
      for (int i = 0; i < OFFSETS; i++) {
        covariance.add(i, i, FIRST_DEVIATION[i] * FIRST_DEVIATION[i]);
      }
    }
    double times = 2 * dt / noise.driftTime();
    for (int i = OFFSETS; i < size; i++) {
      // what comes back to no level goes as fast at once
      double grown = comesBack(i, stepped) ? -FastMath.expm1(-times) : times;
      covariance.add(i, i, driftVariance() * grown);
    }
  }

  private void addJerks(double dt, DMatrixRMaj covariance) {
    double q = noise.jerk();
    double dt2 = dt * dt;
    double dt3 = dt2 * dt;
    covariance.add(HEIGHT, HEIGHT, q * dt3 * dt2 / 20);
    symmetric(covariance, HEIGHT, SPEED, q * dt2 * dt2 / 8);
    symmetric(covariance, HEIGHT, ACCELERATION, q * dt3 / 6);
    covariance.add(SPEED, SPEED, q * dt3 / 3);
    symmetric(covariance, SPEED, ACCELERATION, q * dt2 / 2);
    covariance.add(ACCELERATION, ACCELERATION, q * dt);
  }

  private static void symmetric(DMatrixRMaj matrix, int row, int column, double value) {
    matrix.add(row, column, value);
    matrix.add(column, row, value);
  }
}
