package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Terrain in the side view, against the time history of the same flights. */
class TerrainTest {

  /** A needle of 370 ft, 140 ft beyond onset; its tip lies between two samples of the page. */
  private static final double[][] TERRAIN = {{0, 0}, {110, 40}, {140, 370}, {170, 40}, {400, 120}};

  private static final String GIVEN = "0:0,110:40,140:370,170:40,400:120";

  /** Of each step of the history, so that the tip is met within a tenth of a foot. */
  private static final int PARTS = 50;

  private static final double KNOT_IN_FEET_PER_SECOND = 1852 / 0.3048 / 3600;

  @BeforeAll
  static void thereIsABrowser() {
    Chromium.isThere();
  }

  /** Where a flight is above the terrain, by sums over its time history. */
  private record Over(double least, double struck) {}

  private static double terrain(double distance) {
    for (int i = 1; i < TERRAIN.length; i++) {
      double[] from = TERRAIN[i - 1];
      double[] to = TERRAIN[i];
      if (distance >= from[0] && distance <= to[0]) {
        return from[1] + (to[1] - from[1]) * (distance - from[0]) / (to[0] - from[0]);
      }
    }
    return Double.NEGATIVE_INFINITY;
  }

  /** The ground speed summed up from onset is the distance; the terrain is looked up below it. */
  private static Over flown(String recovery) throws IOException {
    String command = "fly --height-ft 500 --delay 1 --step 0.01 --recovery " + recovery;
    JsonNode onset = Run.json(command.replace("0.01", "5")).at("/events/0");
    assertEquals("ONSET", onset.get("event").asText());
    double begun = onset.get("time_s").asDouble();
    double distance = 0;
    double last = 500;
    double before = begun;
    double least = Double.POSITIVE_INFINITY;
    double struck = Double.NaN;
    for (CSVRecord at : Run.csv(command)) {
      double time = Run.number(at, "time_s");
      if (time < begun) {
        continue;
      }
      double way = (time - before) * Run.number(at, "ground_speed_kt") * KNOT_IN_FEET_PER_SECOND;
      double height = Run.number(at, "height_ft");
      for (int part = 1; part <= PARTS; part++) {
        double share = (double) part / PARTS;
        double clear = last + share * (height - last) - terrain(distance + share * way);
        least = Math.min(least, clear);
        if (clear < 0 && Double.isNaN(struck)) {
          struck = before + share * (time - before) - begun;
        }
      }
      distance += way;
      before = time;
      last = height;
    }
    return new Over(least, struck);
  }

  private static double said(String text, String pattern) {
    Matcher found = Pattern.compile(pattern).matcher(text);
    assertTrue(found.find(), text);
    return Double.parseDouble(found.group(1));
  }

  @Test
  void theHeightAboveTheTerrainIsThatOfTheTimeHistoryAndTheTerrainIsDrawnWhereItStands(
      @TempDir Path folder) throws IOException, InterruptedException {
    Path file = folder.resolve("terrain.html");
    Files.write(
        file, Documents.of("fly", "--height-ft", "500", "--terrain-ft", GIVEN, "--format", "html"));
    try (Chromium page = new Chromium()) {
      page.open(file.toUri());
      page.find("input[value=autorotation]").click();
      String text = page.ask("document.getElementById('said').textContent");
      // whole feet, rounded down; both hold lengths in tenths of a foot
      Over clear = flown("forward");
      assertTrue(clear.least() > 0, "forward " + clear);
      double printed = said(text, "forward [^;]*; least height above the terrain (-?[0-9]+) ft");
      assertEquals(clear.least() - 0.5, printed, 1);
      Over struck = flown("autorotation");
      assertTrue(struck.least() < 0, "autorotation " + struck);
      // told at a sample, which come every 0.2 s, in tenths of a second
      assertEquals(
          struck.struck() + 0.1,
          said(text, "autorotation below the terrain at ([0-9.]+) s; arrested"),
          0.15);
      assertTrue(!text.contains("forward below"), text);

      // where the axes have its points, by the places of their numbers
      List<double[]> drawn =
          Stream.of(
                  page.ask(
                          "document.querySelector('#side .terrain + polyline').getAttribute('points')")
                      .split(" "))
              .map(point -> Stream.of(point.split(",")).mapToDouble(Double::parseDouble).toArray())
              .toList();
      double left = place(page, "middle", "0", "x");
      double perFoot = (place(page, "middle", "200", "x") - left) / 200;
      double foot = place(page, "end", "0", "y");
      double perFootUp = (place(page, "end", "400", "y") - foot) / 400;
      // the text of a number stands 5 units below its line
      double[] tip = drawn.get(2);
      assertEquals(left + 140 * perFoot, tip[0], 0.1);
      assertEquals(foot - 5 + 370 * perFootUp, tip[1], 0.1);
      assertEquals(left, drawn.get(0)[0], 0.1);
      assertEquals(foot - 5, drawn.get(0)[1], 0.1);
      assertEquals(List.of(), page.complaints());
    }
  }

  /** Where the number of an axis stands in the side view. */
  private static double place(Chromium page, String anchor, String number, String axis) {
    return Double.parseDouble(
        page.ask(
            "Array.from(document.querySelectorAll('#side text[text-anchor=\""
                + anchor
                + "\"]')).find(function (t) { return t.textContent === '"
                + number
                + "'; }).getAttribute('"
                + axis
                + "')"));
  }
}
