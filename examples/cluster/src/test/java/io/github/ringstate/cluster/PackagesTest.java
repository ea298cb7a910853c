package io.github.ringstate.cluster;

import io.github.ringstate.rules.ModulePlan;
import java.util.List;
import java.util.Map;

/** Which package of this module may use which. */
class PackagesTest extends ModulePlan {

  PackagesTest() {
    super(
        "io.github.ringstate.cluster",
        Map.ofEntries(
            Map.entry("", List.of("portion", "result", "summary")),
            Map.entry("portion", List.of()),
            Map.entry("result", List.of("portion")),
            Map.entry("summary", List.of())));
  }
}
