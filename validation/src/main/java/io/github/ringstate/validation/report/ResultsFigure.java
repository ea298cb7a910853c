package io.github.ringstate.validation.report;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.sheets.chart.Pen;
import io.github.ringstate.sheets.page.SvgDrawing;
import io.github.ringstate.validation.results.Against;
import io.github.ringstate.validation.results.LossLine;
import io.github.ringstate.validation.results.LossPoint;
import io.github.ringstate.validation.results.LossPoint.Way;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * Draws one line of results: losses with their bands by two ways out, and the excess of all.
 *
 * @param line the line
 */
record ResultsFigure(LossLine line) {

  private static final int WIDTH = 380;
  private static final int HEIGHT = 340;
  private static final double ROOM = 1.05;

  private static final Color PEOPLE = new Color(0x0B4F8A);
  private static final Color MODELS = new Color(0xB4530A);
  private static final BasicStroke DASHED = Pen.line(1.8f, 8, 4);
  private static final BasicStroke DOTTED = Pen.line(2.2f, 2, 4);

  /** A graph with its legend, as markup. */
  record Panel(String heading, String drawing, String legend) {}

  /** The name by which it is made. */
  static String id(Helicopter craft, Against against) {
    return against.key() + "-" + craft.name();
  }

  List<Panel> panels() {
    List<Panel> panels = new ArrayList<>();
    for (Technique technique : List.of(Technique.FORWARD, Technique.LATERAL)) {
      panels.add(panel(technique.label() + ", altitude loss", bands(technique)));
    }
    panels.add(panel("excess over the best found", excess()));
    return panels;
  }

  private Panel panel(String heading, Graph graph) {
    String id = id(line.craft(), line.against()) + "-" + heading.replaceAll("[^a-z]+", "-");
    return new Panel(
        heading,
        SvgDrawing.of(graph.picture(), id + "-"),
        SvgDrawing.of(graph.legend(), id + "-legend-"));
  }

  private Graph bands(Technique technique) {
    Graph graph = Graph.of(line.against().label(), "altitude loss, ft", WIDTH, HEIGHT).y(0, top());
    Pen peopleHigh = new Pen(PEOPLE, DASHED, SeriesMarkers.TRIANGLE_UP);
    Pen peopleLow = new Pen(PEOPLE, DASHED, SeriesMarkers.TRIANGLE_DOWN);
    Pen modelsHigh = new Pen(MODELS, DOTTED, SeriesMarkers.SQUARE);
    Pen modelsLow = new Pen(MODELS, DOTTED, SeriesMarkers.CROSS);
    draw(graph, "people, 95 %", peopleHigh, at(technique, way -> way.people().high()));
    draw(graph, "people, 5 %", peopleLow, at(technique, way -> way.people().low()));
    draw(graph, "models, 95 %", modelsHigh, at(technique, way -> way.models().high()));
    draw(graph, "models, 5 %", modelsLow, at(technique, way -> way.models().low()));
    draw(graph, "standard pilot", Pen.of(0), at(technique, Way::standard));
    draw(graph, "best found", Pen.of(3), point -> point.best().orElse(Double.NaN));
    return graph;
  }

  private Graph excess() {
    Graph graph = Graph.of(line.against().label(), "excess, ft", WIDTH, HEIGHT);
    graph.y(0, greatest(way -> DoubleStream.of(way.excess().orElse(0))));
    for (int i = 0; i < LossPoint.TECHNIQUES.size(); i++) {
      Technique technique = LossPoint.TECHNIQUES.get(i);
      draw(
          graph,
          technique.label(),
          Pen.of(i),
          at(technique, way -> way.excess().orElse(Double.NaN)));
    }
    return graph;
  }

  /** One scale for both ways out, so that they can be compared. */
  private double top() {
    return greatest(
        way ->
            way.technique().equals(Technique.AUTOROTATION)
                ? DoubleStream.empty()
                : DoubleStream.of(way.standard(), way.people().high(), way.models().high()));
  }

  private double greatest(Function<Way, DoubleStream> losses) {
    double most =
        line.points().stream()
            .flatMap(point -> point.ways().stream())
            .flatMapToDouble(losses)
            .filter(Double::isFinite)
            .max()
            .orElse(1);
    return ROOM * Math.max(1, Unit.FOOT.fromSi(most));
  }

  private static ToDoubleFunction<LossPoint> at(Technique technique, ToDoubleFunction<Way> loss) {
    return point ->
        point.ways().stream()
            .filter(way -> way.technique().equals(technique))
            .mapToDouble(loss)
            .findFirst()
            .orElseThrow();
  }

  /** Where a descent is not arrested, the line ends. */
  private void draw(Graph graph, String name, Pen pen, ToDoubleFunction<LossPoint> loss) {
    List<LossPoint> shown =
        line.points().stream().filter(point -> Double.isFinite(loss.applyAsDouble(point))).toList();
    double[] x = shown.stream().mapToDouble(p -> line.against().unit().fromSi(p.value())).toArray();
    double[] y = shown.stream().mapToDouble(p -> Unit.FOOT.fromSi(loss.applyAsDouble(p))).toArray();
    graph.marked(name, pen, x, y);
  }
}
