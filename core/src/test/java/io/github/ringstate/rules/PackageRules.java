package io.github.ringstate.rules;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.util.Collection;
import java.util.Map;
import org.jspecify.annotations.NullMarked;

/** What holds for the packages of every module. */
public final class PackageRules {

  private final String root;
  private final Map<String, ? extends Collection<String>> mayUse;

  /**
   * Rules for the packages under a root.
   *
   * @param root the root
   * @param mayUse each package, without the root, and those that it may use; the empty name is the
   *     root itself
   */
  public PackageRules(String root, Map<String, ? extends Collection<String>> mayUse) {
    this.root = root;
    this.mayUse = mayUse;
  }

  /** A package uses those that the plan lets it use, and no other. */
  public ArchRule arrowsRunAsPlanned() {
    LayeredArchitecture house =
        layeredArchitecture().consideringOnlyDependenciesInLayers().withOptionalLayers(true);
    for (String name : mayUse.keySet()) {
      house = house.layer(layer(name)).definedBy(packages(name));
    }
    for (Map.Entry<String, ? extends Collection<String>> arrows : mayUse.entrySet()) {
      String from = layer(arrows.getKey());
      String[] to = arrows.getValue().stream().map(PackageRules::layer).toArray(String[]::new);
      house =
          to.length == 0
              ? house.whereLayer(from).mayNotAccessAnyLayer()
              : house.whereLayer(from).mayOnlyAccessLayers(to);
    }
    return house;
  }

  /** There is no class in a package that the plan does not name. */
  public ArchRule everyClassLivesInAPlannedPackage() {
    String[] packages = mayUse.keySet().stream().map(this::packages).toArray(String[]::new);
    return classes().that().resideInAPackage(root + "..").should().resideInAnyPackage(packages);
  }

  /** No two packages use each other, directly or through others. */
  public ArchRule packagesHaveNoCycles() {
    return slices().matching(root + ".(**)").should().beFreeOfCycles().allowEmptyShould(true);
  }

  /** No class is named for being useful. */
  public ArchRule namesSayWhatAClassIsFor() {
    String word = ".*(Utils?|Utility|Utilities|Helpers?|Impl)";
    return noClasses()
        .that()
        .resideInAPackage(root + "..")
        .should()
        .haveNameMatching(word + "([A-Z0-9$].*)?")
        .orShould()
        .resideInAnyPackage("..util..", "..utils..", "..helper..", "..helpers..", "..impl..");
  }

  /** What is static is final. */
  public ArchRule noStaticFieldChanges() {
    return fields()
        .that()
        .areDeclaredInClassesThat()
        .resideInAPackage(root + "..")
        .and()
        .areStatic()
        .should()
        .beFinal()
        .allowEmptyShould(true);
  }

  /** Nothing is null where it does not say so. */
  public ArchRule everyPackageIsNullMarked() {
    return classes()
        .that()
        .resideInAPackage(root + "..")
        .should(
            new ArchCondition<JavaClass>("be in a package marked @NullMarked") {
              @Override
              public void check(JavaClass item, ConditionEvents events) {
                events.add(
                    new SimpleConditionEvent(
                        item,
                        item.getPackage().isAnnotatedWith(NullMarked.class),
                        item.getDescription() + " is in " + item.getPackageName()));
              }
            });
  }

  private static String layer(String name) {
    return name.isEmpty() ? "the root" : name;
  }

  private String packages(String name) {
    return name.isEmpty() ? root : root + "." + name + "..";
  }
}
