package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * What the desk gives out as a file, and takes in as one. The commands beside it read files from
 * the folder in which the tests run: a sheet names its files, and the desk's have no folder.
 */
class DeskPaperTest {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path PLAN = Path.of("plan.toml");
  private static final Path FLIGHT = Path.of("flight-of-the-desk.gpx");
  private static final String HELD =
      "\"units\":\"aviation\",\"paper\":\"a4\",\"plan\":{\"facts\":{\"place\":\"Field A\"},"
          + "\"crew\":\"A. Pilot\",\"conditions\":{\"oat-c\":\"25\"},"
          + "\"encounter\":{\"pilots\":\"64\"},\"run\":{\"calm\":\"true\",\"pilots\":\"64\"}}";

  private static OpenDesk desk;

  @BeforeAll
  static void open() throws IOException, InterruptedException {
    desk = new OpenDesk();
    JsonNode saved = JSON.readTree(desk.post("save", "{" + HELD + "}").body());
    Files.writeString(PLAN, saved.path("text").asText());
    Files.write(FLIGHT, recording("gnss-1hz.gpx"));
  }

  @AfterAll
  static void close() throws IOException {
    desk.close();
    Files.deleteIfExists(PLAN);
    Files.deleteIfExists(FLIGHT);
  }

  /** An invented recording that comes with the tool. */
  private static byte[] recording(String name) throws IOException {
    try (var in = Main.class.getResourceAsStream("review/invented-" + name)) {
      return in.readAllBytes();
    }
  }

  private static byte[] sheet(String name, String format) throws IOException, InterruptedException {
    HttpResponse<byte[]> answer =
        desk.bytes(
            desk.request("sheet")
                .POST(
                    HttpRequest.BodyPublishers.ofString(
                        "{\"sheet\":\"" + name + "\",\"format\":\"" + format + "\"," + HELD + "}"))
                .build());
    assertEquals(200, answer.statusCode());
    return answer.body();
  }

  @Test
  void aSheetOfTheDeskHasTheBytesOfTheCommand() throws IOException, InterruptedException {
    for (String name : List.of("card", "lesson", "runs")) {
      byte[] command =
          Documents.of(name, "--plan=" + PLAN, "--units=aviation", "--paper=a4", "--format=pdf");
      assertArrayEquals(undated(command), undated(sheet(name, "pdf")), name);
    }
  }

  private static HttpResponse<byte[]> review(String name, String rest, byte[] recording)
      throws IOException, InterruptedException {
    String head = "{\"name\":\"" + name + "\"," + HELD + rest + "}\n";
    return desk.bytes(
        HttpRequest.newBuilder(desk.address().resolve("review"))
            .header("Origin", desk.origin())
            .header("Content-Type", "application/vnd.ringstate.desk+recording")
            .POST(
                HttpRequest.BodyPublishers.concat(
                    HttpRequest.BodyPublishers.ofString(head),
                    HttpRequest.BodyPublishers.ofByteArray(recording)))
            .build());
  }

  @Test
  void aDebriefOfTheDeskIsThatOfTheCommandToTheByte() throws IOException, InterruptedException {
    String command = "review " + FLIGHT + " --ground-ft=1000 --plan=" + PLAN;
    String rest = ",\"review\":{\"ground-ft\":\"1000\"}";
    JsonNode shown =
        JSON.readTree(review(FLIGHT.toString(), rest, Files.readAllBytes(FLIGHT)).body());
    List<String> printed =
        Run.line(command).lines().stream().map(line -> line.strip().replaceAll(" +", " ")).toList();
    List<String> rows = DeskTest.grid(shown);
    assertTrue(rows.size() > 1 && printed.containsAll(rows), rows + " is not in " + printed);
    assertTrue(shown.path("drawings").has("plots1"));
    String typed = command + " --units=aviation --paper=a4 --format=";
    byte[] flight = Files.readAllBytes(FLIGHT);
    assertEquals(
        plain(Documents.of((typed + "html").split(" ", -1))),
        plain(review(FLIGHT.toString(), rest + ",\"format\":\"html\"", flight).body()));
    assertArrayEquals(
        undated(Documents.of((typed + "pdf").split(" ", -1))),
        undated(review(FLIGHT.toString(), rest + ",\"format\":\"pdf\"", flight).body()));
  }

  /** A PDF without the second in which it was made, and the order in which options were typed. */
  private static byte[] undated(byte[] pdf) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertTrue(document.getNumberOfPages() > 0);
      document.setDocumentInformation(new PDDocumentInformation());
      document.getDocumentCatalog().setMetadata(null);
      document.getDocument().getTrailer().removeItem(COSName.ID);
      document.setDocumentId(0L);
      document.save(out);
    }
    return out.toByteArray();
  }

  /** A page says in which order its arguments were typed; that alone differs. */
  private static String plain(byte[] sheet) {
    return new String(sheet, UTF_8).replaceAll("(?s)\"command\" : \\[.*?\\]", "");
  }

  @Test
  void columnsOfAnyNameAreReadAsThePersonSays() throws IOException, InterruptedException {
    String text = new String(recording("instruments.csv"), UTF_8);
    // RFC 4180, 7: a quotation mark within a cell is doubled
    String named = text.replace("time_s,pressure_altitude_ft,", "t,\"GPS alt, \"\"ft\"\"\",");
    assertFalse(named.equals(text));
    String columns =
        ",\"columns\":{\"time\":{\"column\":\"t\",\"unit\":\"s\"},"
            + "\"pressure_altitude\":{\"column\":\"GPS alt, \\\"ft\\\"\",\"unit\":\"ft\"},"
            + "\"ground_speed\":{\"column\":\"ground_speed_kt\",\"unit\":\"kt\"},"
            + "\"track\":{\"column\":\"track_deg\",\"unit\":\"deg\"}}";
    JsonNode shown = JSON.readTree(review("log.csv", columns, named.getBytes(UTF_8)).body());
    assertFalse(shown.has("refused"), shown.path("refused").asText());
    assertEquals(
        "1", shown.path("tables").path("encounters").path("rows").path(0).path(0).asText());
  }

  @Test
  void aFileThatIsNoRecordingIsRefusedInTheWordsOfTheCommand()
      throws IOException, InterruptedException {
    JsonNode answer = JSON.readTree(review("x.csv", "", "a,b\n1,2\n".getBytes(UTF_8)).body());
    Files.writeString(FLIGHT, "a,b\n1,2\n");
    Run command = Run.of("review", FLIGHT.toString());
    Files.write(FLIGHT, recording("gnss-1hz.gpx"));
    assertEquals(
        command.err().strip().replace("ringstate review: " + FLIGHT, "x.csv"),
        answer.path("refused").asText());
  }

  @Test
  void aNameOfARecordingReachesNoFile() throws IOException, InterruptedException {
    byte[] flight = Files.readAllBytes(FLIGHT);
    for (String name : List.of("/etc/passwd", "../pom.xml", "--demo=gnss-1hz", "@x", "")) {
      JsonNode answer = JSON.readTree(review(name, "", flight).body());
      assertEquals("recording", answer.path("facts").path("recording").asText(), name);
      assertEquals("GPX", answer.path("facts").path("format").asText(), name);
    }
    for (String rest :
        List.of(
            ",\"review\":{\"output\":\"x\"}",
            ",\"review\":{\"columns\":\"/etc/passwd\"}",
            ",\"columns\":{\"/etc/passwd\":{}}",
            ",\"format\":\"csv\"")) {
      assertEquals(400, review("x.gpx", rest, flight).statusCode(), rest);
    }
  }

  @Test
  void fiftyMegabytesAreTakenAndMoreAreNot() throws IOException, InterruptedException {
    byte[] large = new byte[50 << 20];
    byte[] flight = Files.readAllBytes(FLIGHT);
    Arrays.fill(large, (byte) ' ');
    System.arraycopy(flight, 0, large, 0, flight.length);
    JsonNode answer = JSON.readTree(review("large.gpx", "", large).body());
    assertEquals("GPX", answer.path("facts").path("format").asText());
    assertEquals(413, review("larger.gpx", "", new byte[(50 << 20) + 1]).statusCode());
  }
}
