package io.github.ringstate.instructor.delivery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.instructor.refusal.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {

  @TempDir Path folder = Path.of("");

  private WholeFile file(String name) {
    return WholeFile.named("--output", folder.resolve(name).toString());
  }

  private void assertHoldsOnly(String... names) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(
          Stream.of(names).sorted().toList(),
          files.map(file -> file.getFileName().toString()).sorted().toList());
    }
  }

  @Test
  void aFileIsMadeAndReplaced() throws IOException {
    file("a.txt").replace(out -> out.write('1'));
    file("a.txt").replace(out -> out.write('2'));
    assertEquals("2", Files.readString(folder.resolve("a.txt")));
    assertHoldsOnly("a.txt");
  }

  @Test
  void aWriteThatFailsHalfwayLeavesTheOldFileAndNothingElse() throws IOException {
    Files.writeString(folder.resolve("a.txt"), "old");
    WholeFile file = file("a.txt");
    Refusal refusal =
        assertThrows(
            Refusal.class,
            () ->
                file.replace(
                    out -> {
                      out.write(new byte[100_000]);
                      throw new IOException("disk full");
                    }));
    assertEquals(Refusal.FILE, refusal.status());
    assertTrue(String.valueOf(refusal.getMessage()).contains("disk full"));
    assertEquals("old", Files.readString(folder.resolve("a.txt")));
    assertHoldsOnly("a.txt");
  }

  @Test
  void anErrorInWhatIsWrittenLeavesTheOldFileToo() throws IOException {
    Files.writeString(folder.resolve("a.txt"), "old");
    WholeFile file = file("a.txt");
    assertThrows(
        IllegalStateException.class,
        () ->
            file.replace(
                out -> {
                  out.write(1);
                  throw new IllegalStateException("an error");
                }));
    assertEquals("old", Files.readString(folder.resolve("a.txt")));
    assertHoldsOnly("a.txt");
  }

  @Test
  void whatALinkPointsToIsReplacedAndNotTheLink() throws IOException {
    Files.writeString(folder.resolve("a.txt"), "old");
    Files.createSymbolicLink(folder.resolve("link"), Path.of("a.txt"));
    file("link").replace(out -> out.write('2'));
    assertEquals("2", Files.readString(folder.resolve("a.txt")));
    assertTrue(Files.isSymbolicLink(folder.resolve("link")));
    assertHoldsOnly("a.txt", "link");
  }

  @Test
  void aFolderThatGoesMeanwhileIsReported() throws IOException {
    Path inner = Files.createDirectory(folder.resolve("inner"));
    WholeFile file = file("inner/a.txt");
    Files.delete(inner);
    Refusal refusal = assertThrows(Refusal.class, () -> file.replace(out -> out.write('1')));
    assertEquals(Refusal.FILE, refusal.status());
    assertHoldsOnly();
  }
}
