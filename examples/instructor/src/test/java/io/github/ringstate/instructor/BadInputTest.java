package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BadInputTest {

  @TempDir static Path folder = Path.of("");

  @BeforeAll
  static void files() throws IOException {
    BadInputFiles.write(folder);
  }

  static List<BadInput> bad() {
    return BadInput.ALL;
  }

  @ParameterizedTest
  @MethodSource("bad")
  void isRefusedWithTheOptionTheValueAndWhatIsAllowed(BadInput bad) {
    BadInputFiles.assertRefused(bad, folder, Run.of(BadInputFiles.args(bad, folder)));
  }

  @Test
  void anOldFileStaysAsItWasAndNoDraftIsLeft() throws IOException {
    Path old = Files.writeString(folder.resolve("old.txt"), "old");
    for (BadInput bad : BadInput.ALL) {
      if (bad.args().get(0).equals("loss") && !bad.what().startsWith("option")) {
        String[] args =
            Stream.concat(
                    Stream.of(BadInputFiles.args(bad, folder)),
                    Stream.of("--output", old.toString()))
                .toArray(String[]::new);
        assertEquals(bad.status(), Run.of(args).status(), bad.toString());
        assertEquals("old", Files.readString(old), bad.toString());
      }
    }
    try (Stream<Path> files = Files.list(folder)) {
      assertTrue(files.noneMatch(file -> file.getFileName().toString().startsWith(".")));
    }
  }
}
