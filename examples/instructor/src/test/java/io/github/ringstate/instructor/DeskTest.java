package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.github.ringstate.files.text.Caution;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the briefing desk answers, and whom it does not. */
class DeskTest {

  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir static Path folder = Path.of("");

  @AutoClose private static OpenDesk desk = new OpenDesk();

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

  /** The first line of the answer to a request that no well-behaved browser would send. */
  private static String raw(String head) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), desk.address().getPort())) {
      socket.setSoTimeout(20_000);
      socket.getOutputStream().write((head + "\r\n").getBytes(US_ASCII));
      socket.getOutputStream().flush();
      BufferedReader answer =
          new BufferedReader(new InputStreamReader(socket.getInputStream(), US_ASCII));
      return String.valueOf(answer.readLine());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"localhost", "evil.example", "127.0.0.1", "127.0.0.1.evil.example:80"})
  void underAnotherNameOfThisMachineNothingIsAnswered(String host) throws IOException {
    // a name that its owner lets point to 127.0.0.1 would make another site this one (RFC 6454)
    String head = "GET " + desk.address().getPath() + " HTTP/1.1\r\nHost: ";
    assertTrue(raw(head + host + "\r\n").contains(" 403 "));
    assertTrue(raw(head + "127.0.0.1:" + desk.address().getPort() + "\r\n").contains(" 200 "));
  }

  @Test
  void fiftyMegabytesAreRefusedUnread() throws IOException {
    String head =
        "POST "
            + desk.address().getPath()
            + "study HTTP/1.1\r\nHost: 127.0.0.1:"
            + desk.address().getPort()
            + "\r\nOrigin: "
            + desk.origin()
            + "\r\nContent-Type: "
            + OpenDesk.TYPE
            + "\r\nContent-Length: 52428800\r\n";
    assertTrue(raw(head).contains(" 413 "));
  }

  @Test
  void aRequestForTheHeadHasTheLengthAndNoBody() throws IOException, InterruptedException {
    // RFC 9110, 9.3.2: the header fields of GET, no content
    HttpRequest head =
        HttpRequest.newBuilder(desk.address())
            .method("HEAD", HttpRequest.BodyPublishers.noBody())
            .build();
    var answer = desk.send(head);
    var page = desk.send(HttpRequest.newBuilder(desk.address()).build());
    assertEquals(200, answer.statusCode());
    assertEquals("", answer.body());
    assertEquals(
        page.headers().firstValue("Content-Length"), answer.headers().firstValue("Content-Length"));
  }

  @Test
  void aPlanThatIsSavedIsOpenedAgainAsItWas() throws IOException, InterruptedException {
    String plan =
        "{\"facts\":{\"place\":\"Field \\\"A\\\"\"},\"crew\":\"A. Pilot, B. Observer\","
            + "\"technique\":\"lateral\",\"conditions\":{\"craft\":\"twin\",\"oat-c\":\"20\"},"
            + "\"encounter\":{\"height-ft\":\"300\"},\"run\":{\"calm\":\"true\"},"
            + "\"agreed\":{\"least_height_ft\":\"500\"}}";
    JsonNode saved = JSON.readTree(desk.post("save", "{\"plan\":" + plan + "}").body());
    JsonNode opened = JSON.readTree(desk.post("open", saved.toString()).body()).path("plan");
    JsonNode given = JSON.readTree(plan);
    for (String part : List.of("facts", "conditions", "encounter", "run", "agreed")) {
      for (Map.Entry<String, JsonNode> one : given.path(part).properties()) {
        assertEquals(one.getValue().asText(), opened.path(part).path(one.getKey()).asText(), part);
      }
    }
    assertEquals("A. Pilot, B. Observer", opened.path("crew").asText());
    assertEquals("lateral", opened.path("technique").asText());
  }

  @Test
  void aCraftFromAManualIsThatOfTheCommand() throws IOException, InterruptedException {
    String options =
        "--name mine --empty-mass-kg 950 --maximum-mass-kg 1800 --rotor-diameter-m 10.4"
            + " --chord-m 0.28 --blades 3 --rotor-rpm 386 --engine turbine --rotation"
            + " counter-clockwise --continuous-kw 330 --take-off-kw 380 --hover-ceiling-ft 6000"
            + " --hover-ceiling-mass-kg 1800 --hover-ceiling-oat-c 20 --climb-fpm 1500"
            + " --climb-speed-kt 60";
    ObjectNode numbers = JSON.createObjectNode();
    String[] words = options.split(" ", -1);
    for (int i = 0; i < words.length; i += 2) {
      numbers.put(words[i].substring(2), words[i + 1]);
    }
    ObjectNode sent = JSON.createObjectNode().put("units", "aviation");
    sent.set("numbers", numbers);
    JsonNode made = JSON.readTree(desk.post("manual", sent.toString()).body());
    Path file = folder.resolve("mine.toml");
    List<String> printed = Run.line("manual " + options + " --craft-file " + file).rows();
    assertEquals(Files.readString(file), made.path("text").asText());
    List<String> here = grid(made);
    assertTrue(here.size() > 3 && printed.containsAll(here), here.toString());
  }

  /** The grid of a report on the page, as the text of the command has it: cells by blanks. */
  static List<String> grid(JsonNode line) {
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
        List<String> there = Run.line(command).rows();
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
