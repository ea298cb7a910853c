package io.github.ringstate.validation.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.CheckKind;
import io.github.ringstate.validation.check.Source;
import io.github.ringstate.validation.check.Tally;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Held-out sources validate and do nothing else, and no number of the library is from one. */
class HeldOutTest {

  private static final Path LIBRARY = Path.of("..", "core", "src", "main", "java");

  private static final Tally TALLY = Tally.of(CatalogueTest.SECTIONS);

  @Test
  void everyHeldOutSourceIsComparedWithAndOnlyToValidate() {
    for (Source held : HeldOut.sources()) {
      List<Check> checks =
          TALLY.checks().stream()
              .filter(check -> check.question().source().work().equals(held.work()))
              .toList();
      assertFalse(checks.isEmpty(), held.work());
      for (Check check : checks) {
        assertEquals(CheckKind.VALIDATION, check.question().kind(), check.question().name());
      }
    }
  }

  @Test
  void theLibraryNamesNoHeldOutSource() throws IOException {
    try (Stream<Path> files = Files.walk(LIBRARY)) {
      for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
        String text = Files.readString(file);
        for (Source held : HeldOut.sources()) {
          assertFalse(text.contains(held.number()), file + " names " + held.work());
          assertFalse(text.contains(held.title()), file + " names " + held.work());
        }
      }
    }
  }

  @Test
  void fortyValidationsCountAndNoSourceGivesMoreThanFive() {
    assertTrue(TALLY.counted().size() >= 40, () -> TALLY.bySource().toString());
    TALLY.bySource().forEach((source, count) -> assertTrue(count <= 5, source + ": " + count));
  }
}
