package io.github.ringstate.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A module keeps to the plan of its packages. The code of the rules is tried on the crooked house
 * of the library; that they see this module is shown by spoiling its plan, one arrow and one
 * package at a time. A plan is therefore never wider than what the module needs.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
public abstract class ModulePlan {

  private final String root;
  private final Map<String, Collection<String>> plan;
  private final JavaClasses module;

  /**
   * Takes the plan.
   *
   * @param root the package above all others of the module
   * @param plan each package, without the root, and those that it may use; the empty name is the
   *     root itself
   */
  protected ModulePlan(String root, Map<String, List<String>> plan) {
    this.root = root;
    this.plan = new TreeMap<>(plan);
    this.module =
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages(root);
  }

  private Stream<ArchRule> rules() {
    PackageRules rules = new PackageRules(root, plan);
    return Stream.of(
        rules.arrowsRunAsPlanned(),
        rules.everyClassLivesInAPlannedPackage(),
        rules.packagesHaveNoCycles(),
        rules.namesSayWhatAClassIsFor(),
        rules.noStaticFieldChanges(),
        rules.everyPackageIsNullMarked());
  }

  @ParameterizedTest
  @MethodSource("rules")
  void theModuleKeepsTheRule(ArchRule rule) {
    rule.check(module);
  }

  @Test
  void thePlanHasNoArrowThatIsNotNeeded() {
    List<String> needless = new ArrayList<>();
    for (String from : plan.keySet()) {
      for (String to : plan.get(from)) {
        Collection<String> fewer = new TreeSet<>(plan.get(from));
        fewer.remove(to);
        Map<String, Collection<String>> spoilt = new TreeMap<>(plan);
        spoilt.put(from, fewer);
        if (isKept(new PackageRules(root, spoilt).arrowsRunAsPlanned())) {
          needless.add("'" + from + "' does not use '" + to + "'");
        }
      }
    }
    assertEquals(List.of(), needless, "arrows to take out of the plan");
  }

  @Test
  void thePlanHasNoPackageWithoutClasses() {
    List<String> empty = new ArrayList<>();
    for (String name : plan.keySet()) {
      Map<String, Collection<String>> spoilt = new TreeMap<>(plan);
      spoilt.remove(name);
      if (isKept(new PackageRules(root, spoilt).everyClassLivesInAPlannedPackage())) {
        empty.add(name);
      }
    }
    assertEquals(List.of(), empty, "packages to take out of the plan");
  }

  private boolean isKept(ArchRule rule) {
    return !rule.evaluate(module).hasViolation();
  }
}
