package io.github.ringstate.sheets.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.FlightQuantity;
import io.github.ringstate.encounter.History;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.sheets.page.SvgDrawing;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FlightGraphTest {

  private static History flown(double delay) {
    return Encounter.of(DemoCraft.TRAINER).withDelay(delay).record(Simulator.fast()).history();
  }

  @Test
  void eachFlightIsALineWithItsNameAndTheAxesSayQuantityAndUnit() {
    Map<String, History> flights = new LinkedHashMap<>();
    flights.put("at once", flown(0));
    flights.put("after 2 s", flown(2));
    Graph graph = FlightGraph.of(flights, FlightQuantity.TIME, FlightQuantity.HEIGHT, 0.1);
    String svg = SvgDrawing.of(graph.picture(), "f-");
    assertTrue(svg.contains("height, m against time, s"), "the description");
    String legend = SvgDrawing.of(graph.legend(), "l-");
    assertTrue(legend.contains("at once") && legend.contains("after 2 s"), legend);
  }

  @Test
  void aQuantityWithoutUnitHasNoneAtItsAxis() {
    Graph graph =
        FlightGraph.of(
            Map.of("one", flown(1)), FlightQuantity.TIME, FlightQuantity.ROTOR_SPEED, 0.5);
    assertEquals(
        "rotor speed over nominal against time, s",
        SvgDrawing.of(graph.picture(), "f-")
            .replaceFirst("(?s).*?aria-label=\"([^\"]*)\".*", "$1"));
  }
}
