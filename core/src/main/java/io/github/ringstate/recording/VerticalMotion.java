package io.github.ringstate.recording;

import java.util.Map;
import java.util.SortedSet;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import org.hipparchus.util.FastMath;

/**
 * Height, vertical speed and acceleration at the times of a recording, from all of its readings,
 * with standard deviations: the smoother of Rauch, Tung and Striebel (Maximum likelihood estimates
 * of linear dynamic systems, AIAA Journal 3(8), 1965, pages 1445 to 1450; from memory).
 */
public final class VerticalMotion {

  private final Recording recording;
  private final Noise noise;
  private final Surprises surprises;
  private final VerticalFilter filter;
  private final int n;
  private final double[] states;

  private final double[] covariances;

  private VerticalMotion(
      Recording recording, Noise noise, Surprises surprises, VerticalFilter filter) {
    this.recording = recording;
    this.noise = noise;
    this.surprises = surprises;
    this.filter = filter;
    n = filter.size();
    states = new double[recording.size() * n];
    covariances = new double[recording.size() * n * n];
    backwards();
  }

  /**
   * Smooths a recording of which the noise is known.
   *
   * @param recording with a height or a pressure altitude
   * @param noise of its instruments and of the flight
   * @return the motion
   * @throws IllegalArgumentException if no height is recorded
   */
  public static VerticalMotion of(Recording recording, Noise noise) {
    Surprises surprises = new Surprises();
    return new VerticalMotion(recording, noise, surprises, filtered(recording, noise, surprises));
  }

  /**
   * Smooths a recording with the noise that makes its readings most likely.
   *
   * @param recording with a height or a pressure altitude
   * @return the motion
   * @throws IllegalArgumentException if no height is recorded
   */
  public static VerticalMotion of(Recording recording) {
    return of(
        recording,
        NoiseEstimate.of(recording, Noise.DRIFT.standard(), Noise.DRIFT_TIME.standard()));
  }

  /** The filter after its run; each step of a level is found once and then known. */
  private static VerticalFilter filtered(Recording recording, Noise noise, Surprises surprises) {
    VerticalFilter filter =
        new VerticalFilter(recording, new VerticalModel(recording, noise), surprises);
    filter.run();
    return filter;
  }

  /** How likely the readings are with a noise. */
  static double logLikelihood(Recording recording, Noise noise) {
    return filtered(recording, noise, new Surprises()).logLikelihood();
  }

  /** The gain of the smoother from time k to k + 1. */
  private final class Backward {
    private final DMatrixRMaj f = new DMatrixRMaj(n, n);
    private final DMatrixRMaj filtered = new DMatrixRMaj(n, n);
    private final DMatrixRMaj predicted = new DMatrixRMaj(n, n);
    private final DMatrixRMaj scratch = new DMatrixRMaj(n, n);
    private final DMatrixRMaj transposed = new DMatrixRMaj(n, n);
    private final DMatrixRMaj solution = new DMatrixRMaj(n, n);
    private final DMatrixRMaj gain = new DMatrixRMaj(n, n);
    private final LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.symmPosDef(n);

    /** Works out the gain P F' (F P F' + Q)^-1, of which the last bracket is kept as predicted. */
    void at(int k) {
      filter.covariance(k, filtered);
      predicted.setTo(filtered);
      filter.predict(k + 1, f, predicted, scratch);
      CommonOps_DDRM.mult(f, filtered, transposed);
      scratch.setTo(predicted); // the solver works in its place
      if (!solver.setA(scratch)) {
        throw new IllegalStateException(
            "the covariance at " + recording.time(k) + " s is not positive");
      }
      solver.solve(transposed, solution);
      CommonOps_DDRM.transpose(solution, gain);
    }
  }

  private void backwards() {
    Backward step = new Backward();
    int last = recording.size() - 1;
    DMatrixRMaj x = new DMatrixRMaj(n, 1);
    DMatrixRMaj p = new DMatrixRMaj(n, n);
    DMatrixRMaj before = new DMatrixRMaj(n, 1);
    DMatrixRMaj difference = new DMatrixRMaj(n, 1);
    DMatrixRMaj spread = new DMatrixRMaj(n, n);
    filter.state(last, x);
    filter.covariance(last, p);
    keep(last, x, p);
    for (int k = last - 1; k >= 0; k--) {
      step.at(k);
      filter.state(k, before);
      CommonOps_DDRM.mult(step.f, before, difference);
      CommonOps_DDRM.subtract(x, difference, difference);
      CommonOps_DDRM.multAdd(step.gain, difference, before);
      x.setTo(before);
      CommonOps_DDRM.subtractEquals(p, step.predicted);
      CommonOps_DDRM.mult(step.gain, p, spread);
      CommonOps_DDRM.multTransB(spread, step.gain, p);
      CommonOps_DDRM.addEquals(p, step.filtered);
      keep(k, x, p);
    }
  }

  private void keep(int k, DMatrixRMaj x, DMatrixRMaj p) {
    System.arraycopy(x.data, 0, states, k * n, n);
    System.arraycopy(p.data, 0, covariances, k * n * n, n * n);
  }

  private double state(int k, int i) {
    return states[k * n + i];
  }

  private double covariance(int k, int i, int j) {
    return covariances[(k * n + i) * n + j];
  }

  private double deviation(int k, int i) {
    return FastMath.sqrt(Math.max(0, covariance(k, i, i)));
  }

  /**
   * What was smoothed.
   *
   * @return the recording, whose times are those of this motion
   */
  public Recording recording() {
    return recording;
  }

  /**
   * The noise that was taken.
   *
   * @return the noise of the instruments and of the flight
   */
  public Noise noise() {
    return noise;
  }

  /**
   * Height above the level of the first height recorded.
   *
   * @param k index of the time
   * @return the height, m
   */
  public double height(int k) {
    return state(k, VerticalModel.HEIGHT);
  }

  /**
   * Vertical speed.
   *
   * @param k index of the time
   * @return the speed, m/s, positive up
   */
  public double verticalSpeed(int k) {
    return state(k, VerticalModel.SPEED);
  }

  /**
   * Vertical acceleration.
   *
   * @param k index of the time
   * @return the acceleration, m/s2, positive up
   */
  public double acceleration(int k) {
    return state(k, VerticalModel.ACCELERATION);
  }

  /**
   * Standard deviation of {@link #height}, its slow error included.
   *
   * @param k index of the time
   * @return the deviation, m
   */
  public double heightDeviation(int k) {
    return deviation(k, VerticalModel.HEIGHT);
  }

  /**
   * Standard deviation of {@link #verticalSpeed}.
   *
   * @param k index of the time
   * @return the deviation, m/s
   */
  public double verticalSpeedDeviation(int k) {
    return deviation(k, VerticalModel.SPEED);
  }

  /**
   * Standard deviation of {@link #acceleration}.
   *
   * @param k index of the time
   * @return the deviation, m/s2
   */
  public double accelerationDeviation(int k) {
    return deviation(k, VerticalModel.ACCELERATION);
  }

  /**
   * Standard deviation of the difference of two heights. It is less than those of the heights,
   * since most of a slow error is in both.
   *
   * @param from index of the earlier time
   * @param to index of the later time, or the same
   * @return the deviation, m
   */
  public double heightDifferenceDeviation(int from, int to) {
    if (from > to) {
      throw new IllegalArgumentException("time " + from + " is not before time " + to);
    }
    // the covariance of the states at two times is the product of the gains between them and the
    // covariance at the later (Rauch, Tung and Striebel, 1965, from memory); only the heights count
    Backward step = new Backward();
    DMatrixRMaj row = new DMatrixRMaj(1, n);
    DMatrixRMaj next = new DMatrixRMaj(1, n);
    row.set(0, VerticalModel.HEIGHT, 1);
    for (int k = from; k < to; k++) {
      step.at(k);
      CommonOps_DDRM.mult(row, step.gain, next);
      row.setTo(next);
    }
    double shared = 0;
    for (int i = 0; i < n; i++) {
      shared += row.get(0, i) * covariance(to, i, VerticalModel.HEIGHT);
    }
    double variance =
        covariance(from, VerticalModel.HEIGHT, VerticalModel.HEIGHT)
            + covariance(to, VerticalModel.HEIGHT, VerticalModel.HEIGHT)
            - 2 * shared;
    return FastMath.sqrt(Math.max(0, variance));
  }

  /**
   * Where the level of a height stepped, as that of a receiver does when it gains or loses a
   * satellite. The motion goes through a step as if it had not been.
   *
   * @return the indices of the first readings after each step, by channel
   */
  public Map<Channel, SortedSet<Integer>> steps() {
    return surprises.steps();
  }

  /**
   * By how much the level of a height changed before a reading.
   *
   * @param channel a height that is recorded
   * @param k index of the first reading after the change, 1 at least, as {@link #steps} tells it
   * @return the change, m; positive if heights read from there on are too great beside those before
   * @throws IllegalArgumentException if the channel is no height of the recording
   */
  public double levelChange(Channel channel, int k) {
    int offset = filter.offset(channel);
    if (offset < 0) {
      throw new IllegalArgumentException(channel + " is no height of this recording");
    }
    return state(k, offset) - state(k - 1, offset);
  }

  /**
   * Readings that fit nothing around them and were left out.
   *
   * @return their indices, by channel
   */
  public Map<Channel, SortedSet<Integer>> outliers() {
    return surprises.outliers();
  }

  /**
   * How much further off than their noise the readings of a time are, those left out among them. A
   * reading far off counts as five standard deviations. Deviations from readings that are further
   * off than was thought are to be multiplied by it, which is common where errors are not known
   * well (the scale factor of the Particle Data Group, Review of Particle Physics, section 5.2 of
   * the introduction; from memory).
   *
   * @param from index of the first time
   * @param to index of the last time, or the same
   * @return the root of the mean square of readings less what was smoothed, over their standard
   *     deviations, and no less than 1
   */
  public double scale(int from, int to) {
    double sum = 0;
    int count = 0;
    for (Channel channel : filter.channels()) {
      for (int k = from; k <= to; k++) {
        double off = recording.value(channel, k) - smoothed(channel, k);
        if (!Double.isNaN(off)) {
          double ratio = Math.min(Math.abs(off) / noise.of(channel), Surprises.GATE);
          sum += ratio * ratio;
          count++;
        }
      }
    }
    return count == 0 ? 1 : Math.max(1, FastMath.sqrt(sum / count));
  }

  /** What a channel would have read without noise. */
  private double smoothed(Channel channel, int k) {
    return channel == Channel.VERTICAL_SPEED
        ? verticalSpeed(k)
        : height(k) + state(k, filter.offset(channel));
  }
}
