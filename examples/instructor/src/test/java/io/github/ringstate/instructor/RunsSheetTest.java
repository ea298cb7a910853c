package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RunsSheetTest {

  private static final String QUESTION =
      "runs --pilots 8 --recovery lateral --wind-from-deg 240 --wind-kt ";

  private static String out(String command) {
    return Documents.text(command).replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
  }

  /** The tracks in arcs such as {@code 160 to 320, 020}, every ten degrees. */
  private static int tracks(String arcs) {
    return Stream.of(arcs.split(", "))
        .map(arc -> arc.split(" to "))
        .mapToInt(
            ends ->
                1
                    + (Integer.parseInt(ends[ends.length - 1]) - Integer.parseInt(ends[0]) + 360)
                        % 360
                        / 10)
        .sum();
  }

  @ParameterizedTest
  @ValueSource(strings = {"12", "18", "45"})
  void theTakeAwayCountsTheTracksAndIsTheSameOnPageAndInText(String wind) {
    String text = out(QUESTION + wind);
    Matcher inShort =
        Pattern.compile("Of 36 tracks ([^.]*)\\. On [0-9]{3}: [^.]*\\.").matcher(text);
    assertTrue(inShort.find(), text);
    assertTrue(out(QUESTION + wind + " --format html").contains(inShort.group()), inShort.group());
    Matcher counts = Pattern.compile("on ([0-9]+) \\(([^)]*)\\)").matcher(inShort.group(1));
    int all = 0;
    while (counts.find()) {
      assertEquals(Integer.parseInt(counts.group(1)), tracks(counts.group(2)), inShort.group());
      all += Integer.parseInt(counts.group(1));
    }
    assertEquals(36, all, inShort.group());
    assertEquals(
        !inShort.group().contains("fly with a limit on"),
        inShort.group().contains("none is to be flown as planned"),
        inShort.group());
  }

  @Test
  void whereAllTracksAreAlikeTheTakeAwaySaysSo() {
    String calm = "runs --pilots 8 --recovery lateral --calm --ground-speed-kt ";
    for (String page : List.of("", " --format html")) {
      String text = out(calm + "25" + page);
      assertTrue(text.contains("Not as planned on all 36 tracks. In gusts the airspeed"), text);
      String faster = out(calm + "30" + page);
      assertTrue(faster.contains("Fly on all 36 tracks. In gusts and lulls"), faster);
    }
  }

  @Test
  void theOperatorsMinimumOfExperienceStandsOnTheSheetAndCanBeChanged() {
    String run = "runs --calm --pilots 8 --recovery lateral --format html";
    String standard = Documents.text(run);
    assertTrue(standard.contains("at least 500 h in command and 100 h on type"), "no minimum");
    String changed = Documents.text(run + " --command-hours 1200 --type-hours 250");
    assertTrue(changed.contains("at least 1200 h in command and 250 h on type"), "not changed");
  }
}
