package io.github.ringstate.instructor.best;

import io.github.ringstate.analysis.best.BestRecovery;
import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.pilot.Technique;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What was found, delay by delay.
 *
 * @param cases one for each delay
 */
record BestResult(List<Case> cases) {

  /** The ways out that are compared, in order. */
  static final List<Technique> TECHNIQUES =
      Technique.ALL.stream().filter(Technique::wayOut).toList();

  /**
   * One delay.
   *
   * @param delay the delay, s
   * @param best the best recovery that was found
   * @param losses the altitude loss of each way out, m; empty where it does not arrest the descent
   */
  record Case(double delay, BestRecovery best, Map<Technique, OptionalDouble> losses) {

    /** What a way out loses. */
    OptionalDouble loss(Technique technique) {
      return losses.getOrDefault(technique, OptionalDouble.empty());
    }

    /** What a way out loses more than the best. */
    OptionalDouble excess(Technique technique) {
      OptionalDouble loss = loss(technique);
      return loss.isPresent() ? OptionalDouble.of(loss.getAsDouble() - best.loss()) : loss;
    }

    /** How far apart the searches ended, m. */
    double apart() {
      return best.ends().get(best.ends().size() - 1) - best.ends().get(0);
    }
  }

  BestResult {
    cases = List.copyOf(cases);
  }

  static BestResult of(BestRequest request) {
    List<Case> cases = new ArrayList<>();
    for (double delay : request.delays()) {
      BestRecovery best;
      try {
        best = BestRecovery.find(request.encounter(delay), request.power(), request.seed());
      } catch (NoSteadyFlightException noStart) {
        throw Conditions.noStart(request.approach().kind().label(), noStart);
      } catch (IllegalArgumentException notMet) {
        throw UserError.usage("--entry cannot be this one: " + notMet.getMessage());
      } catch (ArithmeticException noneFound) {
        throw UserError.usage("--delays cannot be " + delay + ": " + noneFound.getMessage());
      }
      Map<Technique, OptionalDouble> losses = new LinkedHashMap<>();
      TECHNIQUES.forEach(technique -> losses.put(technique, best.loss(technique)));
      cases.add(new Case(delay, best, losses));
    }
    return new BestResult(cases);
  }
}
