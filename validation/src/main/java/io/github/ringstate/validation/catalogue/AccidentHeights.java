package io.github.ringstate.validation.catalogue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Entry;
import io.github.ringstate.encounter.Settling;
import io.github.ringstate.encounter.Steep;
import io.github.ringstate.pilot.CollectiveOnly;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.validation.check.Check;
import java.util.List;

/** Heights that were not enough, by reports of accidents, and the delay that loses them here. */
final class AccidentHeights {

  private static final double SLOWEST = 10;
  private static final double STEP = 0.5;
  private static final String WHY =
      "An accident that the model allows with no delay of ten seconds or less would contradict it:"
          + " ten is the slowest detection and decision in published guidance (six and four"
          + " seconds). No report gives the delay, so it cannot confirm more than that.";

  private AccidentHeights() {}

  static List<Check> checks(Models models) {
    return List.of(
        check(
            models,
            "collective-height",
            "marine-pilot-transfer",
            DemoCraft.UTILITY,
            new CollectiveOnly(),
            new Steep()),
        check(
            models,
            "tour-height",
            "tour-landing",
            DemoCraft.UTILITY,
            new CollectiveOnly(),
            new Settling()),
        check(
            models,
            "winch-height",
            "winch-approach",
            DemoCraft.TWIN,
            new Forward(),
            new Settling()),
        check(
            models,
            "tailwind-height",
            "tailwind-approach",
            DemoCraft.TWIN,
            new Forward(),
            new Steep()));
  }

  private static Check check(
      Models models, String key, String held, Helicopter craft, Recovery recovery, Entry entry) {
    Measured height = Measured.of(key);
    return height
        .question(
            "delay that loses "
                + (int) height.value()
                + " ft, "
                + recovery.name()
                + ", "
                + craft.name(),
            "shortest delay from onset that loses the height",
            "s",
            HeldOut.source(held))
        .within(0, SLOWEST, losing(models, craft, recovery, entry, height.value()), WHY);
  }

  /** The shortest delay, in steps, that loses more than a height; NaN if none does. */
  private static double losing(
      Models models, Helicopter craft, Recovery recovery, Entry entry, double feet) {
    Encounter encounter =
        Craft.encounter(models, craft)
            .withAir(models.air(0))
            .withEntry(entry)
            .withRecovery(recovery);
    for (double delay = 0; delay <= 2 * SLOWEST; delay += STEP) {
      double loss =
          encounter.withDelay(delay).fly().altitudeLoss().orElse(Double.POSITIVE_INFINITY);
      if (Unit.FOOT.fromSi(loss) > feet) {
        return delay;
      }
    }
    return Double.NaN;
  }
}
