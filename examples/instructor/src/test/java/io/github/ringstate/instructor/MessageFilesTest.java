package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.sheets.message.Messages;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The sentences that an editor owns. */
class MessageFilesTest {

  private static final Path RESOURCES = Path.of("src", "main", "resources");

  static List<Path> files() throws IOException {
    try (Stream<Path> all = Files.walk(RESOURCES)) {
      return all.filter(file -> file.getFileName().toString().endsWith("Messages.txt")).toList();
    }
  }

  @Test
  void thereAreSome() throws IOException {
    assertFalse(files().isEmpty());
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyMessageAndPlaceholderIsKnownToTheProgramAndTheOtherWayRound(Path file)
      throws ClassNotFoundException {
    String path = RESOURCES.relativize(file).toString();
    Class<?> subject =
        Class.forName(path.replace(".txt", "").replace(file.getFileSystem().getSeparator(), "."));
    assertNotNull(Messages.of(subject));
  }

  @ParameterizedTest
  @MethodSource("files")
  void aFileSaysWhatItIsForAndIsKeptForReaders(Path file) throws IOException {
    List<String> lines = Files.readAllLines(file, UTF_8);
    assertFalse(lines.get(0).startsWith("=="), "no word to editors");
    assertTrue(lines.stream().allMatch(line -> line.length() <= 130), "a long line");
  }
}
