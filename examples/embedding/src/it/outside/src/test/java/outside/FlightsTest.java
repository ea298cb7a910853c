package outside;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.EventKind;
import io.github.ringstate.encounter.FlightEvent;
import io.github.ringstate.encounter.FlightLimits;
import io.github.ringstate.encounter.FlightQuantity;
import io.github.ringstate.encounter.Instant;
import io.github.ringstate.encounter.Occurrence;
import io.github.ringstate.encounter.RecordedFlight;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.files.flight.FlightTables;
import io.github.ringstate.files.whole.WholeFile;
import io.github.ringstate.integrate.Event.Crossing;
import io.github.ringstate.study.Sensitivity;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A flight is kept, looked at, written, and asked how its loss changes with a number. */
class FlightsTest {

  private static final Encounter BASE = Encounter.of(DemoCraft.TRAINER).withDelay(1.5);

  /** Definition: an event is where its quantity is zero. */
  @Test
  void aFlightIsKeptWithItsOwnEventAndFlownOnPastItsArrest() {
    Encounter encounter =
        BASE.withLimits(FlightLimits.STANDARD.with(FlightLimits.TIME_PAST_ARREST, 3))
            .withEvents(
                FlightEvent.note("six", Crossing.RISING, seen -> seen.forwardAirspeed() - 6));
    RecordedFlight flight = encounter.record();
    assertEquals(flight, encounter.record());
    List<Occurrence> told = flight.outcome().occurrences();
    Occurrence six =
        told.stream().filter(each -> each.kind() == EventKind.OWN).findFirst().orElseThrow();
    assertEquals("six", six.label());
    assertEquals(6, flight.history().at(six.time()).get(FlightQuantity.FORWARD_AIRSPEED), 1e-5);
    double arrest =
        told.stream()
            .filter(each -> each.kind() == EventKind.ARREST)
            .findFirst()
            .orElseThrow()
            .time();
    assertEquals(arrest + 3, flight.history().end(), 1e-6);
  }

  @Test
  void aFlightIsWrittenAsCsvAndParquet(@TempDir Path folder) throws Exception {
    List<Instant> instants = BASE.record(Simulator.fast()).history().sampled(0.5);
    for (String name : List.of("flight.csv", "flight.parquet")) {
      WholeFile file = WholeFile.named("file", folder.resolve(name).toString());
      FlightTables.write(file, instants, BASE.toString());
    }
    List<String> lines = Files.readAllLines(folder.resolve("flight.csv"));
    assertEquals(instants.size() + 1, lines.size());
    int column = List.of(lines.get(0).split(",", -1)).indexOf("vertical_speed_m_per_s");
    assertEquals(
        instants.get(4).get(FlightQuantity.VERTICAL_SPEED),
        Double.parseDouble(lines.get(5).split(",", -1)[column]));
    byte[] parquet = Files.readAllBytes(folder.resolve("flight.parquet"));
    String marks =
        new String(parquet, 0, 4, US_ASCII) + new String(parquet, parquet.length - 4, 4, US_ASCII);
    assertEquals("PAR1PAR1", marks); // the format's specification; read back in the library's tests
  }

  /** Second method: a central difference of one's own. */
  @Test
  void aSensitivityAgreesWithACentralDifference() {
    Helicopter craft = BASE.craft();
    double at = 600;
    Sensitivity perKilogram =
        Sensitivity.ofLoss(
            mass -> BASE.withCraft(craft.with(Helicopter.MASS, mass)),
            Helicopter.MASS.quantity().within(500, 650),
            at);
    double step = 1;
    double own = (loss(craft, at + step) - loss(craft, at - step)) / (2 * step);
    assertEquals(own, perKilogram.value(), 1e-3 * Math.abs(own) + perKilogram.error());
    assertTrue(perKilogram.error() < 1e-3 * Math.abs(own), perKilogram.toString());
  }

  private static double loss(Helicopter craft, double mass) {
    return BASE.withCraft(craft.with(Helicopter.MASS, mass))
        .fly(Simulator.dormandPrince(1e-11), null)
        .altitudeLoss()
        .orElseThrow();
  }
}
