package io.github.ringstate.files.toml;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.dataformat.toml.TomlMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class StatementsTest {

  /** Statements as TOML 1.0.0 has them (toml.io), each whole; K stands for a key of its own. */
  private static final List<String> WHOLE =
      List.of(
          "K = 1",
          "  K=2 # [ not open, \" not open",
          "K = \"[ # \\\" ]\"",
          "K = '[ # \\'",
          "K = \"\"\"\nx = 3\n\\\"\"\" [ #\n\"\"\"",
          "K = \"\"\"two at the end\"\"\"\"\" # said",
          "K = \"\"\"\"one at the start\"\"\"",
          "K = '''\n\\\n[''\n'''",
          "K = ''",
          "K = \"\"",
          "K = [ # one\n  1, # ]\n\n  [2, 3],\n]",
          "K = [\n  \"]\", ''']\n''',\n]",
          "\"K\" = { a = [1,\n2], b = \"}\" }",
          "'K'.b = 0.5",
          "[K]",
          "[ K . 'x#]' ]",
          "[[K]]");

  private static final List<String> NONE = List.of("", "   ", "# a comment [", "\t# \"\"\"");

  static IntStream seeds() {
    return IntStream.range(0, 300);
  }

  @ParameterizedTest
  @ValueSource(strings = {"K = \"cut off \\", "K = \"\"\"cut off \\", "K = 'cut off \\"})
  void textThatEndsBehindABackslashIsAStatementThatIsNotWhole(String cut) {
    assertEquals(cut, Statements.of("K = 1\n" + cut).get(1).text());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void statementsAreFoundWhereTheyWerePut(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    StringBuilder text = new StringBuilder();
    List<String> put = new ArrayList<>();
    int line = 1;
    for (int i = 0; i < 12; i++) {
      boolean none = random.nextInt(3) == 0;
      List<String> from = none ? NONE : WHOLE;
      String piece = from.get(random.nextInt(from.size())).replace("K", "key" + i);
      if (!none) {
        put.add(line + ": " + piece);
      }
      text.append(piece).append('\n');
      line += (int) piece.chars().filter(c -> c == '\n').count() + 1;
    }

    assertEquals(
        put,
        Statements.of(text.toString()).stream()
            .map(statement -> statement.line() + ": " + statement.text())
            .toList());
  }

  @Test
  void eachIsADocumentOfItsOwnToTheParser() {
    TomlMapper parser = new TomlMapper();
    for (String statement : WHOLE) {
      assertDoesNotThrow(() -> parser.readTree(statement + "\n"), statement);
    }
  }

  @Test
  void aTextWithoutEndIsTheLastStatement() {
    for (String open : List.of("x = [\ny = 2\n", "x = \"\"\"\ny = 2", "x = '''y\n")) {
      List<Statements.Statement> found = Statements.of("a = 1\n" + open);
      assertEquals(2, found.size(), open);
      assertEquals(2, found.get(1).line(), open);
    }
  }

  @Test
  void aKeyIsFoundInAFileOfTheGreatestSize() {
    // 900 kB; parsing its every beginning would take hours
    String list =
        IntStream.range(0, 60_000).mapToObj(i -> "  " + i + ",\n").collect(Collectors.joining());
    String comments = "# a comment\n".repeat(40_000);
    TomlDocument document =
        TomlDocument.parse(
            "sweep.toml",
            comments + "[pilot]\ncount = [\n" + list + "]\nwrong = 1\n",
            RenamedKeys.SINCE_0_1_0);

    String message = document.bad(List.of("pilot", "wrong"), "less").getMessage();

    assertTrue(String.valueOf(message).startsWith("sweep.toml, line 100004: "), message);
  }
}
