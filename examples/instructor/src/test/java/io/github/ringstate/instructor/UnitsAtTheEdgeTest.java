package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Feet, knots and ft/min are read at the options and written by the formatter. */
class UnitsAtTheEdgeTest {

  private static final Pattern IN_COCKPIT_UNITS =
      Pattern.compile("\\b[a-z][A-Za-z]*(Ft|Kt|Fpm|Feet|Knots|Kw)\\b");

  /** What is found by a use case holds SI alone; whatever converts prints or reads. */
  private static final Pattern USE_CASES =
      Pattern.compile(
          "(Loss|Floor)(Study|Block|Row|Line|Result|Request)|PilotRow|ShownFlight|PilotLosses|Pool"
              + "|RunAnalysis|RunsRequest|FlyRequest|FlownEncounter|Sample"
              + "|Chart|BoundaryRow|BoundaryRequest|HoverPower");

  private static List<Path> sources() throws IOException {
    try (Stream<Path> all = Files.walk(Path.of("src", "main", "java"))) {
      return all.filter(file -> file.toString().endsWith(".java")).toList();
    }
  }

  @Test
  void noValueIsNamedAfterAUnitOfTheCockpit() throws IOException {
    List<String> found = new ArrayList<>();
    for (Path source : sources()) {
      // texts name the columns of files and the examples of the help
      Matcher matcher =
          IN_COCKPIT_UNITS.matcher(Files.readString(source).replaceAll("\"[^\"\n]*\"", ""));
      while (matcher.find()) {
        found.add(source.getFileName() + ": " + matcher.group());
      }
    }
    assertEquals(List.of(), found);
  }

  @Test
  void aUseCaseConvertsNothing() throws IOException {
    List<String> converting = new ArrayList<>();
    int seen = 0;
    for (Path source : sources()) {
      String name = source.getFileName().toString().replace(".java", "");
      if (USE_CASES.matcher(name).matches()) {
        seen++;
        String text = Files.readString(source);
        if (text.matches("(?s).*Unit\\.(FOOT|KNOT|FOOT_PER_MINUTE)\\.(to|from)Si.*")) {
          converting.add(name);
        }
      }
    }
    assertEquals(23, seen);
    // mirrored tracks share a flight if their airspeeds are alike as pilots read them
    assertEquals(List.of("RunAnalysis"), converting);
  }
}
