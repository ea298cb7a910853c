package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

class MainTest {

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return Main.commandLine()
        .setOut(new PrintWriter(out))
        .setErr(new PrintWriter(err))
        .execute(args);
  }

  @ParameterizedTest
  @ValueSource(strings = {"--help", "--version"})
  void whatIsPrintedForPeopleCarriesTheCaution(String option) {
    assertEquals(CommandLine.ExitCode.OK, run(option));
    assertTrue(oneLine(out).contains(Main.CAUTION), out.toString());
  }

  @Test
  void withoutArgumentsItPrintsTheUsage() {
    assertEquals(CommandLine.ExitCode.OK, run());
    assertTrue(oneLine(out).startsWith("Usage: ringstate"), out.toString());
  }

  @Test
  void anUnknownOptionIsAnUsageErrorThatNamesTheOption() {
    assertEquals(CommandLine.ExitCode.USAGE, run("--no-such-option"));
    assertTrue(err.toString().contains("--no-such-option"), err.toString());
  }

  private static String oneLine(StringWriter text) {
    return text.toString().replaceAll("\\s+", " ");
  }
}
