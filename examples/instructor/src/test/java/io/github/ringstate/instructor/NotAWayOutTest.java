package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.ringstate.files.text.NotAWayOut;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Collective alone, which handbooks and trade articles hold to make the sink worse, is shown to
 * those alone who ask for it, and never as a way out.
 */
class NotAWayOutTest {

  private static String text(String command) {
    return Run.words(command);
  }

  private static String page(String command) {
    return plain(Documents.text(command));
  }

  private static String plain(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "loss --delays 1",
        "loss --delays 1 --pilots 8",
        "loss --pilots 8 --state startled",
        "loss --delays 1 --pilots 8 --format csv",
        "floor --pilots 8",
        "floor --pilots 8 --height-ft 200 --format csv",
        "fly --step 5",
        "runs --wind-from-deg 240 --wind-kt 12 --pilots 8"
      })
  void whoDoesNotAskForItIsNotShownIt(String command) {
    String out = text(command);
    for (String word :
        List.of(NotAWayOut.HEAD, "ollective alone", ",collective,", "power pulled")) {
      assertFalse(out.contains(word), word + ": " + out);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "loss --delays 1 --pilots 8",
        "fly",
        "runs --wind-from-deg 240 --wind-kt 12 --pilots 8",
        "boundary"
      })
  void noPageHasItUnasked(String command) {
    String page = page(command + " --format html");
    assertFalse(page.contains(NotAWayOut.HEAD), command);
    assertFalse(page.contains("value=\"collective\""), command);
    assertFalse(page.contains("\"recovery\":\"collective\""), command);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "loss --delays 0,1.0 --recovery collective,lateral",
        "loss --delays 1 --pilots 8 --recovery collective,lateral",
        "loss --pilots 8 --state startled --recovery collective",
        "floor --pilots 8 --height-ft 300 --recovery collective,lateral",
        "fly --recovery collective"
      })
  void whoAsksForItReadsWhatItIsNot(String command) throws IOException {
    String out = text(command);
    assertTrue(out.contains(NotAWayOut.HEAD), out);
    assertTrue(out.contains(NotAWayOut.TEXT), out);
    assertEquals(
        NotAWayOut.TEXT, Run.json(command).at("/definitions/" + NotAWayOut.HEAD).asText(), command);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "loss --delays 1 --pilots 8 --recovery lateral,collective",
        "fly --recovery collective",
        "boundary --recovery collective"
      })
  void thePagesSayTheSameWords(String command) {
    String page = page(command + " --format html");
    assertTrue(page.contains(NotAWayOut.HEAD), command);
    assertTrue(page.contains(NotAWayOut.TEXT), command);
  }

  @Test
  void thePrintedSheetSaysThemToo() throws IOException {
    String command =
        "loss --delays 0,1,2,3 --pilots 8 --recovery lateral,collective --format pdf"
            + " --height-ft 300";
    try (PDDocument paper = Loader.loadPDF(Documents.of(command.split(" ", -1)))) {
      PDFTextStripper front = new PDFTextStripper();
      front.setEndPage(1);
      String said = plain(front.getText(paper));
      assertEquals(2, paper.getNumberOfPages(), "a front and a back");
      assertTrue(said.contains("collective not a way out"), said);
      assertTrue(said.contains(NotAWayOut.TEXT), said);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "loss --delays 1 --recovery collective;forward;lateral, forward lateral collective",
    "loss --delays 1 --recovery none;lateral;collective, lateral none collective",
    "floor --pilots 8 --state primed --recovery collective;lateral, lateral collective"
  })
  void itStandsAfterTheWaysOutWhateverItLoses(String command, String order) throws IOException {
    assertEquals(
        List.of(order.split(" ", -1)),
        Run.csv(command.replace(';', ',')).stream().map(record -> record.get("recovery")).toList());
  }

  @Test
  void theTextPutsTheWordsOverItsColumn() {
    String out = Run.line("loss --delays 0 --recovery collective,lateral").out();
    assertTrue(
        out.contains(
            """
              delay   lateral     collective
                  s  loss, ft       loss, ft
                               not a way out
            """),
        out);
  }

  @Test
  void whereItLosesLeastTheSentenceBelowTheTableStillNamesAWayOut() throws IOException {
    String command = "loss --delays 0 --recovery collective,forward,lateral";
    JsonNode cells = Run.json(command).get("cells");
    // the model lets a prompt pull with power to spare lose less than any way out
    assertTrue(
        cells.get(2).get("altitude_loss_ft").asDouble()
            < cells.get(1).get("altitude_loss_ft").asDouble());
    assertTrue(text(command).contains("ateral loses least"));
    assertTrue(text(command).contains("collective alone is not a way out"));
  }

  @Test
  void dataSayWhichRecoveriesAreWaysOut() throws IOException {
    for (String command :
        List.of(
            "loss --delays 0 --recovery lateral,collective,none",
            "floor --pilots 8 --state primed --recovery lateral,collective,none")) {
      assertEquals(
          List.of("yes", "no", "no"),
          StreamSupport.stream(Run.json(command).get("cells").spliterator(), false)
              .map(cell -> cell.get("way_out").asText())
              .toList());
    }
    assertEquals("no", Run.json("fly --recovery collective").at("/conditions/way_out").asText());
  }

  @Test
  void noMomentIsNamedUpToWhichItWorks() throws IOException {
    String command = "floor --pilots 8 --height-ft 300 --state primed --recovery";
    Set<String> named =
        StreamSupport.stream(
                Run.json(command + " lateral,collective,none").get("latest_moments").spliterator(),
                false)
            .map(latest -> latest.get("recovery").asText())
            .collect(Collectors.toSet());
    assertEquals(Set.of("lateral"), named);
    assertFalse(text(command + " collective,lateral").contains("brief collective"));
    assertTrue(text(command + " collective").contains("there is nothing to brief"));
  }

  @Test
  void itCannotBeBriefedForARun() {
    String said = Run.refused("runs --calm --pilots 8 --recovery collective");
    assertTrue(said.contains("not a way out and no technique to brief"), said);
    assertTrue(said.contains("forward, lateral, autorotation"), said);
  }

  @Test
  void theHelpOfEveryCommandThatTakesItSaysSo() {
    Stream.of("loss", "floor")
        .map(command -> text(command + " --help"))
        .forEach(help -> assertTrue(help.contains("not a way out"), help));
    assertFalse(text("runs --help").contains("collective"));
  }
}
