package io.github.ringstate.validation.catalogue;

import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Question;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.check.Source;
import java.util.ArrayList;
import java.util.List;

/** Ground effect in hover and with edgewise speed. */
final class GroundEffectChecks {

  private static final Prose TEXT = Prose.of(GroundEffectChecks.class);

  private static final double RADIUS = 5;

  private GroundEffectChecks() {}

  static Section section(Models models) {
    List<Check> checks = new ArrayList<>();
    for (double height : new double[] {0.5, 1, 2}) {
      checks.add(
          question("induced velocity at height " + height + " R in hover", Sources.CHEESEMAN)
              .near(
                  Math.pow(1 - Math.pow(1 / (4 * height), 2), 1.5),
                  1e-9,
                  models.groundEffect(RADIUS, height * RADIUS, 0, 8),
                  "(1 - (R / 4Z)^2)^(3/2) at constant thrust; the library's guard against a division by zero is 1e-12."));
    }
    checks.add(
        question("induced velocity at height R and an edgewise speed of v", Sources.CHEESEMAN)
            .near(
                Math.pow(1 - 1.0 / 16 / 2, 1.5),
                1e-9,
                models.groundEffect(RADIUS, RADIUS, 8, 8),
                "(1 - (R / 4Z)^2 / (1 + (V / v)^2))^(3/2); rounding and the guard of 1e-12."));
    for (double height : new double[] {1, 2}) {
      checks.add(
          Sources.CHEESEMAN
              .published(
                  "thrust at constant induced power at height " + Math.round(height) + " R",
                  "T near the ground over T away from it",
                  "1")
              .near(
                  1 / (1 - Math.pow(1 / (4 * height), 2)),
                  1e-9,
                  thrustAtConstantPower(models, height),
                  "The library names the same formula, so rounding and its guard of 1e-12 only."));
    }
    checks.add(
        Sources.HAYDEN
            .at("1 / (0.9926 + 0.0379 (2R/Z)^2)")
            .published(
                "induced power at height R beside measurements",
                "P near the ground over P away from it",
                "1")
            .validation()
            .near(
                1 / (0.9926 + 0.0379 * 4),
                0.02,
                models.groundEffect(RADIUS, RADIUS, 0, 8),
                "2 per cent of the induced power, the scatter to expect of a fit to flight tests.")
            .butDiffers(0.90, 0.915, TEXT.say("power-differs")));
    checks.addAll(RealCraft.ground(models));
    return TEXT.section(
        "ground-effect", List.of(TEXT.figure("ground", () -> plot(models))), checks);
  }

  /** With P = T v and v = ratio sqrt(T): T^1.5 ratio = 1. */
  private static double thrustAtConstantPower(Models models, double height) {
    return Math.pow(models.groundEffect(RADIUS, height * RADIUS, 0, 8), -2.0 / 3);
  }

  private static Question question(String name, Source source) {
    return source.published(name, "v near the ground over v away from it", "1");
  }

  private static Graph plot(Models models) {
    return Graph.of("height of the disc over radius Z / R", "T / T away from the ground")
        .x(0.5, 3)
        .y(1, 1.4)
        .curve("library", Pens.THICK, h -> thrustAtConstantPower(models, h))
        .curve("Cheeseman and Bennett", Pens.DASHED, h -> 1 / (1 - Math.pow(1 / (4 * h), 2)))
        .curve("Hayden", Pens.DOTTED, h -> Math.pow(0.9926 + 0.0379 * Math.pow(2 / h, 2), 2.0 / 3));
  }
}
