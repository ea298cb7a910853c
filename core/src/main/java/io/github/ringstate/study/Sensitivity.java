package io.github.ringstate.study;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.quantity.Quantity;
import java.util.Objects;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;

/**
 * How a result changes with a number: its first derivative, with an estimate of its error.
 *
 * <p>Central differences with steps that become shorter, extrapolated to a step of zero (Ridders,
 * Advances in Engineering Software 4, 1982; from memory). The step is controlled: of all
 * extrapolations the one counts that agrees best with its neighbours, so that neither a step that
 * is too long nor the noise of one that is too short spoils it. Where the result has a kink at the
 * number, as where another phase ends the descent, there is no derivative, and what is found lies
 * between those on either side.
 *
 * @param value the derivative, in the unit of the result per unit of the number
 * @param error an estimate of its error, in the same unit; not a bound
 */
public record Sensitivity(double value, double error) {

  /** Part of the message where an encounter has no loss; the number stands before it. */
  public static final String NO_LOSS = " has no altitude loss: the descent ended with ";

  private static final int STEPS = 10;

  /** By how much each step is shorter than the one before. */
  private static final double SHORTER = 1.6;

  /** First step over the width of the range, unless the value lies nearer to an end of it. */
  private static final double PART_OF_RANGE = 0.05;

  /** Tolerance of the flights of {@link #ofLoss}. */
  private static final double TOLERANCE = 1e-11;

  /**
   * The derivative of a function.
   *
   * @param function the function, smooth about the point
   * @param at the point
   * @param firstStep the longest step to either side, positive
   * @return the derivative
   */
  public static Sensitivity of(DoubleUnaryOperator function, double at, double firstStep) {
    Objects.requireNonNull(function, "function");
    if (!(firstStep > 0)) {
      throw new IllegalArgumentException("a step must be positive, not " + firstStep);
    }
    double[][] table = new double[STEPS][STEPS];
    double step = firstStep;
    Sensitivity best = new Sensitivity(Double.NaN, Double.POSITIVE_INFINITY);
    for (int i = 0; i < STEPS; i++) {
      table[0][i] =
          (function.applyAsDouble(at + step) - function.applyAsDouble(at - step)) / (2 * step);
      double factor = SHORTER * SHORTER;
      for (int j = 1; j <= i; j++) {
        table[j][i] = (factor * table[j - 1][i] - table[j - 1][i - 1]) / (factor - 1);
        factor *= SHORTER * SHORTER;
        double error =
            Math.max(
                Math.abs(table[j][i] - table[j - 1][i]),
                Math.abs(table[j][i] - table[j - 1][i - 1]));
        if (error <= best.error) {
          best = new Sensitivity(table[j][i], error);
        }
      }
      step /= SHORTER;
    }
    return best;
  }

  /**
   * How the altitude loss changes with a number, by precise flights.
   *
   * @param encounter the encounter with that number, for instance {@code mass ->
   *     base.withCraft(craft.with(Helicopter.MASS, mass))}
   * @param number what the number is, its unit and its range, in the unit in which the encounter is
   *     asked for
   * @param at the value at which the sensitivity is wanted, within the range and not at its ends
   * @return the derivative, m per unit of the number
   * @throws IllegalArgumentException if a descent that is flown for it is not arrested
   */
  public static Sensitivity ofLoss(
      DoubleFunction<Encounter> encounter, Quantity number, double at) {
    Objects.requireNonNull(encounter, "encounter");
    number.check(at);
    double room = Math.min(at - number.low(), number.high() - at);
    double step = Math.min(PART_OF_RANGE * (number.high() - number.low()), room);
    Simulator simulator = Simulator.dormandPrince(TOLERANCE);
    return of(
        value -> {
          Outcome outcome = encounter.apply(value).fly(simulator, null);
          if (outcome.ending() != Ending.ARRESTED) {
            throw new IllegalArgumentException(
                number.name() + " " + value + NO_LOSS + outcome.ending().label());
          }
          return outcome.altitudeLoss().orElseThrow();
        },
        at,
        step);
  }
}
