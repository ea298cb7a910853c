package io.github.ringstate.validation.catalogue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.sheets.chart.Pen;
import java.util.List;

/** The boundary of the ring state in knots and feet per minute. */
final class CraftBoundaries {

  private static final List<Pen> LINES =
      List.of(Pens.THICK, Pens.DASHED, Pens.DOTTED, Pens.DASH_DOT);

  private CraftBoundaries() {}

  /** The heave-damping boundary of the demo craft. */
  static Graph plot(Models models) {
    Graph plot =
        Graph.of("airspeed, kt", "rate of descent, ft/min", 480, 600)
            .x(0, 26)
            .y(0, 4000)
            .shade(0, 26, 500, 1500, 234);
    plot.line(Pens.RULE, new double[] {0, 26}, new double[] {300, 300});
    plot.line(Pens.RULE, new double[] {16, 16}, new double[] {0, 4000});
    Outline outline = Outline.of(new HeaveDamping(models.ring()));
    for (int i = 0; i < DemoCraft.ALL.size(); i++) {
      Helicopter craft = DemoCraft.ALL.get(i);
      double vh = Craft.of(models, craft).motion().hoverInduced();
      Outline scaled = outline.scaled(Unit.KNOT.fromSi(vh), -Unit.FOOT_PER_MINUTE.fromSi(vh));
      String name = craft.name() + ", " + Math.round(craft.discLoading()) + " N/m2";
      plot.line(name, LINES.get(i), scaled.edgewise(), scaled.axial());
    }
    return plot.label("500 to 1,500 ft/min", 20.9, 1000)
        .label("300 ft/min", 22.8, 190)
        .label("16 kt", 17.7, 3850);
  }
}
