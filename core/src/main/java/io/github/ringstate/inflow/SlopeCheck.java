package io.github.ringstate.inflow;

import io.github.ringstate.quantity.OutOfRangeException;
import java.util.Locale;
import java.util.Optional;

/**
 * Whether the slope that an inflow model states is that of its own total inflow. One who changes
 * the induced velocity of a model and forgets the slope would move the flight and leave the
 * boundary, and the table of the model, where they were.
 *
 * <p>The models of this package are not asked again: their tests hold them to more.
 */
public final class SlopeCheck {

  /** Edgewise speeds of the check, in hover induced velocities. */
  private static final double[] EDGEWISE = {0, 0.31, 0.97};

  /** Axial speeds of the check, in hover induced velocities: off the round numbers of most fits. */
  private static final double[] AXIAL = {
    -1.87, -1.63, -1.41, -1.23, -1.04, -0.88, -0.71, -0.57, -0.42, -0.27, -0.13, 0.06, 0.44
  };

  /**
   * Step of the difference: short against the bends of a curve, and as long as that of a slope
   * taken by a difference, which near a corner lies between the slopes of both sides.
   */
  private static final double STEP = 1e-3;

  /** How far, as a share of one more than the slope, it may stray: room for a numerical slope. */
  private static final double TOLERANCE = 0.02;

  private SlopeCheck() {}

  /**
   * Compares stated slopes with differences of the total inflow to both sides. At a corner, or a
   * jump, of the model's curve any slope between those of the two sides will do. Speeds outside the
   * model's ranges, or at which it does not hold, are left out.
   *
   * @param model an inflow model, of whatever maker
   * @return the first fault, as what may follow the model's name, or nothing
   */
  public static Optional<String> fault(InflowModel model) {
    return model.getClass().getPackage() == SlopeCheck.class.getPackage()
        ? Optional.empty()
        : compare(model);
  }

  static Optional<String> compare(InflowModel model) {
    for (double edgewise : EDGEWISE) {
      for (double axial : AXIAL) {
        Optional<String> fault = fault(model, edgewise, axial);
        if (fault.isPresent()) {
          return fault;
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<String> fault(InflowModel model, double edgewise, double axial) {
    if (!model.edgewiseRange().holds(edgewise)
        || !model.axialRange().holds(axial - STEP)
        || !model.axialRange().holds(axial + STEP)) {
      return Optional.empty();
    }
    double below;
    double above;
    double stated;
    try {
      double here = model.total(edgewise, axial);
      below = (here - model.total(edgewise, axial - STEP)) / STEP;
      above = (model.total(edgewise, axial + STEP) - here) / STEP;
      stated = model.slope(edgewise, axial);
    } catch (OutOfRangeException outside) {
      return Optional.empty();
    }
    double room = TOLERANCE * (1 + Math.abs(stated));
    if (!Double.isFinite(below + above)
        || Double.isInfinite(stated)
        || (stated >= Math.min(below, above) - room && stated <= Math.max(below, above) + room)) {
      return Optional.empty();
    }
    return Optional.of(
        String.format(
            Locale.ROOT,
            "states a slope of %.3g at edgewise speed %.2f and axial speed %.2f (in hover induced"
                + " velocities), where its total inflow has one of %.3g; who changes the induced"
                + " velocity must change the slope with it",
            stated,
            edgewise,
            axial,
            (below + above) / 2));
  }
}
