package io.github.ringstate.recording;

import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.hipparchus.util.FastMath;

/**
 * The Kalman filter, forwards over a recording. Readings of one time are taken one after the other,
 * which is the same as all at once while their noises are independent. The covariance is brought up
 * to date in Joseph's form, which keeps it symmetric and positive.
 */
final class VerticalFilter {

  private final Recording recording;
  private final VerticalModel model;
  private final Surprises surprises;
  private final int n;

  /** State and covariance after the readings of each time, one after the other. */
  private final double[] states;

  private final double[] covariances;

  private final DMatrixRMaj x;
  private final DMatrixRMaj p;
  private final DMatrixRMaj f;
  private final DMatrixRMaj work;
  private final DMatrixRMaj column;
  private final double[] gain;
  private final double[] logLikelihoods;
  private double logLikelihood;

  VerticalFilter(Recording recording, VerticalModel model, Surprises surprises) {
    this.recording = recording;
    this.model = model;
    this.surprises = surprises;
    n = model.size;
    states = new double[recording.size() * n];
    covariances = new double[recording.size() * n * n];
    logLikelihoods = new double[recording.size()];
    x = new DMatrixRMaj(n, 1);
    p = new DMatrixRMaj(n, n);
    f = new DMatrixRMaj(n, n);
    work = new DMatrixRMaj(n, n);
    column = new DMatrixRMaj(n, 1);
    gain = new double[n];
  }

  /** Goes over all times. Where a step of a level is found, it goes on from before the step. */
  void run() {
    int k = 0;
    while (k < recording.size()) {
      int again = reading(k);
      k = again < 0 ? k + 1 : again;
    }
  }

  /** Takes the readings of a time; where to go on if they show a step before them, or negative. */
  private int reading(int k) {
    if (k == 0) {
      logLikelihood = 0;
      model.first(firstHeight(), x, p);
    } else {
      logLikelihood = logLikelihoods[k - 1];
      state(k - 1, x);
      covariance(k - 1, p);
      predict(k, f, p, work);
      CommonOps_DDRM.mult(f, x, column);
      x.setTo(column);
    }
    for (Channel channel : model.channels()) {
      int step = take(channel, k);
      if (step >= 0) {
        return step;
      }
    }
    System.arraycopy(x.data, 0, states, k * n, n);
    System.arraycopy(p.data, 0, covariances, k * n * n, n * n);
    logLikelihoods[k] = logLikelihood;
    return -1;
  }

  private double firstHeight() {
    for (int k = 0; k < recording.size(); k++) {
      for (Channel channel : model.channels()) {
        double value = recording.value(channel, k);
        if (model.offset(channel) >= 0 && !Double.isNaN(value)) {
          return value;
        }
      }
    }
    throw new IllegalStateException("a channel of heights holds no height");
  }

  /** Takes a covariance from the time before to time k. */
  void predict(int k, DMatrixRMaj transition, DMatrixRMaj covariance, DMatrixRMaj scratch) {
    double dt = recording.time(k) - recording.time(k - 1);
    boolean stepped = surprises.hasStepped(model.firstHeight(), k);
    model.transition(dt, stepped, transition);
    CommonOps_DDRM.mult(transition, covariance, scratch);
    CommonOps_DDRM.multTransB(scratch, transition, covariance);
    model.addNoise(dt, stepped, covariance);
    for (Channel channel : model.channels()) {
      int offset = model.offset(channel);
      if (offset >= 0) {
        covariance.add(offset, offset, surprises.step(channel, k));
      }
    }
  }

  /**
   * One reading: the state expects the sum of what is measured and its slow error. The time from
   * which to go on if it shows a step, or negative.
   */
  private int take(Channel channel, int k) {
    double reading = recording.value(channel, k);
    if (Double.isNaN(reading)) {
      return -1;
    }
    int a = model.measured(channel);
    int b = model.offset(channel);
    double expected = x.get(a, 0) + (b < 0 ? 0 : x.get(b, 0));
    for (int i = 0; i < n; i++) {
      gain[i] = p.get(i, a) + (b < 0 ? 0 : p.get(i, b));
    }
    double deviation = model.deviation(channel);
    double variance = gain[a] + (b < 0 ? 0 : gain[b]) + deviation * deviation;
    double innovation = reading - expected;
    double ratio = innovation / FastMath.sqrt(variance);
    logLikelihood -=
        (FastMath.log(2 * FastMath.PI * variance)
                + FastMath.min(ratio * ratio, Surprises.GATE * Surprises.GATE))
            / 2;
    boolean taken = surprises.takes(channel, k, innovation, ratio, deviation);
    int step = surprises.stepFound();
    if (step >= 0) {
      return step;
    }
    if (taken) {
      for (int i = 0; i < n; i++) {
        gain[i] /= variance;
        x.add(i, 0, gain[i] * innovation);
      }
      update(a, b, deviation * deviation);
    }
    return -1;
  }

  /** (I - K H) P (I - K H)' + K R K', where H has a one at a and at b. */
  private void update(int a, int b, double noise) {
    CommonOps_DDRM.setIdentity(f);
    for (int i = 0; i < n; i++) {
      f.add(i, a, -gain[i]);
      if (b >= 0) {
        f.add(i, b, -gain[i]);
      }
    }
    CommonOps_DDRM.mult(f, p, work);
    CommonOps_DDRM.multTransB(work, f, p);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        p.add(i, j, gain[i] * gain[j] * noise);
      }
    }
  }

  int size() {
    return n;
  }

  /** The channels that say something of vertical motion. */
  List<Channel> channels() {
    return model.channels();
  }

  /** The place of a channel's slow error in the state; negative if it has none. */
  int offset(Channel channel) {
    return model.offset(channel);
  }

  /** The logarithm of the likelihood of all readings, each counting no worse than at the gate. */
  double logLikelihood() {
    return logLikelihood;
  }

  /** The state after the readings of time k. */
  void state(int k, DMatrixRMaj result) {
    System.arraycopy(states, k * n, result.data, 0, n);
  }

  /** The covariance after the readings of time k. */
  void covariance(int k, DMatrixRMaj result) {
    System.arraycopy(covariances, k * n * n, result.data, 0, n * n);
  }
}
