package io.github.ringstate.validation.report;

import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.sheets.page.SvgDrawing;
import io.github.ringstate.validation.check.Figure;

/**
 * A figure as the report prints it.
 *
 * @param number its number in the report
 * @param id a word that is unique among figures
 * @param title a short title
 * @param caption what it shows
 * @param drawing the graph, as markup
 * @param legend what its lines and marks mean, as markup
 */
record FigureEntry(
    int number, String id, String title, String caption, String drawing, String legend) {

  static FigureEntry of(int number, Figure figure) {
    Graph graph = figure.graph().get();
    return new FigureEntry(
        number,
        figure.id(),
        figure.title(),
        figure.caption(),
        SvgDrawing.of(graph.picture(), figure.id() + "-"),
        SvgDrawing.of(graph.legend(), figure.id() + "-legend-"));
  }
}
