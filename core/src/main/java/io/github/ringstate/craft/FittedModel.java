package io.github.ringstate.craft;

import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.quantity.IncompatibleValuesException;
import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.UncertainNumbers;
import io.github.ringstate.quantity.Unit;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.util.FastMath;

/**
 * What a fit to recorded flights says of a craft: numbers of the ring state and of the craft, with
 * what the recordings leave open of them.
 *
 * @param ring the numbers of the ring state, {@link RingStateInflow#PARAMETERS}; those that were
 *     fitted at their middle values
 * @param numbers the fitted numbers, of the ring state or of the craft
 * @param encounters how many recorded encounters it was fitted to, at least 1
 * @param recordings the recordings, by name
 * @param date the day of the fit, year-month-day, or a word that it is not known
 * @param revision the revision of the model that was fitted
 * @param formDeviation standard deviation of the logarithm of a loss for the form of the model, 0
 *     to 1
 */
public record FittedModel(
    ParameterSet ring,
    UncertainNumbers numbers,
    int encounters,
    List<String> recordings,
    String date,
    String revision,
    double formDeviation) {

  /** What {@code formDeviation} may be. */
  public static final Quantity FORM_DEVIATION = new Quantity("form deviation", Unit.ONE, 0, 1);

  /** So often a draw is brought halfway to the middle before the middle itself is taken. */
  private static final int HALVINGS = 20;

  /** Checks the numbers. */
  public FittedModel {
    ring = ring.only(RingStateInflow.PARAMETERS);
    recordings = List.copyOf(recordings);
    FORM_DEVIATION.check(formDeviation);
    if (!(encounters >= 1)) {
      throw new IllegalArgumentException("a fit takes at least 1 encounter, not " + encounters);
    }
    for (Parameter parameter : numbers.parameters()) {
      if (!RingStateInflow.PARAMETERS.contains(parameter)
          && !Helicopter.STANDARD_NUMBERS.parameters().contains(parameter)) {
        throw new IllegalArgumentException(
            "neither the ring state nor a craft has a " + parameter.name());
      }
    }
  }

  /**
   * A craft with values for the fitted numbers.
   *
   * @param craft the craft; its own fitted model plays no part
   * @param values a value for each of {@link #numbers}, in its parameter's own unit
   * @return the craft, whose ring state has the values too
   * @throws OutOfRangeException if a value breaks a limit of the craft
   * @throws IncompatibleValuesException if the values make no ring state
   */
  public Helicopter with(Helicopter craft, double... values) {
    ParameterSet ringNumbers = ring;
    Helicopter changed = craft;
    for (int i = 0; i < values.length; i++) {
      Parameter parameter = numbers.parameters().get(i);
      if (RingStateInflow.PARAMETERS.contains(parameter)) {
        ringNumbers = ringNumbers.with(parameter, values[i]);
      } else {
        changed = changed.with(parameter, values[i]);
      }
    }
    return changed.withFitted(
        new FittedModel(
            ringNumbers, numbers, encounters, recordings, date, revision, formDeviation));
  }

  /**
   * A craft with the fitted numbers drawn. Where they are incompatible with each other or with the
   * craft's other numbers, the draw is brought halfway to the middle values until they are not.
   *
   * @param craft the craft with the middle values
   * @param normals a standard normal number for each of {@link #numbers}
   * @return the craft with drawn numbers
   */
  public Helicopter drawn(Helicopter craft, double... normals) {
    double[] drawn = normals.clone();
    for (int i = 0; i < HALVINGS; i++) {
      try {
        Helicopter changed = with(craft, numbers.draw(drawn));
        changed.inflow();
        return changed;
      } catch (OutOfRangeException | IncompatibleValuesException beyond) {
        drawn = Arrays.stream(drawn).map(normal -> normal / 2).toArray();
      }
    }
    return craft;
  }

  /**
   * What the loss of a fitted craft is multiplied by for the form of the model. That forms differ
   * by a factor is itself a simplification; a discrepancy of the model beside its numbers is after
   * M. C. Kennedy and A. O'Hagan, Bayesian calibration of computer models, Journal of the Royal
   * Statistical Society B 63, 2001 (from memory).
   *
   * @param normal a standard normal number
   * @return the factor, to either side of 1: a craft may lose more than the model as well as less
   */
  public double formFactor(double normal) {
    return FastMath.exp(formDeviation * normal);
  }
}
