package io.github.ringstate.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.encounter.EventKind;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.pilot.Technique;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class EncounterFinderTest {

  private static EncounterFinder finder(Encounter encounter) {
    return new EncounterFinder(
        encounter.craft(), encounter.air(), encounter.entry().wind(), 0.3, 0.1, encounter.boundary());
  }

  @Test
  void onsetDelayAndLossAreFoundInWhatAReceiverWritesDown() {
    List<double[]> off = new ArrayList<>();
    for (Technique technique : List.of(Technique.FORWARD, Technique.LATERAL)) {
      for (EntryKind entry : EntryKind.ALL) {
        for (double delay : new double[] {0.5, 1, 2}) {
          Encounter encounter =
              Encounter.of(DemoCraft.TRAINER)
                  .withEntry(entry.standard())
                  .withRecovery(technique.standard())
                  .withDelay(delay);
          Outcome outcome = encounter.fly();
          Recording recording = Instruments.receiver().record(encounter, 5);
          List<FoundEncounter> found = finder(encounter).find(VerticalMotion.of(recording));
          System.out.printf("%s %s %.1f: %s onset %.2f loss %.1f arrest %.2f%n", technique.name(), entry.name(), delay, outcome.ending(), outcome.onsetTime().orElse(-1), outcome.altitudeLoss().orElse(-1), outcome.onsetTime().orElse(-1)+outcome.timeToArrest().orElse(-1));
          for (FoundEncounter f : found) System.out.printf("    onset %.2f+-%.2f loss %.1f+-%.1f delay %s arrest %s sink %s %s peak %.1f%n", f.onsetTime().value(), f.onsetTime().deviation(), f.altitudeLoss().value(), f.altitudeLoss().deviation(), f.delay(), f.arrestTime(), f.sinkTime(), f.verdict(), f.peakDescent().value());
        }
      }
    }
  }
}
