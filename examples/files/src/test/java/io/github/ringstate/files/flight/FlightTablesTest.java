package io.github.ringstate.files.flight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.FlightQuantity;
import io.github.ringstate.encounter.Instant;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.files.row.ParquetTable;
import io.github.ringstate.files.whole.WholeFile;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.study.LossSpread;
import io.github.ringstate.study.PilotFlight;
import io.github.ringstate.study.PilotStudy;
import io.github.ringstate.study.Progress;
import io.github.ringstate.study.Sampling;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Second readers: Commons CSV, and the Parquet reader of Apache. */
class FlightTablesTest {

  @TempDir private Path folder;

  private WholeFile file(String name) {
    return WholeFile.named("file", folder.resolve(name).toString());
  }

  private List<CSVRecord> csv(String name) throws IOException {
    try (CSVParser parser =
        CSVParser.parse(
            Files.newBufferedReader(folder.resolve(name)),
            CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get())) {
      return parser.getRecords();
    }
  }

  @Test
  void aHistoryIsWrittenWithUnitsInItsNames() throws IOException {
    List<Instant> instants =
        Encounter.of(DemoCraft.TRAINER).record(Simulator.fast()).history().sampled(0.5);
    FlightTables.write(file("flight.csv"), instants, "a flight");
    List<CSVRecord> records = csv("flight.csv");
    assertEquals(instants.size(), records.size());
    for (int i = 0; i < records.size(); i++) {
      assertEquals(instants.get(i).phase(), records.get(i).get("phase"));
      assertEquals(
          instants.get(i).get(FlightQuantity.VERTICAL_SPEED),
          Double.parseDouble(records.get(i).get("vertical_speed_m_per_s")));
    }
    FlightTables.write(file("flight.parquet"), instants, "a flight");
    ParquetTable table = ParquetTable.read(folder.resolve("flight.parquet"));
    assertEquals(instants.size(), table.records().size());
    assertTrue(table.header().contains("height_m"), table.header().toString());
    int height = table.header().indexOf("height_m");
    assertEquals(
        instants.get(3).get(FlightQuantity.HEIGHT),
        Double.parseDouble(table.records().get(3).get(height)));
  }

  @Test
  void thePilotsOfAStudyAreWrittenWithWhatTheyDrewAndLost() throws IOException {
    LossSpread spread =
        new PilotStudy(
                Encounter.of(DemoCraft.TRAINER),
                Technique.LATERAL,
                Optional.of(PilotState.DISTRACTED.delays()),
                3)
            .fly(Sampling.of(16), Progress.SILENT);
    FlightTables.write(file("pilots.csv"), spread, "pilots");
    List<CSVRecord> records = csv("pilots.csv");
    assertEquals(16, records.size());
    for (int i = 0; i < 16; i++) {
      PilotFlight flight = spread.flights().get(i);
      CSVRecord record = records.get(i);
      assertEquals(i, Integer.parseInt(record.get("pilot")));
      assertEquals(flight.delay(), Double.parseDouble(record.get("delay_s")));
      assertEquals("lateral", record.get("recovery"));
      assertEquals(
          flight.drawn().get(Lateral.BANK), Double.parseDouble(record.get(Lateral.BANK.key())));
      assertEquals(flight.outcome().ending().label(), record.get("ending"));
      assertEquals(
          flight.outcome().altitudeLoss().orElse(Double.NaN),
          record.get("altitude_loss_m").isEmpty()
              ? Double.NaN
              : Double.parseDouble(record.get("altitude_loss_m")));
    }
  }
}
