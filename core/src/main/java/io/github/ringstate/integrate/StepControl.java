package io.github.ringstate.integrate;

/**
 * How long the next step is: as long as the error of the last one allows, and as stability allows
 * for the decay that is known. Only where the state is all but steady, and stability is all that
 * keeps steps short, are they longer.
 */
final class StepControl {

  /** Decay times step that the method bears; its limit of stability is 2.51. */
  static final double STABLE = 2.3;

  /** Error of a step, over the tolerance, below which the state is all but steady. */
  private static final double ALL_BUT_STEADY = 1e-3;

  private static final double FIRST_STEP = 0.02;
  private static final double MAXIMUM_STEP = 0.5;
  private static final double MINIMUM_STEP = 1e-6;
  private static final double SAFETY = 0.9;
  private static final double MINIMUM_FACTOR = 0.2;
  private static final double MAXIMUM_FACTOR = 3;

  private double step;
  private boolean steady;

  /** Begins anew. */
  void start() {
    goOn(FIRST_STEP, false);
  }

  /** Goes on as it was at a checkpoint. */
  void goOn(double with, boolean wasSteady) {
    step = with;
    steady = wasSteady;
  }

  double step() {
    return step;
  }

  boolean steady() {
    return steady;
  }

  /** The step to try where the stiff quantity decays at a rate. */
  double wanted(double decay) {
    return steady ? step : Math.min(step, STABLE / decay);
  }

  /** The part of a decay that a step of the plain method would not bear. */
  static double excess(double decay, double h) {
    return Math.max(0, decay - STABLE / h);
  }

  /** Whether a step is to be tried again, shorter, for its error over the tolerance. */
  boolean refuses(double h, double error) {
    if (error <= 1 || h <= MINIMUM_STEP) {
      return false;
    }
    step = Math.max(h * factor(error), MINIMUM_STEP);
    return true;
  }

  /** Takes note of a step that was taken whole. */
  void taken(double h, double error) {
    step = Math.min(Math.max(h * factor(error), MINIMUM_STEP), MAXIMUM_STEP);
    steady = error < ALL_BUT_STEADY;
  }

  /** How much longer or shorter the next step is: the cube root of what the error leaves. */
  private static double factor(double error) {
    if (!(error > 0 && error <= Double.MAX_VALUE)) {
      return error == 0 ? MAXIMUM_FACTOR : MINIMUM_FACTOR;
    }
    double factor = SAFETY / cubeRoot(error);
    return Math.min(Math.max(factor, MINIMUM_FACTOR), MAXIMUM_FACTOR);
  }

  /**
   * Cube root to about one per cent, all that a step size needs: from the exponent, then Newton.
   */
  private static double cubeRoot(double x) {
    double r = Double.longBitsToDouble(Double.doubleToRawLongBits(x) / 3 + 0x2A9F7893782DA1CEL);
    return r - (r * r * r - x) / (3 * r * r);
  }
}
