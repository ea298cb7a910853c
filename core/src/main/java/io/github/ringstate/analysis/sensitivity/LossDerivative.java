package io.github.ringstate.analysis.sensitivity;

import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Happening;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.integrate.UnfinishedLegException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * The derivative of an altitude loss by the variational equations: the flight is propagated once,
 * leg by leg, together with its derivative by a number; see {@link LinearLeg}. It differs from
 * differences of losses in that no other flight is flown, so that neither the tolerance nor the
 * steps of an integrator stand between two losses, and an event counts by its own formula.
 *
 * <p>Three flights go through the decisions of entry and recovery: the encounter itself and two
 * neighbours, which are carried along the linear flight. What a neighbour does with its delay, its
 * phases and its controls is thereby what it would do, without a formula for each.
 */
final class LossDerivative {

  /** How far apart neighbours are, over the number or, where that may vanish, over its range. */
  private static final double PART = 1e-5;

  private LossDerivative() {}

  /**
   * The derivative of the altitude loss of an encounter by one of its numbers.
   *
   * @param encounter the encounter
   * @param input the number, at its standard value
   * @return the derivative, m per unit of the number; empty if the descent is not arrested, if
   *     steps become too short, or if a neighbour takes another way through its legs, as at a kink,
   *     has no steady start, or a number out of range
   */
  static OptionalDouble of(Encounter encounter, Input input) {
    try {
      return flown(encounter, input);
    } catch (NoSteadyFlightException | UnfinishedLegException nowhere) {
      return OptionalDouble.empty();
    }
  }

  private static OptionalDouble flown(Encounter encounter, Input input) {
    double at = input.standard();
    double unit = unit(input);
    List<Side> sides = new ArrayList<>();
    for (double value : new double[] {at, at + PART * unit, at - PART * unit}) {
      if (!input.range().holds(value)) {
        return OptionalDouble.empty();
      }
      sides.add(new Side(input.change().with(encounter, value)));
    }
    while (true) {
      List<Leg<Happening, Motion>> asked = new ArrayList<>();
      for (Side side : sides) {
        Leg<Happening, Motion> missing = side.fly();
        if (missing != null) {
          asked.add(missing);
        }
      }
      if (asked.isEmpty()) {
        return difference(sides, 2 * PART * unit);
      }
      if (asked.size() < sides.size() || !alike(asked)) {
        return OptionalDouble.empty();
      }
      LinearLeg<Happening, Motion> leg =
          new LinearLeg<>(asked.get(0), asked.get(1), asked.get(2), PART);
      List<Leg.Flown> flown = leg.fly();
      if (leg.isBent()) {
        return OptionalDouble.empty();
      }
      for (int who = 0; who < flown.size(); who++) {
        sides.get(who).legs.add(flown.get(who));
      }
    }
  }

  /** The unit of a number in which its derivative is of a size like the states'. */
  private static double unit(Input input) {
    double width = input.range().high() - input.range().low();
    double at = Math.abs(input.standard());
    return at > 0.1 * width ? at : width;
  }

  private static boolean alike(List<Leg<Happening, Motion>> legs) {
    return legs.stream().map(leg -> leg.events().size()).distinct().count() == 1;
  }

  private static OptionalDouble difference(List<Side> sides, double apart) {
    for (Side side : sides) {
      if (side.loss().isEmpty()) {
        return OptionalDouble.empty();
      }
    }
    double more = sides.get(1).loss().getAsDouble();
    double less = sides.get(2).loss().getAsDouble();
    return OptionalDouble.of((more - less) / apart);
  }

  /** The encounter, or a neighbour. */
  private static final class Side {

    private final Encounter encounter;
    private final LegByLeg legs = new LegByLeg();
    private final Simulator simulator = new Simulator(legs::propagator);
    private @Nullable Outcome outcome;

    Side(Encounter encounter) {
      this.encounter = encounter;
    }

    /** Flies along the legs that there are; returns the one that is missing, or null at the end. */
    @Nullable Leg<Happening, Motion> fly() {
      legs.again();
      try {
        outcome = encounter.fly(simulator, null);
        return null;
      } catch (LegByLeg.Missing missing) {
        return missing.leg();
      }
    }

    OptionalDouble loss() {
      return outcome != null && outcome.ending() == Ending.ARRESTED
          ? outcome.altitudeLoss()
          : OptionalDouble.empty();
    }
  }
}
