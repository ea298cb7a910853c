package io.github.ringstate.instructor.boundary;

import io.github.ringstate.quantity.Unit;
import java.util.Optional;

/**
 * The boundaries that were found.
 *
 * @param chart the boundaries step by step
 * @param drawn the same for a picture; empty unless asked for
 * @param path the way of the flight through them; empty for none
 */
record BoundaryResult(Chart chart, Optional<Chart> drawn, Optional<FlightPath> path) {

  private static final double FINE_STEP = Unit.KNOT.toSi(0.1);

  static BoundaryResult of(BoundaryRequest request) {
    return new BoundaryResult(
        Chart.of(request.conditions(), request.limits(), request.step()),
        request.drawn()
            ? Optional.of(Chart.closed(request.conditions(), request.limits(), FINE_STEP))
            : Optional.empty(),
        request.flight().map(flight -> FlightPath.fly(request.conditions(), flight)));
  }

  /** Whether the flight is of a recovery that is taken for a way out and is none. */
  boolean isMistaken() {
    return path.filter(flown -> flown.recovery().isMistaken()).isPresent();
  }
}
