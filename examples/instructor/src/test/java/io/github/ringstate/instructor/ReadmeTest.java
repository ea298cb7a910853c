package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ReadmeTest {

  private static final Pattern TABLE = Pattern.compile("```text\n(.*?)\n```", Pattern.DOTALL);

  @Test
  void theReadmeShowsTheTableThatItsFirstCommandPrints() throws IOException {
    Matcher shown = TABLE.matcher(Files.readString(Path.of("..", "..", "README.md")));
    assertTrue(shown.find());
    assertEquals(Run.of("loss").out().strip(), shown.group(1).strip());
  }
}
