package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.ringstate.files.text.Caution;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the briefing desk answers, and whom it does not. */
class DeskTest {

  private static OpenDesk desk;

  @BeforeAll
  static void open() throws InterruptedException {
    desk = new OpenDesk();
  }

  @AfterAll
  static void close() {
    desk.close();
  }

  @Test
  void thePageCarriesTheCautionAndAStrictPolicy() throws IOException, InterruptedException {
    var page = desk.send(HttpRequest.newBuilder(desk.address()).build());
    assertEquals(200, page.statusCode());
    assertTrue(page.body().contains(Caution.TEXT));
    String policy = page.headers().firstValue("Content-Security-Policy").orElseThrow();
    // W3C Content Security Policy Level 3: nothing but what is named may be loaded or run
    assertTrue(
        policy.startsWith("default-src 'none'; script-src 'self'; style-src 'self'"), policy);
    assertTrue(policy.contains("form-action 'none'; frame-ancestors 'none'; base-uri 'none'"));
    assertEquals("nosniff", page.headers().firstValue("X-Content-Type-Options").orElseThrow());
    assertEquals("no-referrer", page.headers().firstValue("Referrer-Policy").orElseThrow());
  }

  @ParameterizedTest
  @CsvSource({
    "POST, start, http://evil.example, application/vnd.ringstate.desk+json, 403",
    "POST, start, http://localhost, application/vnd.ringstate.desk+json, 403",
    "POST, start, null, application/vnd.ringstate.desk+json, 403",
    "POST, start, OWN, text/plain, 415",
    "POST, start, OWN, application/x-www-form-urlencoded, 415",
    "POST, start, OWN, application/json, 415",
    "POST, start, OWN, application/vnd.ringstate.desk+json, 200",
    "POST, nothing, OWN, application/vnd.ringstate.desk+json, 404",
    "GET, desk.css, http://evil.example, text/plain, 403",
    "GET, desk.css, OWN, text/plain, 200",
    "GET, ../desk.css, OWN, text/plain, 404",
    "GET, Desk.class, OWN, text/plain, 404",
    "GET, start, OWN, text/plain, 404",
    "PUT, start, OWN, application/vnd.ringstate.desk+json, 405",
    "OPTIONS, start, http://evil.example, text/plain, 403",
  })
  void onlyThePageItselfIsAnswered(
      String method, String action, String origin, String type, int status)
      throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(desk.address().resolve(action))
            .header("Origin", origin.equals("OWN") ? desk.origin() : origin)
            .header("Content-Type", type)
            .method(method, HttpRequest.BodyPublishers.ofString("{}"))
            .build();
    var answer = desk.send(request);
    assertEquals(status, answer.statusCode());
    // a browser shows no answer to another origin that is not allowed by name (WHATWG Fetch)
    assertTrue(answer.headers().firstValue("Access-Control-Allow-Origin").isEmpty());
  }

  @Test
  void aWrongSecretFindsNothing() throws IOException, InterruptedException {
    String wrong = desk.origin() + "/" + "A".repeat(32) + "/";
    for (String address : List.of(wrong, desk.origin() + "/", desk.origin() + "/desk.css")) {
      assertEquals(
          404, desk.send(HttpRequest.newBuilder(URI.create(address)).build()).statusCode());
    }
  }

  /** The grid of a report on the page, as the text of the command has it: cells by blanks. */
  private static List<String> grid(JsonNode line) {
    List<String> rows = new ArrayList<>();
    for (JsonNode block : line.path("sheet").path("blocks")) {
      for (JsonNode row : block.path("rows")) {
        List<String> cells = new ArrayList<>();
        row.forEach(cell -> cells.add(cell.asText()));
        rows.add(String.join(" ", cells).strip().replaceAll(" +", " "));
      }
    }
    return rows;
  }

  private static List<String> printed(String command) {
    return Run.line(command).lines().stream()
        .map(line -> line.strip().replaceAll(" +", " "))
        .toList();
  }

  @Test
  void everyNumberOfTheTablesIsThatOfTheCommand() throws IOException, InterruptedException {
    String options = " --craft=heavy --oat-c=30 --height-ft=400";
    List<JsonNode> lines =
        desk.study(
            "{\"conditions\":{\"craft\":\"heavy\",\"oat-c\":\"30\"},"
                + "\"encounter\":{\"height-ft\":\"400\"}}",
            6);
    int compared = 0;
    for (JsonNode line : lines) {
      String panel = line.path("panel").asText();
      int pilots = line.path("pilots").asInt();
      String command =
          switch (panel) {
            case "loss" -> "loss" + options;
            case "pilots" -> "loss" + options + " --pilots=" + pilots;
            case "floor" -> "floor" + options + " --pilots=" + pilots;
            case "boundary" -> "boundary --craft=heavy --oat-c=30";
            case "fly" -> "fly" + options;
            default -> "";
          };
      if (!command.isEmpty()) {
        List<String> there = printed(command);
        List<String> here = grid(line);
        assertTrue(here.size() > 3, panel);
        assertTrue(there.containsAll(here), panel + " shows " + here);
        compared++;
      }
    }
    assertEquals(5, compared);
  }

  @Test
  void aWrongValueIsRefusedInTheWordsOfTheCommand() throws IOException, InterruptedException {
    List<JsonNode> lines =
        desk.study("{\"conditions\":{\"craft\":\"heavy\",\"mass-kg\":\"1\"}}", 1);
    Run command = Run.of("loss", "--craft=heavy", "--mass-kg=1");
    assertEquals("ringstate loss: " + lines.get(0).path("refused").asText(), command.err().strip());
  }

  @Test
  void noPathOfThePageReachesTheDisk() throws IOException, InterruptedException {
    for (String plan :
        List.of(
            "{\"conditions\":{\"craft\":\"/etc/passwd\"}}",
            "{\"conditions\":{\"craft\":\"trainer.toml\"}}",
            "{\"conditions\":{\"output\":\"x\"}}",
            "{\"encounter\":{\"plan\":\"x\"}}",
            "{\"facts\":{\"output\":\"x\"}}")) {
      assertEquals(400, desk.post("study", "{\"plan\":" + plan + "}").statusCode(), plan);
    }
  }

  @Test
  void theEndEndsTheCommand() throws IOException, InterruptedException {
    try (OpenDesk other = new OpenDesk()) {
      assertEquals(200, other.post("end", "{}").statusCode());
      assertTrue(other.isEnded());
    }
  }
}
