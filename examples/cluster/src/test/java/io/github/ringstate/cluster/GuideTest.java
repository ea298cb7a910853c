package io.github.ringstate.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.files.text.Caution;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class GuideTest {

  @Test
  void theGuideCarriesTheCautionAndNamesTheProgram() throws IOException {
    String guide = Files.readString(Path.of("GUIDE.md"));
    String flat = guide.replaceAll("\\s+", " ");
    assertTrue(flat.contains(Caution.TEXT.substring("A ".length())));
    Matcher programs = Pattern.compile("--class (\\S+)").matcher(guide);
    int named = 0;
    while (programs.find()) {
      assertEquals(SweepJob.class.getName(), programs.group(1));
      named++;
    }
    assertEquals(2, named);
  }

  @Test
  void theTableInTheGuideIsOneThatTheMeasurementPrints() throws IOException {
    Matcher head =
        Pattern.compile("echo \"(\\| sweep .*)\"").matcher(Files.readString(Path.of("measure")));
    assertTrue(head.find());
    assertTrue(Files.readString(Path.of("GUIDE.md")).contains(head.group(1)));
  }
}
