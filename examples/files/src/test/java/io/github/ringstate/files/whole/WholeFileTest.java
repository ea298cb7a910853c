package io.github.ringstate.files.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.ringstate.files.error.UserError;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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
    UserError error =
        assertThrows(
            UserError.class,
            () ->
                file.replace(
                    out -> {
                      out.write(new byte[100_000]);
                      throw new IOException("disk full");
                    }));
    assertEquals(UserError.FILE, error.status());
    assertTrue(String.valueOf(error.getMessage()).contains("disk full"));
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
  void aLinkToNothingYetStaysALink() throws IOException {
    Files.createDirectory(folder.resolve("far"));
    Files.createSymbolicLink(folder.resolve("link"), Path.of("far/a.txt"));
    file("link").replace(out -> out.write('2'));
    assertEquals("2", Files.readString(folder.resolve("far/a.txt")));
    assertTrue(Files.isSymbolicLink(folder.resolve("link")));
  }

  @Test
  void behindALinkTheFolderAboveIsThatOfWhereItLeads() throws IOException {
    Files.createDirectories(folder.resolve("far/inner"));
    Files.createSymbolicLink(folder.resolve("near"), Path.of("far/inner"));
    file("near/../a.txt").replace(out -> out.write('2'));
    assertEquals("2", Files.readString(folder.resolve("far/a.txt")));
    assertHoldsOnly("far", "near");
  }

  @Test
  void linksThatLeadInACircleAreRefused() throws IOException {
    Files.createSymbolicLink(folder.resolve("a"), Path.of("b"));
    Files.createSymbolicLink(folder.resolve("b"), Path.of("a"));
    assertEquals(UserError.FILE, assertThrows(UserError.class, () -> file("a")).status());
    assertHoldsOnly("a", "b");
  }

  @Test
  void aReadOnlyFileIsNotReplacedAndPermissionsAreKept() throws IOException {
    Path old = Files.writeString(folder.resolve("a.txt"), "old");
    assumeTrue(Files.getFileStore(old).supportsFileAttributeView("posix"), "no POSIX permissions");
    Files.setPosixFilePermissions(old, PosixFilePermissions.fromString("r--r--r--"));
    UserError error = assertThrows(UserError.class, () -> file("a.txt"));
    assertTrue(String.valueOf(error.getMessage()).contains("read-only"), error.getMessage());
    Files.setPosixFilePermissions(old, PosixFilePermissions.fromString("rw-r-----"));
    file("a.txt").replace(out -> out.write('2'));
    assertEquals("2", Files.readString(old));
    assertEquals("rw-r-----", PosixFilePermissions.toString(Files.getPosixFilePermissions(old)));
  }

  @Test
  void aTemporaryFileOfAnotherIsLeftAlone() throws IOException {
    String draft = ".a.txt." + ProcessHandle.current().pid();
    Files.writeString(folder.resolve(draft), "another's");
    file("a.txt").replace(out -> out.write('2'));
    assertEquals("another's", Files.readString(folder.resolve(draft)));
    assertHoldsOnly(draft, "a.txt");
  }

  @Test
  void aFolderThatGoesMeanwhileIsReported() throws IOException {
    Path inner = Files.createDirectory(folder.resolve("inner"));
    WholeFile file = file("inner/a.txt");
    Files.delete(inner);
    UserError error = assertThrows(UserError.class, () -> file.replace(out -> out.write('1')));
    assertEquals(UserError.FILE, error.status());
    assertHoldsOnly();
  }

  /** A pipe has no name in a folder; the device stands for whatever is no plain file. */
  @ParameterizedTest
  @ValueSource(strings = {"/dev/null", "/dev/fd/0"})
  @EnabledOnOs(OS.LINUX)
  void whatIsNoPlainFileIsRefusedWithTheReason(String name) {
    Path place = Path.of(name);
    assumeTrue(Files.exists(place) && !Files.isRegularFile(place), "a plain file stands there");
    UserError error = assertThrows(UserError.class, () -> WholeFile.named("--output", name));
    assertEquals(
        name
            + " cannot be written: it is not a plain file, and only a plain file can be replaced as"
            + " a whole",
        error.getMessage());
  }
}
