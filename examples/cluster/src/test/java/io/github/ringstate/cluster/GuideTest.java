package io.github.ringstate.cluster;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.files.text.Caution;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class GuideTest {

  @Test
  void theGuideCarriesTheCautionAndNamesTheProgram() throws IOException {
    String guide = Files.readString(Path.of("GUIDE.md"));
    String flat = guide.replaceAll("\\s+", " ");
    assertTrue(flat.contains(Caution.TEXT.substring("A ".length())));
    List<String> programs =
        Pattern.compile("--class (\\S+)")
            .matcher(guide)
            .results()
            .map(found -> found.group(1))
            .toList();
    assertEquals(3, programs.stream().filter(SweepJob.class.getName()::equals).count());
    for (String program : programs) {
      assertDoesNotThrow(
          () -> Class.forName(program, false, GuideTest.class.getClassLoader()), program);
    }
  }

  @Test
  void theTableInTheGuideIsOneThatTheMeasurementPrints() throws IOException {
    Matcher head =
        Pattern.compile("echo \"(\\| sweep .*)\"").matcher(Files.readString(Path.of("measure")));
    assertTrue(head.find());
    assertTrue(Files.readString(Path.of("GUIDE.md")).contains(head.group(1)));
  }
}
