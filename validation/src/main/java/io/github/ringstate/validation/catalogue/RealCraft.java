package io.github.ringstate.validation.catalogue;

import io.github.ringstate.craft.CraftBody;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.rotor.Rotor;
import io.github.ringstate.validation.check.Check;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** The demo craft, which are invented, beside what is published of real ones. */
final class RealCraft {

  private RealCraft() {}

  static List<Check> checks(Models models) {
    List<Craft> crafts = Craft.all(models);
    Measured merit = Measured.of("figure-of-merit");
    Measured low = Measured.of("flat-plate-least");
    Measured high = Measured.of("flat-plate-greatest");
    Measured damping = Measured.of("heave-damping-limit");
    Measured download = Measured.of("download");
    return List.of(
        merit
            .question(
                "greatest figure of merit of the demo craft", "figure of merit", Sources.PROUTY)
            .within(
                0.5,
                merit.value() + merit.uncertainty(),
                greatest(crafts, RealCraft::figureOfMerit),
                "No rotor is better than the best of whirl towers; at full load none is poor."),
        energy(crafts.subList(0, 2), "hover-time-one-engine", "one engine"),
        energy(crafts.subList(2, 4), "hover-time-two-engines", "two engines"),
        high.question(
                "flat-plate area over disc area, the demo craft's mean",
                "forward area over disc area",
                Sources.PROUTY)
            .within(
                low.value() - low.uncertainty(),
                high.value() + high.uncertainty(),
                crafts.stream().mapToDouble(RealCraft::flatPlate).average().orElseThrow(),
                "From the heaviest to the utility helicopter of the table."),
        damping
            .question(
                "least heave damping in hover of the demo craft", "-Zw", Sources.VERTICAL_HANDLING)
            .within(
                damping.value(),
                0.5,
                crafts.stream()
                    .mapToDouble(craft -> -HeaveDampingChecks.quasiSteady(craft, 0))
                    .min()
                    .orElseThrow(),
                "Helicopters that handle well lie above the boundary; more than 0.5 is not known."),
        download.near(
            "greatest download of the demo craft",
            "download over weight",
            Sources.COOKE_FITZPATRICK,
            greatest(crafts, craft -> craft.si(CraftBody.DOWNLOAD))));
  }

  /** What the ground leaves at the heights at which sources say that its effect ends. */
  static List<Check> ground(Models models) {
    return Stream.of("ground-cushion-end", "ground-zone-end")
        .map(
            key -> {
              Measured end = Measured.of(key);
              double left = 1 - models.groundEffect(1, end.value(), 0, 1);
              return end.question(
                      "what the ground still saves at " + end.value() + " R",
                      "saving of induced power",
                      "1",
                      key.equals("ground-zone-end") ? Sources.GROUND_STUDY : Sources.CUSHION)
                  .within(0, 0.03, left, "An effect that is said to end is 3 per cent at most.");
            })
        .toList();
  }

  private static Check energy(List<Craft> crafts, String key, String engines) {
    Measured time = Measured.of(key);
    return time.question(
            "least rotor energy in seconds of hover, demo craft with " + engines,
            "energy over hover power",
            Sources.PROUTY)
        .within(
            time.value(),
            6,
            crafts.stream().mapToDouble(RealCraft::hoverTime).min().orElseThrow(),
            "At least what is recommended; no light rotor stores six seconds.");
  }

  private static double greatest(List<Craft> crafts, ToDoubleFunction<Craft> quantity) {
    return crafts.stream().mapToDouble(quantity).max().orElseThrow();
  }

  static double figureOfMerit(Craft craft) {
    Motion hover = craft.vertical(0);
    return hover.loads().thrust()
        * craft.hoverInduced(hover.loads().thrust())
        / hover.loads().rotorPower();
  }

  private static double hoverTime(Craft craft) {
    double speed = craft.si(Rotor.TIP_SPEED) / craft.si(Rotor.RADIUS);
    return 0.5 * craft.si(Rotor.INERTIA) * speed * speed / craft.vertical(0).loads().shaftPower();
  }

  private static double flatPlate(Craft craft) {
    return craft.si(CraftBody.FORWARD_AREA) / craft.area();
  }
}
