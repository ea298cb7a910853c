package io.github.ringstate.sheets.chart;

import io.github.ringstate.encounter.FlightQuantity;
import io.github.ringstate.encounter.History;
import io.github.ringstate.encounter.Instant;
import java.util.List;
import java.util.Map;

/** One quantity of flights against another, in SI units, as a {@link Graph} to add to. */
public final class FlightGraph {

  private FlightGraph() {}

  /**
   * Draws a line for each flight.
   *
   * @param flights the flights by the names that the legend shows, in its order
   * @param across what is along the lower axis, often {@link FlightQuantity#TIME}
   * @param up what is along the left axis
   * @param step time between two points of a line, s, positive
   * @return the graph
   */
  public static Graph of(
      Map<String, History> flights, FlightQuantity across, FlightQuantity up, double step) {
    Graph graph = Graph.of(axis(across), axis(up));
    int place = 0;
    for (Map.Entry<String, History> flight : flights.entrySet()) {
      List<Instant> instants = flight.getValue().sampled(step);
      graph.line(flight.getKey(), Pen.of(place++), all(instants, across), all(instants, up));
    }
    return graph;
  }

  private static String axis(FlightQuantity quantity) {
    String symbol = quantity.unit().symbol();
    return symbol.isEmpty() ? quantity.label() : quantity.label() + ", " + symbol;
  }

  private static double[] all(List<Instant> instants, FlightQuantity quantity) {
    return instants.stream().mapToDouble(instant -> instant.get(quantity)).toArray();
  }
}
