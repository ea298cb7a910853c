package io.github.ringstate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Inside the packages of a flight, files use each other one way: none leads back to itself. */
class CirclesTest {

  /**
   * Arrows that run back, each wanted: an encounter is data that can fly itself, for whoever embeds
   * the library.
   */
  private static final Map<String, List<String>> BACK =
      Map.of("encounter.Encounter", List.of("Approach", "Flight", "RecordedFlight"));

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages(
              "io.github.ringstate.dynamics",
              "io.github.ringstate.integrate",
              "io.github.ringstate.pilot",
              "io.github.ringstate.encounter");

  /** The files of a package, by those that they use. */
  private static Map<String, Set<String>> arrows(String name) {
    String start = "io.github.ringstate." + name + ".";
    Map<String, Set<String>> arrows = new TreeMap<>();
    for (JavaClass from : CLASSES) {
      if (from.getPackageName().concat(".").equals(start)) {
        String file = file(from);
        Set<String> uses = arrows.computeIfAbsent(file, first -> new TreeSet<>());
        for (Dependency dependency : from.getDirectDependenciesFromSelf()) {
          JavaClass to = dependency.getTargetClass().getBaseComponentType();
          if (to.getPackageName().concat(".").equals(start) && !file(to).equals(file)) {
            uses.add(file(to));
          }
        }
      }
    }
    return arrows;
  }

  private static String file(JavaClass type) {
    String name = type.getFullName().substring(type.getPackageName().length() + 1);
    return name.replaceAll("\\$.*", "");
  }

  /** What is left when files that use none of the others are taken away, again and again. */
  private static Set<String> inCircles(Map<String, Set<String>> arrows) {
    Set<String> left = new TreeSet<>(arrows.keySet());
    while (left.removeIf(file -> arrows.get(file).stream().noneMatch(left::contains))) {
      // once more
    }
    return left;
  }

  @ParameterizedTest
  @ValueSource(strings = {"dynamics", "integrate", "pilot", "encounter"})
  void noFileOfAPackageLeadsBackToItself(String name) {
    Map<String, Set<String>> arrows = arrows(name);
    assertTrue(arrows.size() > 10, arrows.keySet().toString());
    BACK.forEach(
        (from, to) -> {
          if (from.startsWith(name + ".")) {
            arrows.get(from.substring(name.length() + 1)).removeAll(to);
          }
        });
    assertEquals(Set.of(), inCircles(arrows));
  }

  @Test
  void everyArrowThatRunsBackIsOne() {
    Map<String, Set<String>> whole = arrows("encounter");
    for (String to : BACK.get("encounter.Encounter")) {
      Map<String, Set<String>> arrows = arrows("encounter");
      arrows.get("Encounter").removeAll(BACK.get("encounter.Encounter"));
      arrows.get("Encounter").add(to);
      assertTrue(whole.get("Encounter").contains(to), to);
      assertTrue(inCircles(arrows).contains("Encounter"), to);
    }
  }
}
