package io.github.ringstate.validation.catalogue;

import io.github.ringstate.inflow.Autorotation;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.RingBand;
import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.validation.check.Figure;
import io.github.ringstate.validation.reference.ReferenceTable;
import java.util.List;

/** The two figures that matter most: induced velocity over the whole range, and the boundary. */
public final class Headline {

  private static final Prose TEXT = Prose.of(Headline.class);

  private static final double LEFT = -3.2;
  private static final double RIGHT = 1.6;
  private static final double TOP = 3.4;

  private Headline() {}

  /**
   * Draws them.
   *
   * @param models what is shown
   * @return two figures
   */
  public static List<Figure> figures(Models models) {
    return List.of(
        TEXT.figure("headline", () -> induced(models)),
        TEXT.figure("headline-boundary", () -> CraftBoundaries.plot(models)));
  }

  private static Graph induced(Models models) {
    RingBand band = new HeaveDamping(models.ring()).band(0).orElseThrow();
    double autorotation = Autorotation.axialSpeed(models.ring(), 0).orElseThrow();
    double exit = band.exit().orElseThrow();
    ReferenceTable table =
        ReferenceTable.read("momentum_theory.csv")
            .where("branch", "axial"::equals)
            .where("axial_over_vh", z -> Double.parseDouble(z) >= LEFT)
            .where("axial_over_vh", z -> Double.parseDouble(z) <= RIGHT);
    Graph plot =
        Graph.of("axial speed z / vh (climb positive)", "induced velocity v / vh", 700, 600)
            .x(LEFT, RIGHT)
            .y(0, TOP);
    plot.shade(LEFT, autorotation, 0, TOP, 243)
        .shade(autorotation, exit, 0, TOP, 229)
        .shade(exit, band.onset(), 0, TOP, 210)
        .shade(band.onset(), RIGHT, 0, TOP, 250);
    plot.line(Pens.RULE, new double[] {autorotation, autorotation}, new double[] {0, TOP})
        .line(Pens.RULE, new double[] {exit, exit}, new double[] {0, TOP})
        .line(Pens.RULE, new double[] {band.onset(), band.onset()}, new double[] {0, TOP});
    plot.curve(Pens.FAINT, -2.2, 0, PublishedFits::climb)
        .curve("momentum, climb", Pens.SOLID, 0, RIGHT, z -> models.momentum().induced(0, z))
        .curve("momentum, windmill", Pens.SOLID, LEFT, -2, z -> models.momentum().induced(0, z));
    PublishedFits.draw(plot, models, 0, (model, z) -> model.induced(0, z))
        .curve("smooth momentum", Pens.LONG_DASH, z -> models.smooth().induced(0, z))
        .curve("ring-state model", Pens.THICK, z -> models.ring().induced(0, z))
        .points(
            "computed",
            Pens.CIRCLE,
            table.numbers("axial_over_vh"),
            table.numbers("induced_over_vh"));
    return plot.label("windmill brake", 0.5 * (LEFT + autorotation), 3.27)
        .label("turbulent", 0.5 * (autorotation + exit), 3.27)
        .label("wake", 0.5 * (autorotation + exit), 3.1)
        .label("vortex ring", 0.5 * (exit + band.onset()), 3.27)
        .label("normal working", 0.5 * (band.onset() + RIGHT), 3.27);
  }
}
