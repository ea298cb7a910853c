package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.instructor.report.Feet;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class LossSheetTest {

  private static final String FLIGHTS =
      "loss --pilots 30 --seed 4 --delays 1,3 --recoveries forward,lateral";

  @Test
  void theSheetShowsTheNumbersOfTheCsv() throws IOException {
    String csv = Run.of((FLIGHTS + " --format csv").split(" ", -1)).out();
    List<CSVRecord> records =
        CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .get()
            .parse(new StringReader(csv))
            .getRecords();
    String page = new String(Documents.of((FLIGHTS + " --format html").split(" ", -1)), UTF_8);
    assertEquals(4, records.size());
    for (CSVRecord record : records) {
      String fields =
          "<td class=\"gap\">"
              + Feet.text(Double.parseDouble(record.get("p50_ft")))
              + "</td><td class=\"most\">"
              + Feet.text(Double.parseDouble(record.get("p95_ft")))
              + "</td>";
      assertTrue(page.contains(fields), fields);
    }
  }

  @Test
  void aLossAboveThePlannedHeightIsMarkedByWordAndPattern() {
    String page =
        new String(Documents.of((FLIGHTS + " --height-ft 20 --format html").split(" ", -1)), UTF_8);
    // a recovery in less than 20 ft after 3 s is out of reach of any technique (arithmetic: the
    // descent at onset alone covers more)
    assertTrue(page.contains("<td class=\"most mark\"><span>&gt; "), "no mark");
    String without = new String(Documents.of((FLIGHTS + " --format html").split(" ", -1)), UTF_8);
    assertTrue(!without.contains("class=\"most mark\""), "a mark without a height");
  }
}
