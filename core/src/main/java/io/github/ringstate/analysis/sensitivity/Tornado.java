package io.github.ringstate.analysis.sensitivity;

import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.study.Sensitivity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How the altitude loss changes with one number at a time.
 *
 * @param base the altitude loss of the base, m
 * @param bars one for each input, the longest first
 */
public record Tornado(double base, List<Bar> bars) {

  /**
   * What one number does.
   *
   * @param input the number and its range
   * @param low the altitude loss at the lower end of the range, m; empty if the descent is not
   *     arrested there, or cannot begin
   * @param high the altitude loss at the upper end, m; empty likewise
   * @param derivative the derivative, m per unit of the input, with an estimate of its error; empty
   *     if a descent that is flown for it is not arrested
   * @param secondWay the same by the variational equations, see the package; empty likewise
   */
  public record Bar(
      Input input,
      OptionalDouble low,
      OptionalDouble high,
      Optional<Sensitivity> derivative,
      OptionalDouble secondWay) {

    /**
     * How far the loss goes over the range.
     *
     * @return the difference of the losses at the ends, m, not negative; infinite if one is missing
     */
    public double length() {
      return low.isPresent() && high.isPresent()
          ? Math.abs(high.getAsDouble() - low.getAsDouble())
          : Double.POSITIVE_INFINITY;
    }

    /**
     * Whether the two ways to the derivative agree: within their estimated error, a thousandth of
     * the derivative, or a millimetre over the range.
     *
     * @return false if they differ, or one is missing, as at a kink
     */
    public boolean agrees() {
      if (derivative.isEmpty() || secondWay.isEmpty()) {
        return false;
      }
      Sensitivity one = derivative.get();
      double width = input.range().high() - input.range().low();
      double let =
          Math.max(
              Math.max(2 * one.error(), 1e-3 * Math.abs(one.value())), LEAST_DIFFERENCE / width);
      return Math.abs(one.value() - secondWay.getAsDouble()) <= let;
    }
  }

  /** A difference of the loss over a range that counts as none, m. */
  private static final double LEAST_DIFFERENCE = 1e-3;

  private static final double TOLERANCE = 1e-11;

  /** Copies the list. */
  public Tornado {
    bars = List.copyOf(bars);
  }

  /**
   * Changes each number of an encounter by itself.
   *
   * @param encounter the encounter
   * @param inputs the numbers
   * @return the bars
   * @throws IllegalArgumentException if the descent of the encounter itself is not arrested
   */
  public static Tornado of(Encounter encounter, List<Input> inputs) {
    Simulator precise = Simulator.dormandPrince(TOLERANCE);
    double base =
        loss(encounter, precise)
            .orElseThrow(() -> new IllegalArgumentException("the descent is not arrested"));
    List<Bar> bars = new ArrayList<>();
    for (Input input : inputs) {
      bars.add(
          new Bar(
              input,
              loss(input.change().with(encounter, input.range().low()), precise),
              loss(input.change().with(encounter, input.range().high()), precise),
              first(encounter, input),
              LossDerivative.of(encounter, input)));
    }
    bars.sort(Comparator.comparingDouble(Bar::length).reversed());
    return new Tornado(base, bars);
  }

  /** The loss, m; empty where the descent is not arrested, or the entry has no steady start. */
  private static OptionalDouble loss(Encounter encounter, Simulator simulator) {
    Outcome outcome;
    try {
      outcome = encounter.fly(simulator, null);
    } catch (NoSteadyFlightException noStart) {
      return OptionalDouble.empty();
    }
    return outcome.ending() == Ending.ARRESTED ? outcome.altitudeLoss() : OptionalDouble.empty();
  }

  private static Optional<Sensitivity> first(Encounter encounter, Input input) {
    try {
      return Optional.of(
          Sensitivity.ofLoss(
              value -> input.change().with(encounter, value), input.range(), input.standard()));
    } catch (IllegalArgumentException | NoSteadyFlightException notArrested) {
      return Optional.empty();
    }
  }
}
