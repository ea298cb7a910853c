package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.files.text.Caution;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

class MainTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--help",
        "--version",
        "loss --help",
        "floor --help",
        "fly --help",
        "boundary --help",
        "craft --help",
        "sweep --help",
        "runs --help",
        "loss --version",
        "loss --delays 0",
        "loss --pilots 5 --state startled",
        "floor --pilots 5 --height-ft 200",
        "fly --step 5",
        "boundary",
        "equilibria --loop",
        "runs --wind-from-deg 240 --wind-kt 12 --pilots 20",
        "craft"
      })
  void whatIsPrintedForPeopleCarriesTheCautionAndFitsThePage(String args) {
    Run run = Run.line(args);
    assertTrue(oneLine(run.out()).contains(Caution.TEXT), run.out());
    PageTest.assertFitsThePage(run);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"loss", "floor", "fly", "runs", "boundary", "equilibria", "craft", "sweep"})
  void theHelpOfEveryCommandShowsAnExampleThatWorks(String command) {
    String example =
        Run.of(command, "--help").lines().stream()
            .map(String::strip)
            .filter(line -> line.startsWith("ringstate " + command))
            .findFirst()
            .orElseThrow()
            .replaceFirst("ringstate ", "")
            .replaceAll(" --output [a-z.]+", "");
    Run.line(example);
  }

  @Test
  void theCompletionScriptKnowsEveryCommandAndItsOptions() {
    Run run = Run.line("completion");
    String words = "loss floor fly runs boundary equilibria best sensitivity sweep --paper --units";
    for (String word : words.split(" ", -1)) {
      assertTrue(run.out().contains(word), word);
    }
    assertTrue(run.out().startsWith("#!/usr/bin/env bash"), run.out().substring(0, 40));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "lose|ringstate: there is no command 'lose'; allowed: loss, floor, card, lesson, fly, runs,",
        "loss 3|ringstate loss: '3' is one argument too many",
        "loss --mass-kg|ringstate loss: --mass-kg has no value; allowed: KG[,KG...]",
        "loss --masskg 3|ringstate loss: there is no option"
      })
  void whatIsNotUnderstoodIsSaidInPlainWords(String args, String beginning) {
    String said = Run.refused(args);
    assertTrue(said.startsWith(beginning), said);
    assertEquals(2, said.lines().count(), said);
  }

  @Test
  void theHelpSaysWhatTheExitStatusMeans() {
    String help = Run.words("--help");
    assertTrue(help.contains("Exit status: 0 done, 1 a file cannot be read or written"), help);
    assertTrue(help.contains("2 a wrong option or value, 130 or 143 ended"), help);
  }

  @Test
  void withoutArgumentsItPrintsTheUsage() {
    Run run = Run.of();
    assertEquals(CommandLine.ExitCode.OK, run.status());
    assertTrue(run.out().startsWith("Usage: ringstate"), run.out());
  }

  @Test
  void aFileOfArgumentsIsNotReadInPlaceOfAnArgument() {
    Run.assertRefused("craft @pom.xml", "'@pom.xml'");
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ");
  }

  private static Run failing(String message, String... args) {
    StringWriter err = new StringWriter();
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int one) throws IOException {
            throw new IOException(message);
          }
        };
    int status = Main.commandLine(full).setErr(new PrintWriter(err, true)).execute(args);
    return new Run(status, "", err.toString());
  }

  @ParameterizedTest
  @CsvSource({
    "--help,ringstate",
    "--version,ringstate",
    "loss --help,ringstate loss",
    "completion,ringstate completion",
    "sweep --example,ringstate sweep",
    "craft,ringstate craft"
  })
  void whatCannotBePrintedIsSaidAndAReaderThatHasSeenEnoughIsNoError(String args, String command) {
    assertEquals(
        new Run(1, "", command + ": standard output cannot be written: No space left on device\n"),
        failing("No space left on device", args.split(" ", -1)));
    assertEquals(new Run(0, "", ""), failing("Broken pipe", args.split(" ", -1)));
  }
}
