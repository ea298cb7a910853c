package io.github.ringstate.instructor;

import io.github.ringstate.rules.ModulePlan;
import java.util.List;
import java.util.Map;

/** Which package of this module may use which. */
class PackagesTest extends ModulePlan {

  PackagesTest() {
    super(
        "io.github.ringstate.instructor",
        Map.ofEntries(
            Map.entry(
                "",
                List.of(
                    "best",
                    "boundary",
                    "craftlist",
                    "delivery",
                    "equilibria",
                    "desk",
                    "fit",
                    "floor",
                    "fly",
                    "loss",
                    "manual",
                    "option",
                    "origin",
                    "plan",
                    "rerun",
                    "review",
                    "runs",
                    "sensitivity",
                    "sweep")),
            Map.entry("best", List.of("conditions", "option")),
            Map.entry("boundary", List.of("conditions", "option")),
            Map.entry("conditions", List.of()),
            Map.entry("craftlist", List.of("option")),
            Map.entry("delivery", List.of()),
            Map.entry("desk", List.of("delivery", "manual", "option", "origin", "pilots")),
            Map.entry("equilibria", List.of("conditions", "option")),
            Map.entry("fit", List.of("option", "origin")),
            Map.entry("floor", List.of("conditions", "option", "pilots", "progress")),
            Map.entry("fly", List.of("conditions", "option", "pilots")),
            Map.entry("loss", List.of("conditions", "option", "pilots", "progress")),
            Map.entry("manual", List.of("option")),
            Map.entry("option", List.of("conditions", "delivery", "origin")),
            Map.entry("origin", List.of()),
            Map.entry("pilots", List.of("conditions", "option", "progress")),
            Map.entry("plan", List.of("option", "origin")),
            Map.entry("progress", List.of("delivery")),
            Map.entry("rerun", List.of()),
            Map.entry("review", List.of("conditions", "option", "origin")),
            Map.entry("runs", List.of("conditions", "option", "pilots")),
            Map.entry("sensitivity", List.of("conditions", "option")),
            Map.entry("sweep", List.of("delivery", "option", "origin", "progress"))));
  }
}
