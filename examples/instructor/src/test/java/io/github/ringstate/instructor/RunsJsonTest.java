package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What runs say to machines of each track. */
class RunsJsonTest {

  static JsonNode json(String args) throws IOException {
    Run run = Run.shared(RunsTest.runs("--format json " + args));
    assertEquals(0, run.status(), run.err());
    return new ObjectMapper().readTree(run.out());
  }

  /**
   * A wind from the north of 20 kt, gusts 30, hence lulls of 10, and 25 kt over the ground: by
   * Pythagoras across it, and a wind of 25 kt leaves a turn downwind no airspeed.
   */
  @Test
  void gustsAndLullsStandInTheAirspeeds() throws IOException {
    String wind = "--wind-from-deg 0 --wind-kt 20 --gust-kt 30 --wind-exponent 0 --allowance-kt 0";
    JsonNode across = json(wind).get("tracks").get(9);
    assertEquals(26.9, across.get("minimum_airspeed_kt").asDouble(), 0.05);
    assertEquals(39.1, across.get("maximum_airspeed_kt").asDouble(), 0.05);
    assertEquals(0, across.get("airspeed_downwind_kt").asDouble(), 0.05);
  }

  @Test
  void whatDoesNotSufficeToHoverIsTold() throws IOException {
    JsonNode track =
        json("--pressure-altitude-ft 8000 --oat-c 20 --height-ft 5000").get("tracks").get(0);
    assertTrue(track.get("hover_margin_pct").asDouble() < 0, track.toString());
    String reason = track.get("reason").asText();
    assertTrue(reason.contains("does not suffice to hover"), reason);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "--craft heavy --height-ft 1000 --units si",
        "--craft heavy --mass-kg 9000 --oat-c 35 --ground-speed-kt 45 --gust-kt 40 --height-ft 1500"
      })
  void aLimitIsKeptByTheRunAndToldByItsReason(String args) throws IOException {
    Set<String> kinds = new TreeSet<>();
    for (JsonNode track : json(args).get("tracks")) {
      JsonNode airspeed = track.get("minimum_airspeed_limit_kt");
      JsonNode groundSpeed = track.get("ground_speed_instead_kt");
      String verdict = track.get("verdict").asText();
      kinds.add(verdict);
      assertEquals(verdict.equals("fly with a limit"), !airspeed.isNull());
      assertEquals(verdict.equals("not as planned"), !groundSpeed.isNull());
      String reason = track.get("reason").asText();
      for (JsonNode said : List.of(airspeed, groundSpeed)) {
        assertTrue(said.isNull() || reason.contains(Math.round(said.asDouble()) + " kt"), reason);
      }
      if (!airspeed.isNull()) {
        assertTrue(
            track.get("minimum_airspeed_kt").asDouble() >= airspeed.asDouble(), track.toString());
      }
    }
    assertTrue(kinds.contains("fly with a limit"), kinds.toString());
  }

  @Test
  void aTailRotorSectorThatOnlyAGustReachesIsFlagged() throws IOException {
    // 15 kt behind a run of 25 kt come from ahead of the nose; in a gust of 40 kt the wind
    // comes from behind, in the weathercock sector of FAA AC 90-95 (from memory).
    String wind = "--wind-from-deg 0 --wind-kt 15 --wind-exponent 0 --gust-kt ";
    assertEquals("none", json(wind + 15).get("tracks").get(18).get("tail_rotor_sectors").asText());
    assertEquals(
        "weathercock", json(wind + 40).get("tracks").get(18).get("tail_rotor_sectors").asText());
  }
}
