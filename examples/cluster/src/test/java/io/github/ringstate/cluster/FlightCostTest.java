package io.github.ringstate.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.ringstate.cluster.portion.FlownPortion;
import java.util.List;
import org.junit.jupiter.api.Test;

class FlightCostTest {

  @Test
  void costsAddUpAndWhatWasThereCostsNothing() {
    FlightCost cost =
        FlightCost.of(
            List.of(
                new FlownPortion(3000, 1_500_000_000),
                FlownPortion.THERE,
                new FlownPortion(1000, 500_000_000)),
            1_250_000_000);
    assertEquals(
        "flew 4000 points in 1.3 s, 3200 a second; 2.0 s of processor time, 2000 a second of a"
            + " core",
        cost.text());
  }
}
