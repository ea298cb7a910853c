package io.github.ringstate.integrate;

import io.github.ringstate.integrate.Problem.Point;

class PrecisePropagatorTest extends PropagatorContract {

  @Override
  Propagator<String, Point> propagator(Problem problem, double tolerance) {
    return new PrecisePropagator<>(DormandPrince::new, tolerance, 0);
  }

  @Override
  double tight() {
    return 1e-10;
  }

  /** Absolute and relative tolerances add up, and the fall is 300 m long. */
  @Override
  double errorOverTolerance() {
    return 1000;
  }

  @Override
  double timeError() {
    return 1e-8;
  }
}
