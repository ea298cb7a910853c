package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.ringstate.files.text.Caution;
import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The output for machines. */
class TablesTest {

  private static final Pattern ONE_DECIMAL = Pattern.compile("-?(0|[1-9][0-9]*)\\.[0-9]");
  private static final Pattern DECIMAL = Pattern.compile("-?(0|[1-9][0-9]*)\\.[0-9]+");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "loss --delays 0|craft,mass_kg,pressure_altitude_ft,oat_c,entry,recovery,delay_s,outcome,"
            + "altitude_loss_ft,loss_after_recognition_ft,peak_descent_fpm,time_to_arrest_s,"
            + "p50_ft,p50_low_ft,p50_high_ft,p90_ft,p90_low_ft,p90_high_ft,p95_ft,p95_low_ft,"
            + "p95_high_ft,arrested_share,arrested_low_share,arrested_high_share,samples,sensitive",
        "loss --delays 0 --pilots 8 --models 2|craft,mass_kg,pressure_altitude_ft,oat_c,entry,"
            + "recovery,delay_s,outcome,altitude_loss_ft,loss_after_recognition_ft,"
            + "peak_descent_fpm,time_to_arrest_s,"
            + "p50_ft,p50_low_ft,p50_high_ft,p90_ft,p90_low_ft,p90_high_ft,p95_ft,p95_low_ft,"
            + "p95_high_ft,arrested_share,arrested_low_share,arrested_high_share,samples,sensitive",
        "floor --pilots 8 --height-ft 100|craft,mass_kg,pressure_altitude_ft,oat_c,entry,state,"
            + "recovery,share,floor_ft,floor_low_ft,floor_high_ft,samples,"
            + "ground_share,ground_low_share,ground_high_share,briefed",
        "fly --step 10|time_s,height_ft,ground_speed_kt,airspeed_kt,vertical_speed_fpm,pitch_deg,"
            + "bank_deg,collective_deg,rotor_speed_pct,power_pct,induced_over_hover,"
            + "axial_over_hover,edgewise_over_hover,phase",
        "boundary|criterion,airspeed_kt,onset_fpm,exit_fpm",
        "runs --wind-from-deg 240 --wind-kt 12 --pilots 8|track_deg,ground_speed_kt,airspeed_kt,tailwind_kt,crosswind_kt,"
            + "power_margin_pct,boundary_margin_fpm,loss_p95_ft,loss_p95_low_ft,loss_p95_high_ft,"
            + "height_ft,verdict,reason"
      })
  void theHeaderIsAsAgreed(String command, String header) {
    Run run = Run.known(command + " --format csv");
    assertTrue(run.out().startsWith(header + "\r\n"), run.out());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "loss --delays 0,1.0",
        "fly --step 1",
        "boundary",
        "equilibria",
        "craft",
        "runs --wind-from-deg 240 --wind-kt 12 --pilots 8"
      })
  void everyLineEndsInCarriageReturnAndLineFeedAndHasTheSameFields(String command)
      throws IOException {
    // RFC 4180, section 2, rules 1 and 4.
    Run run = Run.known(command + " --format csv");
    assertTrue(run.out().endsWith("\r\n"));
    assertEquals(run.out(), run.out().replace("\r\n", "\n").replace("\n", "\r\n"));
    List<CSVRecord> records = run.records();
    assertTrue(!records.isEmpty());
    records.forEach(record -> assertTrue(record.isConsistent(), record.toString()));
  }

  @Test
  void numbersHaveOneDecimalAndAPointAndNoNumberIsMinusZero() throws IOException {
    String command =
        "loss --delays 0,2.0 --mass-kg 560,600 --pressure-altitude-ft 0,1000 --recovery"
            + " forward,collective,none --height-ft 200";
    List<CSVRecord> records = Run.csv(command);
    assertEquals(2 * 2 * 3 * 2, records.size());
    for (CSVRecord record : records) {
      for (String column :
          List.of("mass_kg", "pressure_altitude_ft", "oat_c", "delay_s", "peak_descent_fpm")) {
        assertTrue(ONE_DECIMAL.matcher(record.get(column)).matches(), record.get(column));
      }
      for (String column :
          List.of("altitude_loss_ft", "loss_after_recognition_ft", "time_to_arrest_s")) {
        String field = record.get(column);
        assertTrue(field.isEmpty() || ONE_DECIMAL.matcher(field).matches(), field);
      }
    }
    for (CSVRecord record : Run.csv("fly --step 0.1")) {
      for (int i = 0; i < record.size() - 1; i++) {
        assertTrue(DECIMAL.matcher(record.get(i)).matches(), record.get(i));
        assertTrue(!record.get(i).matches("-0\\.0*"), record.get(i));
      }
    }
  }

  @Test
  void aDelayFinerThanATenthIsNotRoundedAway() throws IOException {
    List<CSVRecord> records = Run.csv("loss --recovery lateral --delays 0.25,0.3");
    assertEquals("0.25", records.get(0).get("delay_s"));
    assertEquals("0.3", records.get(1).get("delay_s"));
  }

  @Test
  void theTimeOfEverySampleIsAWholeMultipleOfTheStep() throws IOException {
    List<CSVRecord> records = Run.csv("fly --step 0.05");
    for (int i = 0; i < records.size(); i++) {
      assertEquals(i * 0.05, Run.number(records.get(i), "time_s"), 1e-9);
    }
  }

  @Test
  void theHistoryIsLowestWhereTheTableSays() throws IOException {
    // Loss is height at onset less the lowest height; without ground the height at onset is zero.
    // Near the lowest point a sample lies within half a step of it: at 1 m/s2, 0.01 ft.
    String flight = " --entry downwind --wind-kt 15";
    double loss =
        Double.parseDouble(
            Run.csv("loss --recovery lateral --delays 2" + flight).get(0).get("altitude_loss_ft"));
    double lowest =
        Run.csv("fly --recovery lateral --delay 2 --step 0.05" + flight).stream()
            .mapToDouble(record -> Run.number(record, "height_ft"))
            .min()
            .orElseThrow();
    assertEquals(-loss, lowest, 0.1 + 0.01);
  }

  @Test
  void outcomesWithoutANumberLeaveTheFieldEmpty() throws IOException {
    CSVRecord none = Run.csv("loss --recovery none --delays 1").get(0);
    assertEquals("not-arrested", none.get("outcome"));
    assertEquals("", none.get("altitude_loss_ft"));
    assertEquals("", none.get("time_to_arrest_s"));
    CSVRecord fast =
        Run.csv("loss --entry settling --wind-kt 40 --delays 1 --recovery none").get(0);
    assertEquals("no-onset", fast.get("outcome"));
    assertEquals("", fast.get("peak_descent_fpm"));
    CSVRecord low = Run.csv("loss --height-ft 30 --delays 9 --recovery none").get(0);
    assertEquals("ground", low.get("outcome"));
    // All the height at onset is lost; the ground came before recognition.
    assertEquals("30.0", low.get("altitude_loss_ft"));
    assertEquals("", low.get("loss_after_recognition_ft"));
  }

  @Test
  void theTipVortexBoundaryOfAHoverIsThatOfWolkovitch() throws IOException {
    // Wolkovitch, JAHS 17(3), 1972: axial onset at 0.707 vh; vh = sqrt(T / (2 rho A)) of momentum
    // theory, with rho = 1.225 kg/m3 (U.S. Standard Atmosphere 1976) and the numbers that
    // 'craft trainer' prints: 600 kg, radius 3.9 m.
    double area = Math.PI * 3.9 * 3.9;
    double hover = Math.sqrt(600 * 9.80665 / (2 * 1.225 * area));
    CSVRecord first =
        Run.csv("boundary").stream()
            .filter(record -> record.get("criterion").equals("tip-vortex"))
            .findFirst()
            .orElseThrow();
    assertEquals("0.0", first.get("airspeed_kt"));
    assertEquals(hover / Math.sqrt(2) / 0.3048 * 60, Run.number(first, "onset_fpm"), 0.051);
    assertEquals("", first.get("exit_fpm"));
  }

  @Test
  void aClosedBoundaryNarrowsUntilItEnds() throws IOException {
    List<CSVRecord> records = Run.csv("boundary --step-kt 0.5 --craft twin");
    for (String criterion : List.of("heave-damping", "wake-transport")) {
      List<CSVRecord> rows =
          records.stream().filter(record -> record.get("criterion").equals(criterion)).toList();
      CSVRecord first = rows.get(0);
      CSVRecord last = rows.get(rows.size() - 1);
      assertTrue(width(last) < 0.5 * width(first), last.toString());
      // Every criterion is cut off where the widest has closed.
      double end =
          records.stream()
              .filter(record -> record.get("criterion").equals("tip-vortex"))
              .mapToDouble(record -> Run.number(record, "airspeed_kt"))
              .max()
              .orElseThrow();
      assertTrue(Run.number(last, "airspeed_kt") <= end);
    }
  }

  private static double width(CSVRecord row) {
    double width = Run.number(row, "exit_fpm") - Run.number(row, "onset_fpm");
    assertTrue(width > 0, row.toString());
    return width;
  }

  @ParameterizedTest
  @CsvSource({
    "loss --delays 0 1 2.5,cells",
    "loss --delays 0 1 2.5 --pilots 8 --models 2,cells",
    "loss --pilots 8 --state distracted,cells",
    "floor --pilots 8 --height-ft 200 --models 2,cells",
    "fly --step 0.5,samples",
    "boundary,boundary",
    "runs --wind-from-deg 240 --wind-kt 12 --pilots 8,tracks"
  })
  void jsonHoldsTheSameNumbersAsTheCsv(String command, String table) throws IOException {
    String typed = command.replace("0 1 2.5", "0,1,2.5");
    JsonNode json = Run.json(typed);
    List<CSVRecord> records = Run.csv(typed);
    assertEquals(records.size(), json.get(table).size());
    for (int i = 0; i < records.size(); i++) {
      JsonNode row = json.get(table).get(i);
      records
          .get(i)
          .toMap()
          .forEach(
              (name, field) -> {
                JsonNode value = row.get(name);
                assertEquals(field, value.isNull() ? "" : value.asText(), name);
              });
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "loss --delays 0",
        "loss --pilots 8 --state primed",
        "floor --pilots 8",
        "fly --step 5",
        "boundary",
        "equilibria",
        "runs --wind-from-deg 240 --wind-kt 12 --pilots 8",
        "craft",
        "craft heavy"
      })
  void jsonCarriesCautionAndDefinitions(String command) throws IOException {
    JsonNode json = Run.json(command);
    assertEquals(Caution.TEXT, json.get("caution").textValue());
    assertTrue(!json.get("definitions").isEmpty());
    assertTrue(json.get("conditions").isObject());
  }
}
