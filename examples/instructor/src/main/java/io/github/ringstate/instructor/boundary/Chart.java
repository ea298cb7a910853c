package io.github.ringstate.instructor.boundary;

import io.github.ringstate.inflow.BoundaryCriterion;
import io.github.ringstate.inflow.DescentLimits;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.RingBand;
import io.github.ringstate.inflow.TipVortex;
import io.github.ringstate.inflow.WakeTransport;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.quantity.ParameterSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The boundaries of the ring state.
 *
 * <p>The disc is taken as level, so that airspeed is edgewise and the rate of descent axial. The
 * chart ends at the first step of airspeed at which no closed boundary is left; a criterion that
 * does not close is cut off there.
 *
 * @param conditions craft, mass and air
 * @param step step of airspeed, m/s
 * @param criteria the criteria's names
 * @param rows for each criterion each airspeed at which it has a boundary
 */
record Chart(Conditions conditions, double step, List<String> criteria, List<BoundaryRow> rows) {

  Chart {
    criteria = List.copyOf(criteria);
    rows = List.copyOf(rows);
  }

  /** Halvings of the last step of a closing boundary in a picture. */
  private static final int HALVINGS = 20;

  static Chart of(Conditions conditions, ParameterSet limits, double step) {
    return of(conditions, limits, step, false);
  }

  /**
   * The same for a picture: a boundary that closes is followed to where it does, between two steps.
   *
   * @param conditions craft, mass and air
   * @param limits the limits that are taught
   * @param step step of airspeed, m/s
   * @return the boundaries
   */
  static Chart closed(Conditions conditions, ParameterSet limits, double step) {
    return of(conditions, limits, step, true);
  }

  private static Chart of(Conditions conditions, ParameterSet limits, double step, boolean closed) {
    double hoverInduced = conditions.hoverInduced();
    List<BoundaryCriterion> criteria =
        List.of(
            new HeaveDamping(conditions.craft().inflow()),
            WakeTransport.standard(),
            new TipVortex(),
            DescentLimits.of(hoverInduced, limits));
    double reach =
        criteria.stream()
            .map(BoundaryCriterion::reach)
            .flatMapToDouble(OptionalDouble::stream)
            .filter(Double::isFinite)
            .max()
            .orElse(0);
    int steps = (int) Math.ceil(reach * hoverInduced / step);
    List<BoundaryRow> rows = new ArrayList<>();
    for (BoundaryCriterion criterion : criteria) {
      double last = Double.NaN;
      for (int i = 0; i <= steps; i++) {
        Optional<BoundaryRow> row = at(criterion, i * step, hoverInduced);
        if (row.isPresent()) {
          rows.add(row.get());
          last = i * step;
        }
      }
      if (closed && last < steps * step) {
        rows.addAll(nose(criterion, last, last + step, hoverInduced));
      }
    }
    return new Chart(
        conditions, step, criteria.stream().map(BoundaryCriterion::name).toList(), rows);
  }

  /** Ever nearer to where a boundary closes. */
  private static List<BoundaryRow> nose(
      BoundaryCriterion criterion, double inside, double outside, double hoverInduced) {
    List<BoundaryRow> rows = new ArrayList<>();
    double low = inside;
    double high = outside;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      Optional<BoundaryRow> row = at(criterion, middle, hoverInduced);
      if (row.isPresent()) {
        rows.add(row.get());
        low = middle;
      } else {
        high = middle;
      }
    }
    return rows;
  }

  private static Optional<BoundaryRow> at(
      BoundaryCriterion criterion, double airspeed, double hoverInduced) {
    return criterion
        .band(airspeed / hoverInduced)
        .map(band -> row(criterion.name(), airspeed, band, hoverInduced));
  }

  private static BoundaryRow row(
      String criterion, double airspeed, RingBand band, double hoverInduced) {
    OptionalDouble exit = band.exit();
    return new BoundaryRow(
        criterion,
        airspeed,
        -band.onset() * hoverInduced,
        exit.isPresent() ? OptionalDouble.of(-exit.getAsDouble() * hoverInduced) : exit);
  }

  /**
   * The slowest descent with which a craft is in the ring state below an airspeed, by the criterion
   * that has it earliest; the taught limits are none.
   *
   * @param airspeed the airspeed, m/s
   * @return the rate of descent, m/s; empty if there is no ring state
   */
  OptionalDouble slowest(double airspeed) {
    return rows.stream()
        .filter(row -> !row.criterion().equals(DescentLimits.NAME) && row.airspeed() <= airspeed)
        .mapToDouble(BoundaryRow::onset)
        .min();
  }

  /**
   * The airspeeds of the chart.
   *
   * @return every airspeed at which a criterion has a boundary, m/s, ascending
   */
  List<Double> airspeeds() {
    return rows.stream().map(BoundaryRow::airspeed).distinct().sorted().toList();
  }

  /**
   * A criterion's boundary at an airspeed.
   *
   * @param criterion the criterion's name
   * @param airspeed one of {@link #airspeeds}
   * @return the boundary, or empty if it has none there
   */
  Optional<BoundaryRow> at(String criterion, double airspeed) {
    return rows.stream()
        .filter(row -> row.criterion().equals(criterion) && row.airspeed() == airspeed)
        .findFirst();
  }
}
