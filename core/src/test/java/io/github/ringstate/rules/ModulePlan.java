package io.github.ringstate.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A module keeps to the plan of its packages. The code of the rules is tried on the crooked house
 * of the library; that they see this module is shown by spoiling its plan. A plan is never wider
 * than what the module needs.
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
    Map<String, Set<String>> used = new TreeMap<>();
    for (JavaClass user : module) {
      for (Dependency arrow : user.getDirectDependenciesFromSelf()) {
        planned(user)
            .ifPresent(
                from ->
                    planned(arrow.getTargetClass())
                        .ifPresent(
                            to -> used.computeIfAbsent(from, any -> new TreeSet<>()).add(to)));
      }
    }
    List<String> needless = new ArrayList<>();
    plan.forEach(
        (from, all) ->
            all.stream()
                .filter(to -> !used.getOrDefault(from, Set.of()).contains(to))
                .forEach(to -> needless.add("'" + from + "' does not use '" + to + "'")));
    assertEquals(List.of(), needless, "arrows to take out of the plan");
  }

  @Test
  void theRuleSeesAnArrowThatIsNotPlanned() {
    Optional<String> user = plan.keySet().stream().filter(n -> !plan.get(n).isEmpty()).findFirst();
    assumeTrue(user.isPresent(), "no package uses another");
    Map<String, Collection<String>> spoilt = new TreeMap<>(plan);
    spoilt.put(user.get(), List.of());
    assertFalse(isKept(new PackageRules(root, spoilt).arrowsRunAsPlanned()));
  }

  /** The package of the plan that holds a class: the innermost, where one lies in another. */
  private Optional<String> planned(JavaClass one) {
    String place = one.getPackageName() + ".";
    return plan.keySet().stream()
        .filter(name -> place.startsWith(name.isEmpty() ? root + "." : root + "." + name + "."))
        .max(Comparator.comparingInt(String::length));
  }

  @Test
  void thePlanHasNoPackageWithoutClasses() {
    Set<String> full = new TreeSet<>();
    module.forEach(one -> planned(one).ifPresent(full::add));
    assertEquals(plan.keySet(), full, "packages to take out of the plan");
  }

  private boolean isKept(ArchRule rule) {
    return !rule.evaluate(module).hasViolation();
  }
}
