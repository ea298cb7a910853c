package io.github.ringstate.instructor.boundary;

import io.github.ringstate.inflow.BoundaryCriterion;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.RingBand;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.TipVortex;
import io.github.ringstate.inflow.WakeTransport;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The boundaries of the ring state in knots and feet per minute.
 *
 * <p>The disc is taken as level, so that airspeed is edgewise and the rate of descent axial. The
 * chart ends at the first step of airspeed at which no closed boundary is left; a criterion that
 * does not close is cut off there.
 *
 * @param conditions craft, mass and air
 * @param stepKt step of airspeed, kt
 * @param criteria the criteria's names
 * @param rows for each criterion each airspeed at which it has a boundary
 */
record Chart(Conditions conditions, double stepKt, List<String> criteria, List<BoundaryRow> rows) {

  Chart {
    criteria = List.copyOf(criteria);
    rows = List.copyOf(rows);
  }

  /** Halvings of the last step of a closing boundary in a picture. */
  private static final int HALVINGS = 20;

  static Chart of(Conditions conditions, double stepKt) {
    return of(conditions, stepKt, false);
  }

  /**
   * The same for a picture: a boundary that closes is followed to where it does, between two steps.
   *
   * @param conditions craft, mass and air
   * @param stepKt step of airspeed, kt
   * @return the boundaries
   */
  static Chart closed(Conditions conditions, double stepKt) {
    return of(conditions, stepKt, true);
  }

  private static Chart of(Conditions conditions, double stepKt, boolean closed) {
    List<BoundaryCriterion> criteria =
        List.of(
            new HeaveDamping(RingStateInflow.standard()),
            WakeTransport.standard(),
            new TipVortex());
    double hoverInduced = conditions.hoverInduced();
    double reach =
        criteria.stream()
            .map(BoundaryCriterion::reach)
            .flatMapToDouble(OptionalDouble::stream)
            .filter(Double::isFinite)
            .max()
            .orElse(0);
    int steps = (int) Math.ceil(Unit.KNOT.fromSi(reach * hoverInduced) / stepKt);
    List<BoundaryRow> rows = new ArrayList<>();
    for (BoundaryCriterion criterion : criteria) {
      double last = Double.NaN;
      for (int i = 0; i <= steps; i++) {
        Optional<BoundaryRow> row = at(criterion, i * stepKt, hoverInduced);
        if (row.isPresent()) {
          rows.add(row.get());
          last = i * stepKt;
        }
      }
      if (closed && last < steps * stepKt) {
        rows.addAll(nose(criterion, last, last + stepKt, hoverInduced));
      }
    }
    return new Chart(
        conditions, stepKt, criteria.stream().map(BoundaryCriterion::name).toList(), rows);
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
        .band(Unit.KNOT.toSi(airspeed) / hoverInduced)
        .map(band -> row(criterion.name(), airspeed, band, hoverInduced));
  }

  private static BoundaryRow row(
      String criterion, double airspeed, RingBand band, double hoverInduced) {
    OptionalDouble exit = band.exit();
    return new BoundaryRow(
        criterion,
        airspeed,
        Unit.FOOT_PER_MINUTE.fromSi(-band.onset() * hoverInduced),
        exit.isPresent()
            ? OptionalDouble.of(Unit.FOOT_PER_MINUTE.fromSi(-exit.getAsDouble() * hoverInduced))
            : exit);
  }

  /**
   * The airspeeds of the chart.
   *
   * @return every airspeed at which a criterion has a boundary, kt, ascending
   */
  List<Double> airspeeds() {
    return rows.stream().map(BoundaryRow::airspeedKt).distinct().sorted().toList();
  }

  /**
   * A criterion's boundary at an airspeed.
   *
   * @param criterion the criterion's name
   * @param airspeedKt one of {@link #airspeeds}
   * @return the boundary, or empty if it has none there
   */
  Optional<BoundaryRow> at(String criterion, double airspeedKt) {
    return rows.stream()
        .filter(row -> row.criterion().equals(criterion) && row.airspeedKt() == airspeedKt)
        .findFirst();
  }
}
