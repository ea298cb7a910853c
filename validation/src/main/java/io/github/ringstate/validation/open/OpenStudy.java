package io.github.ringstate.validation.open;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.validation.open.ModelSets.NumberSpread;
import io.github.ringstate.validation.open.ModelSets.RangeShare;
import java.util.List;

/**
 * All that is told of what is not known.
 *
 * @param models the models that were drawn
 * @param ranges the published ranges and the draws
 * @param numbers the open numbers before and after
 * @param bands losses over models, of all demo craft
 * @param worths what each number would be worth, for a light and a heavy craft
 */
public record OpenStudy(
    ModelSets models,
    List<RangeShare> ranges,
    List<NumberSpread> numbers,
    List<LossBand> bands,
    List<Worth> worths) {

  /** Models that are flown for the bands. */
  public static final int FLOWN = 400;

  private static final int MODELS = 1000;

  /**
   * Draws and flies.
   *
   * @return what came of it
   */
  public static OpenStudy run() {
    ModelSets models = ModelSets.draw(MODELS);
    return new OpenStudy(
        models,
        models.ranges(),
        models.numbers(),
        DemoCraft.ALL.stream()
            .flatMap(craft -> LossBand.fly(craft, models, FLOWN).stream())
            .toList(),
        List.of(DemoCraft.TRAINER, DemoCraft.HEAVY).stream()
            .flatMap((Helicopter craft) -> Worth.fly(craft, models.accepted().kept()).stream())
            .toList());
  }
}
