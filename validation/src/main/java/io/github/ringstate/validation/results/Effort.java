package io.github.ringstate.validation.results;

import io.github.ringstate.analysis.best.BestRecovery;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.study.model.OpenNumbers;
import java.util.List;
import java.util.function.Function;

/**
 * How much is flown for a point.
 *
 * @param pilots how many people, by each way out
 * @param models models that meet the published ranges
 * @param search looks for the least loss
 */
public record Effort(
    int pilots, List<RingStateInflow> models, Function<Encounter, BestRecovery> search) {

  private static final int PILOTS = 256;
  private static final int MODELS = 100;
  private static final long SEED = 1;

  /** Copies the list. */
  public Effort {
    models = List.copyOf(models);
  }

  /**
   * That of the page.
   *
   * @return 256 people, 100 models, a search from four starts
   */
  public static Effort full() {
    return new Effort(
        PILOTS,
        OpenNumbers.accepted(MODELS, SEED).kept(),
        encounter -> BestRecovery.find(encounter, BestRecovery.ALL_POWER, SEED));
  }
}
