package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class RunsSheetTest {

  @Test
  void theOperatorsMinimumOfExperienceStandsOnTheSheetAndCanBeChanged() {
    String[] args = {
      "runs", "--calm", "--pilots", "8", "--recovery", "lateral", "--format", "html"
    };
    String standard = new String(Documents.of(args), UTF_8);
    assertTrue(standard.contains("at least 500 h in command and 100 h on type"), "no minimum");
    String[] other =
        Stream.concat(Stream.of(args), Stream.of("--command-hours", "1200", "--type-hours", "250"))
            .toArray(String[]::new);
    String changed = new String(Documents.of(other), UTF_8);
    assertTrue(changed.contains("at least 1200 h in command and 250 h on type"), "not changed");
  }
}
