package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.analysis.equilibrium.DescentCase;
import io.github.ringstate.analysis.equilibrium.Equilibrium;
import io.github.ringstate.analysis.equilibrium.EquilibriumCurve;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.files.row.ParquetTable;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.quantity.Unit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResearchCommandsTest {

  /** The folds of the table are those of the library, between the descents that they join. */
  @Test
  void theTableHasTheFoldsInTheirPlace() throws IOException {
    List<CSVRecord> records = Run.csv("equilibria --craft twin");
    List<Equilibrium> folds =
        EquilibriumCurve.againstCollective(DescentCase.of(DemoCraft.TWIN)).folds();
    List<CSVRecord> found =
        records.stream().filter(record -> !record.get("fold").isEmpty()).toList();
    assertEquals(List.of("onset", "exit"), found.stream().map(r -> r.get("fold")).toList());
    for (int i = 0; i < 2; i++) {
      assertEquals(
          Math.toDegrees(folds.get(i).collective()),
          Run.number(found.get(i), "collective_deg"),
          6e-4);
    }
    double before = Double.POSITIVE_INFINITY;
    for (CSVRecord record : records) {
      double speed = Run.number(record, "vertical_speed_fpm");
      assertTrue(speed <= before, "the vertical speed falls along the curve");
      before = speed;
    }
  }

  /** Read by the reference implementation of the format. */
  @Test
  void parquetHoldsTheTableOfTheCsv(@TempDir Path folder) throws IOException {
    String file = folder.resolve("descents.parquet").toString();
    Run.line("equilibria --craft twin --format parquet --output " + file);
    ParquetTable table = ParquetTable.read(Path.of(file));
    assertEquals(Caution.TEXT, table.said().get("caution"));
    List<CSVRecord> records = Run.csv("equilibria --craft twin");
    List<String> header = records.get(0).getParser().getHeaderNames();
    assertEquals(
        header, table.schema().getColumns().stream().map(column -> column.getPath()[0]).toList());
    assertEquals(records.size(), table.records().size());
    for (int i = 0; i < records.size(); i++) {
      for (int j = 0; j < header.size(); j++) {
        String wanted = records.get(i).get(j);
        String found = table.records().get(i).get(j);
        if (List.of("fold", "stable").contains(header.get(j))) {
          assertEquals(wanted, found);
        } else {
          assertEquals(Double.parseDouble(wanted), Double.parseDouble(found));
        }
      }
    }
  }

  @Test
  void whereNothingFoldsOverThatIsSaid() {
    assertTrue(Run.words("equilibria --airspeed-kt 20").contains("do not fold over"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "equilibria --airspeed-kt 90|--airspeed-kt",
        "equilibria --loop 3|argument too many",
        "best --delays -1|--delays",
        "best --power all|--power",
        "best --seed x|--seed",
        "sensitivity --groups wind|--groups",
        "sensitivity --recovery none|--recovery"
      })
  void aWrongOptionIsNamed(String command, String named) {
    Run.assertRefused(command, named);
  }

  @Test
  void aTornadoHasTheLossesOfItsEnds() throws IOException {
    CSVRecord air = Run.csv("sensitivity --craft heavy --groups air").get(0);
    assertEquals("pressure altitude", air.get("number"));
    for (String end : List.of("low", "high")) {
      double altitude = Unit.FOOT.toSi(Run.number(air, end));
      double loss =
          Encounter.of(DemoCraft.HEAVY)
              .withAir(StandardAtmosphere.at(altitude))
              .withDelay(1)
              .fly()
              .altitudeLoss()
              .orElseThrow();
      assertEquals(Unit.FOOT.fromSi(loss), Run.number(air, "altitude_loss_" + end + "_ft"), 0.1);
    }
    assertEquals("yes", air.get("agree"));
    Run drawn = Run.line("sensitivity --craft heavy --groups air --format svg");
    assertTrue(drawn.out().contains("pressure altitude"), drawn.err());
  }

  @Test
  void theBestLosesLeastAndItsCommandsAreThere() throws IOException {
    JsonNode json = Run.json("best --craft heavy --delays 1");
    assertEquals(Caution.TEXT, json.get("caution").textValue());
    JsonNode losses = json.findValue("losses");
    double best = losses.get(0).get("altitude_loss_ft").doubleValue();
    assertEquals("best", losses.get(0).get("recovery").textValue());
    assertEquals(4, losses.size());
    for (JsonNode line : losses) {
      assertTrue(line.get("excess_ft").doubleValue() >= 0, line.toString());
      assertEquals(
          line.get("altitude_loss_ft").doubleValue() - best,
          line.get("excess_ft").doubleValue(),
          0.11);
    }
    assertEquals(6, json.findValue("commands").size());
  }
}
