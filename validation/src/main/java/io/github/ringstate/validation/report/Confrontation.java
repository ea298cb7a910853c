package io.github.ringstate.validation.report;

import io.github.ringstate.validation.catalogue.HeldOut;
import io.github.ringstate.validation.catalogue.Unmeasured;
import io.github.ringstate.validation.catalogue.Wanted;
import io.github.ringstate.validation.check.CheckKind;
import io.github.ringstate.validation.check.Tally;
import java.util.List;
import java.util.Map;

/**
 * What the model is held against that nothing was fitted to.
 *
 * @param kinds how many checks there are of each kind
 * @param counted the sources of the validations that count, with their number of checks
 * @param held the checks against sources that are held out
 * @param wanted the sources that could not be read
 * @param unmeasured the numbers that stay as they were fitted or assumed
 */
record Confrontation(
    Map<String, Long> kinds,
    List<Work> counted,
    List<CheckEntry> held,
    List<Wanted> wanted,
    List<Unmeasured> unmeasured) {

  /** A work and how many checks it gives. */
  record Work(int number, String text, long checks, boolean isHeld) {}

  static Confrontation of(Tally tally, Bibliography bibliography) {
    return new Confrontation(
        Map.of(
            "verification", tally.count(CheckKind.VERIFICATION),
            "calibration", tally.count(CheckKind.CALIBRATION),
            "validation", tally.count(CheckKind.VALIDATION),
            "counted", (long) tally.counted().size()),
        tally.bySource().entrySet().stream()
            .map(
                entry ->
                    new Work(
                        bibliography.works().indexOf(entry.getKey()) + 1,
                        entry.getKey(),
                        entry.getValue(),
                        HeldOut.sources().stream()
                            .anyMatch(held -> held.work().equals(entry.getKey()))))
            .toList(),
        tally.checks().stream()
            .filter(check -> HeldOut.covers(check.question().source()))
            .map(check -> CheckEntry.of(check, bibliography))
            .toList(),
        Wanted.works(),
        Unmeasured.numbers());
  }
}
