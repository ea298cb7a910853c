package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Output for people in SI units has no other units left. */
class UnitsTest {

  /** Units of the cockpit where a unit may stand: alone between blanks, brackets and stops. */
  private static final Pattern COCKPIT =
      Pattern.compile("(?<![-\\w])(ft|kt|ft/min|fpm|feet|knots)(?![-\\w])");

  private static void assertNoUnitsOfTheCockpit(String text) {
    List<String> left = new ArrayList<>();
    COCKPIT
        .matcher(text)
        .results()
        .forEach(
            found ->
                left.add(
                    text.substring(
                        Math.max(0, found.start() - 40),
                        Math.min(text.length(), found.end() + 5))));
    assertEquals(List.of(), left);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "loss --delays 0,3.0 --height-ft 60",
        "loss --delays 0,3.0 --entry steep --wind-kt 5 --clock cue",
        "loss --pilots 8 --delays 0,3.0 --models 2 --turbulence 15 --shear 0.14",
        "loss --pilots 8 --state startled --entry downwind",
        "floor --pilots 8 --height-ft 250 --clock cue",
        "fly --step 5",
        "fly --step 5 --height-ft 60 --recovery none --entry downwind",
        "boundary",
        "equilibria --airspeed-kt 6 --loop",
        "runs --wind-from-deg 240 --wind-kt 12 --pilots 8",
        "runs --calm --pilots 8 --craft heavy --height-ft 150"
      })
  void textSpeaksSiUnits(String command) {
    Run run = Run.line(command + " --units si");
    assertNoUnitsOfTheCockpit(run.out());
    PageTest.assertFitsThePage(run);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "loss --pilots 8 --delays 0,3.0 --height-ft 60 --turbulence 15 --entry steep --format html",
        "loss --pilots 8 --state startled --format html",
        "runs --wind-from-deg 240 --wind-kt 12 --pilots 8 --craft heavy --height-ft 150 --format html",
        "boundary --recovery lateral --format html",
        "boundary --recovery lateral --format svg",
        "fly --entry downwind --format html"
      })
  void pagesAndPicturesSpeakSiUnits(String command) {
    String page = Documents.text(command + " --units si");
    assertNoUnitsOfTheCockpit(
        page.replaceAll(
                // where a file comes from is data, in keys with their unit
                "(?s)<style>.*?</style>|<script.*?</script>|<metadata.*?</metadata>", " ")
            .replaceAll("(aria-label|alt)=\"([^\"]*)\"", ">$2<")
            .replaceAll("<[^>]*>", " "));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "loss --pilots 8 --delays 0,3.0 --format csv",
        "loss --pilots 8 --delays 0,3.0 --format json",
        "floor --pilots 8 --format json",
        "runs --wind-from-deg 240 --wind-kt 12 --pilots 8 --format csv",
        "fly --step 5 --format json"
      })
  void dataSayTheirUnitsInTheirNamesAndStayAsTheyAre(String command) {
    assertEquals(report(command), report(command + " --units si"));
  }

  /** What is printed, but for the command at the end of it. */
  private static Run report(String command) {
    Run run = Run.typed(command);
    return new Run(run.status(), run.out().replaceFirst("(?s)\"provenance\" : .*", ""), run.err());
  }

  @Test
  void theSameLossIsToldInFeetAndInMetres() {
    // the standard loss of the forward recovery, by 0.3048 m to the foot
    String csv = Run.line("loss --delays 2 --recovery forward --format csv").out();
    double feet =
        Double.parseDouble(csv.lines().skip(1).findFirst().orElseThrow().split(",", -1)[8]);
    String text = Run.line("loss --delays 2 --recovery forward --units si").out();
    long metres = Math.round(feet * 0.3048);
    assertTrue(Pattern.compile("\n +2\\.0 +" + metres + "\n").matcher(text).find(), text);
  }
}
