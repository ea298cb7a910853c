package io.github.ringstate.validation;

import io.github.ringstate.rules.ModulePlan;
import java.util.List;
import java.util.Map;

/** Which package of this module may use which. */
class PackagesTest extends ModulePlan {

  PackagesTest() {
    super(
        "io.github.ringstate.validation",
        Map.ofEntries(
            Map.entry("", List.of()),
            Map.entry("catalogue", List.of("check", "numerics", "reference")),
            Map.entry("check", List.of()),
            Map.entry("losses", List.of()),
            Map.entry("numerics", List.of()),
            Map.entry("open", List.of()),
            Map.entry("reference", List.of()),
            Map.entry("report", List.of("catalogue", "check", "losses", "open", "results")),
            Map.entry("results", List.of("open"))));
  }
}
