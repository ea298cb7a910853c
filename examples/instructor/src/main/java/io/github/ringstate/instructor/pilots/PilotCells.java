package io.github.ringstate.instructor.pilots;

import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.Quantile;
import io.github.ringstate.study.Share;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;

/** Quantiles and shares as fields for machines and as texts for people. */
public final class PilotCells {

  private static final int DIGITS = 4;

  private PilotCells() {}

  /**
   * A height for machines.
   *
   * @param quantile the quantile, m
   * @param part which of its three numbers
   * @return the field; nothing if the number is infinite or there is none
   */
  public static Cell feet(Optional<Quantile> quantile, Function<Quantile, Double> part) {
    return quantile
        .map(part)
        .filter(height -> !Double.isInfinite(height))
        .map(height -> Cell.in(Unit.FOOT, height))
        .orElse(Cell.NOTHING);
  }

  /**
   * A share for machines.
   *
   * @param share the share, 0 to 1
   * @return the field; nothing if there is none
   */
  public static Cell share(Optional<BigDecimal> share) {
    return share.map(value -> Cell.number(value.doubleValue(), value.scale())).orElse(Cell.NOTHING);
  }

  /**
   * A part of a share for machines.
   *
   * @param share the share; nothing if there is none
   * @param part which of its three numbers
   * @return the field
   */
  public static Cell share(Optional<Share> share, Function<Share, Double> part) {
    return share.map(part).map(value -> Cell.number(value, DIGITS)).orElse(Cell.NOTHING);
  }

  /**
   * The ends of an interval for people.
   *
   * @param quantile the quantile, m
   * @param low rounds the lower end
   * @param high rounds the upper end
   * @return for instance {@code 160 to 175}; {@code 160 and up} where the upper end is infinite
   */
  public static String band(
      Optional<Quantile> quantile, DoubleUnaryOperator low, DoubleUnaryOperator high) {
    if (quantile.isEmpty()) {
      return "";
    }
    boolean open = Double.isInfinite(quantile.get().high());
    if (Double.isInfinite(quantile.get().low())) {
      // minus infinity: too few pilots; plus infinity: none of it is finite
      return open ? "none" : "up to " + text(high, quantile.get().high());
    }
    return text(low, quantile.get().low())
        + (open ? " and up" : " to " + text(high, quantile.get().high()));
  }

  /**
   * The confidence interval of a height for people, rounded outwards in the steps of the height
   * itself, so that it holds the height.
   *
   * @param quantile the quantile, m
   * @param units the units to speak in
   * @return as {@link #band}
   */
  public static String interval(Optional<Quantile> quantile, UnitSystem units) {
    return interval(quantile, 0, units);
  }

  /**
   * The same of a height needed.
   *
   * @param loss the loss, m
   * @param margin what is to be left below, m
   * @param units the units to speak in
   * @return as {@link #band}
   */
  public static String interval(Optional<Quantile> loss, double margin, UnitSystem units) {
    double within = loss.map(Quantile::within).orElse(0.0);
    double more = units.length().fromSi(margin);
    return band(
        loss,
        low -> Decimals.down(units.down(low, within) + more, 0),
        high -> Decimals.up(units.up(high, within) + more, 0));
  }

  private static String text(DoubleUnaryOperator rounding, double height) {
    return Decimals.fixed(rounding.applyAsDouble(height), 0);
  }

  /**
   * A loss for people, no finer than it is known.
   *
   * @param loss the loss, m, finite
   * @param units the units to speak in
   * @return a number without its unit
   */
  public static String loss(Quantile loss, UnitSystem units) {
    return units.loss(loss.value(), loss.within());
  }

  /**
   * A loss rounded upwards for people, no finer than it is known.
   *
   * @param loss the loss, m, finite
   * @param units the units to speak in
   * @return a number without its unit
   */
  public static String most(Quantile loss, UnitSystem units) {
    return needed(loss, 0, units);
  }

  /**
   * A height needed: the sum of the loss rounded upwards, as {@link #most} has it, and the margin,
   * so that figures beside each other add up.
   *
   * @param loss the loss, m, finite
   * @param margin what is to be left below, m
   * @param units the units to speak in
   * @return a number without its unit
   */
  public static String needed(Quantile loss, double margin, UnitSystem units) {
    return Decimals.fixed(
        Decimals.up(units.up(loss.value(), loss.within()) + units.length().fromSi(margin), 0), 0);
  }

  /**
   * What a share of the pilots lost at most, for people.
   *
   * @param losses the losses
   * @param share the share, between 0 and 1
   * @param units the units to speak in
   * @return a height, or in words why there is none
   */
  public static String loss(PilotLosses losses, double share, UnitSystem units) {
    return losses
        .loss(share)
        .map(loss -> Double.isInfinite(loss.value()) ? losses.failure() : loss(loss, units))
        .orElse("no ring state");
  }

  /**
   * A share in per cent for people, never rounded up to all.
   *
   * @param losses the losses
   * @return for instance {@code 97.4 %}
   */
  public static String arrested(PilotLosses losses) {
    return losses
        .arrestedShare(3)
        .map(share -> Decimals.brief(share.doubleValue() * 100) + " %")
        .orElse("");
  }
}
