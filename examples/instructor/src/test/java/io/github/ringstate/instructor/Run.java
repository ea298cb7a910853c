package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import io.github.ringstate.files.error.UserError;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * What a run of the tool left behind.
 *
 * @param status the exit status
 * @param out what it printed
 * @param err what it complained of
 */
public record Run(int status, String out, String err) {

  private static final Map<List<String>, Run> MADE = new ConcurrentHashMap<>();

  private static final JsonMapper JSON =
      JsonMapper.builder()
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .build();

  /** Runs the tool in this virtual machine. */
  public static Run of(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    StringWriter err = new StringWriter();
    int status = Main.commandLine(out).setErr(new PrintWriter(err, true)).execute(args);
    return new Run(status, out.toString(UTF_8), err.toString());
  }

  /** What the tool leaves behind, run once for all tests; not for files that tests write. */
  static Run shared(String... args) {
    return MADE.computeIfAbsent(List.of(args), line -> of(args));
  }

  /** Runs a command as it is typed, with blanks between. */
  public static Run typed(String command) {
    return of(command.split(" ", -1));
  }

  /** Runs a command as it is typed, which must go well. */
  public static Run line(String command) {
    Run run = typed(command);
    assertEquals(0, run.status, run.err);
    return run;
  }

  /** What the tool says of a wrong option or value in a command, of which nothing is printed. */
  public static String refused(String command) {
    Run run = typed(command);
    assertEquals(UserError.USAGE, run.status, run.err);
    assertEquals("", run.out);
    return run.err;
  }

  /** A command with a wrong option or value is refused, in words that hold these. */
  public static void assertRefused(String command, String words) {
    String said = refused(command);
    assertTrue(said.contains(words), said);
  }

  /** The same of a command that reads a file with something wrong. */
  public static void assertFileRefused(String command, String words) {
    Run run = typed(command);
    assertEquals(UserError.FILE, run.status, run.err);
    assertEquals("", run.out);
    assertTrue(run.err.contains(words) && !run.err.contains("Exception"), run.err);
  }

  /** Whatever the tool prints of a command that must go well, one blank between two words. */
  public static String words(String command) {
    return line(command).out.replaceAll("\\s+", " ");
  }

  /** The JSON that a command prints; every number as it stands there, every key once. */
  public static JsonNode json(String command) throws JsonProcessingException {
    return JSON.readTree(known(command + " --format json").out);
  }

  /** The rows of the CSV that a command prints. */
  public static List<CSVRecord> csv(String command) throws IOException {
    return known(command + " --format csv").records();
  }

  /** A command that must go well, run once for all tests unless it names a file that may change. */
  static Run known(String command) {
    String[] args = command.split(" ", -1);
    Run run = command.contains("/") ? of(args) : shared(args);
    assertEquals(0, run.status, run.err);
    return run;
  }

  /** The rows of the CSV that it printed; it must have gone well. */
  public List<CSVRecord> records() throws IOException {
    assertEquals(0, status, err);
    return CSVFormat.RFC4180
        .builder()
        .setHeader()
        .setSkipHeaderRecord(true)
        .get()
        .parse(new StringReader(out))
        .getRecords();
  }

  /** What it printed, line by line, one blank between two words. */
  List<String> rows() {
    return out.lines().map(line -> line.strip().replaceAll(" +", " ")).toList();
  }

  /** A number in a row. */
  static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  /** What it printed, line by line. */
  public List<String> lines() {
    return out.lines().toList();
  }
}
