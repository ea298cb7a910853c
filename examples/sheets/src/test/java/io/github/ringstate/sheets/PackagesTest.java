package io.github.ringstate.sheets;

import io.github.ringstate.rules.ModulePlan;
import java.util.List;
import java.util.Map;

/** Which package of this module may use which. */
class PackagesTest extends ModulePlan {

  PackagesTest() {
    super(
        "io.github.ringstate.sheets",
        Map.ofEntries(
            Map.entry("chart", List.of("page")),
            Map.entry("message", List.of()),
            Map.entry("page", List.of())));
  }
}
