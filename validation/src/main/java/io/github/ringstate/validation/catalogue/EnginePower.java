package io.github.ringstate.validation.catalogue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Obtained;
import io.github.ringstate.validation.check.Section;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Power of the engines with altitude. */
final class EnginePower {

  private static final Prose TEXT = Prose.of(EnginePower.class);

  private static final double[] DENSITY = {0.9, 0.8, 0.7385};
  private static final double[] LAPSE = {0.8868, 0.7736, 0.7040};

  private EnginePower() {}

  static Section section(Models models) {
    Helicopter twin = DemoCraft.TWIN;
    Craft craft = Craft.of(models, DemoCraft.UTILITY);
    double[] asked = craft.trimmed(0);
    double hover = asked[State.ENGINE];
    asked[State.COLLECTIVE] += 0.1;
    return TEXT.section(
        "engine",
        List.of(TEXT.figure("lapse", () -> plot(models))),
        Stream.concat(
                IntStream.range(0, DENSITY.length).mapToObj(i -> lapse(models, i)),
                Stream.of(
                    Sources.GAGG_FERRAR
                        .at("sigma - (1 - sigma) / 7.55")
                        .closedForm(
                            "piston engine's power by the other form of the formula",
                            "largest error of P / P0",
                            "1")
                        .as(Obtained.FROM_MEMORY)
                        .atMost(
                            2.3e-4,
                            Grid.largest(
                                new double[] {0},
                                Grid.spaced(0.5, 1, 51),
                                (x, s) -> Math.abs(models.pistonLapse(s) - (s - (1 - s) / 7.55))),
                            "1 / 7.55 is 0.13245, which the other form rounds to 0.132: 2.3e-4 at half density."),
                    Sources.REQUIREMENT
                        .at("density ratio to the power 0.8; assumed")
                        .commonPractice("turbine's power at density ratio 0.7385", "P / P0", "1")
                        .as(Obtained.COMPUTED)
                        .near(
                            Math.exp(0.8 * Math.log(0.7385)),
                            1e-12,
                            models.turbineLapse(0.7385),
                            "Rounding. The exponent is assumed; the check holds it where it is."),
                    Sources.MECHANICS
                        .at("the lesser of rating and capability")
                        .closedForm(
                            "flat-rated turbine keeps its continuous power at 1,500 m",
                            "power over declared continuous power",
                            "1")
                        .near(
                            1,
                            1e-12,
                            models.craft(twin).continuousPower(models.air(1500))
                                / twin.si(Helicopter.CONTINUOUS_POWER),
                            "Its capability there, 0.89 of 1,350 kW, is above the rating."),
                    Sources.MECHANICS
                        .at("the lesser of drive train limit and capability")
                        .closedForm(
                            "greatest power of the twin at sea level",
                            "power over declared take-off power",
                            "1")
                        .near(
                            1,
                            1e-12,
                            models.craft(twin).maximumPower(models.air(0))
                                / twin.si(Helicopter.TAKE_OFF_POWER),
                            "The drive train is declared to bear the take-off power and no more."),
                    Sources.PADFIELD
                        .at("chapter 3: a first-order lag of fuel and engine")
                        .closedForm(
                            "engine asked for all it has, out of a hover",
                            "rate of power over greatest power",
                            "1/s")
                        .near(
                            (1 - hover) / DemoCraft.UTILITY.si(Helicopter.ENGINE_TIME),
                            1e-9,
                            craft.motion().at(0, asked).rate(State.ENGINE),
                            "(1 - p) / tau with the declared time constant, which is assumed; rounding.")))
            .toList());
  }

  private static Check lapse(Models models, int i) {
    return Sources.GAGG_FERRAR
        .published(
            String.format(Locale.ROOT, "piston engine's power at density ratio %.4f", DENSITY[i]),
            "P / P0",
            "1")
        .near(
            LAPSE[i],
            5e-5,
            models.pistonLapse(DENSITY[i]),
            "Half a unit of the fourth decimal computed from the formula.");
  }

  private static Graph plot(Models models) {
    double[] altitude = new double[DENSITY.length];
    for (int i = 0; i < altitude.length; i++) {
      // Inverse of the density law of the standard atmosphere, exponent 4.2559.
      altitude[i] = 44330.8 * (1 - Math.pow(DENSITY[i], 1 / 4.2559));
    }
    return Graph.of("geopotential altitude, m", "power over power at sea level")
        .x(0, 5000)
        .y(0.5, 1.02)
        .curve("piston", Pens.SOLID, h -> models.pistonLapse(models.air(h).densityRatio()))
        .curve(
            "turbine (assumed)",
            Pens.DASHED,
            h -> models.turbineLapse(models.air(h).densityRatio()))
        .points("Gagg and Ferrar", Pens.CIRCLE, altitude, LAPSE);
  }
}
