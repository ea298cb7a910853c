package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.instructor.origin.Kept;
import io.github.ringstate.instructor.origin.Origin;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the desk gives out as a file, and takes in as one. */
class DeskPaperTest {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String FLIGHT = "flight.gpx";
  private static final String HELD =
      "\"units\":\"aviation\",\"paper\":\"a4\",\"plan\":{\"facts\":{\"place\":\"Field A\"},"
          + "\"crew\":\"A. Pilot\",\"conditions\":{\"oat-c\":\"25\"},"
          + "\"encounter\":{\"pilots\":\"64\"},\"run\":{\"calm\":\"true\",\"pilots\":\"64\"}}";

  @TempDir static Path folder = Path.of("");

  @AutoClose private static OpenDesk desk = new OpenDesk();
  private static String plan = "";

  @BeforeAll
  static void open() throws IOException, InterruptedException {
    JsonNode saved = JSON.readTree(desk.post("save", "{" + HELD + "}").body());
    plan = Files.writeString(folder.resolve("plan.toml"), saved.path("text").asText()).toString();
    Files.write(folder.resolve(FLIGHT), Documents.recording("gnss-1hz.gpx"));
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
    for (String name : List.of("lesson", "runs")) {
      byte[] command =
          Documents.of(name, "--plan=" + plan, "--units=aviation", "--paper=a4", "--format=html");
      assertEquals(plain(command), plain(sheet(name, "html")), name);
    }
    byte[] command =
        alone("card", "--plan=plan.toml", "--units=aviation", "--paper=a4", "--format=pdf");
    assertArrayEquals(undated(command), undated(sheet("card", "pdf")));
  }

  /** What a command prints of files in no folder; a PDF names them as they were typed. */
  private static byte[] alone(String... arguments) throws IOException {
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    StringWriter said = new StringWriter();
    Map<String, String> texts = Map.of("plan.toml", Files.readString(Path.of(plan)));
    Kept kept = Kept.alone(texts, Map.of(FLIGHT, Documents.recording("gnss-1hz.gpx")));
    PrintWriter err = new PrintWriter(said, true);
    int status = Main.hosted(List.of(arguments), kept, printed, err, Optional.empty());
    assertEquals(0, status, said.toString());
    return printed.toByteArray();
  }

  private static HttpResponse<byte[]> review(String name, String rest, byte[] recording)
      throws IOException, InterruptedException {
    String head = "{\"name\":\"" + name + "\"," + HELD + rest + "}\n";
    return desk.review(head, recording);
  }

  @Test
  void aDebriefOfTheDeskIsThatOfTheCommandToTheByte() throws IOException, InterruptedException {
    byte[] flight = Documents.recording("gnss-1hz.gpx");
    String file = folder.resolve(FLIGHT).toString();
    String command = "review " + file + " --ground-ft=1000 --plan=" + plan;
    String rest = ",\"review\":{\"ground-ft\":\"1000\"}";
    JsonNode shown = JSON.readTree(review(FLIGHT, rest, flight).body());
    List<String> printed = Run.line(command).rows();
    List<String> rows = DeskTest.grid(shown);
    assertTrue(rows.size() > 1 && printed.containsAll(rows), rows + " is not in " + printed);
    assertTrue(shown.path("drawings").has("height1"));
    String paper = " --units=aviation --paper=a4 --format=";
    assertEquals(
        plain(Documents.of((command + paper + "html").split(" ", -1))),
        plain(review(FLIGHT, rest + ",\"format\":\"html\"", flight).body()));
    String typed = "review " + FLIGHT + " --ground-ft=1000 --plan=plan.toml" + paper + "pdf";
    assertArrayEquals(
        undated(alone(typed.split(" ", -1))),
        undated(review(FLIGHT, rest + ",\"format\":\"pdf\"", flight).body()));
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

  /** A page says in which order its arguments were typed, and the folders; that alone differs. */
  private static String plain(byte[] sheet) {
    return new String(sheet, UTF_8)
        .replaceAll("(?s)\"command\" : \\[.*?\\]", "")
        .replace(folder + "/", "");
  }

  @Test
  void columnsOfAnyNameAreReadAsThePersonSays() throws IOException, InterruptedException {
    String text = new String(Documents.recording("instruments.csv"), UTF_8);
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
    Path file = Files.writeString(folder.resolve("x.csv"), "a,b\n1,2\n");
    Run command = Run.of("review", file.toString());
    assertEquals(
        command.err().strip().replace("ringstate review: " + file, "x.csv"),
        answer.path("refused").asText());
  }

  @Test
  void aNameOfARecordingReachesNoFile() throws IOException, InterruptedException {
    byte[] flight = Documents.recording("gnss-1hz.gpx");
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
  void nothingThatIsNotOnTheDeskIsRead() {
    Origin desk = new Origin(Kept.alone(Map.of(), Map.of()), true);
    assertThrows(UserError.class, () -> desk.read(plan, "a plan", 65_536));
    assertThrows(UserError.class, () -> desk.recording(folder.resolve(FLIGHT).toString()));
  }
}
