package io.github.ringstate.files;

import io.github.ringstate.rules.ModulePlan;
import java.util.List;
import java.util.Map;

/** Which package of this module may use which. */
class PackagesTest extends ModulePlan {

  PackagesTest() {
    super(
        "io.github.ringstate.files",
        Map.ofEntries(
            Map.entry("craft", List.of("error", "text", "toml")),
            Map.entry("digest", List.of()),
            Map.entry("error", List.of("text")),
            Map.entry("flight", List.of("row", "whole")),
            Map.entry("extension", List.of("digest", "error")),
            Map.entry("plan", List.of("text", "toml", "unit")),
            Map.entry("report", List.of("text", "unit")),
            Map.entry("provenance", List.of("digest", "report", "whole")),
            Map.entry("recording", List.of("error", "text", "toml")),
            Map.entry("row", List.of("error", "whole")),
            Map.entry(
                "sweep",
                List.of("craft", "digest", "error", "extension", "provenance", "report", "toml")),
            Map.entry("text", List.of()),
            Map.entry("toml", List.of("error", "text")),
            Map.entry("unit", List.of("text")),
            Map.entry("whole", List.of("error"))));
  }
}
