package io.github.ringstate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The library keeps the rules of the house. So that no rule passes because it sees nothing, each is
 * also tried on a crooked house, whose every class breaks one rule.
 */
class HouseTest {

  private static final String ROOT = "io.github.ringstate";
  private static final String CROOKED = ROOT + ".crooked";

  private static final JavaClasses LIBRARY =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages(ROOT);

  private static final JavaClasses CROOKED_HOUSE = new ClassFileImporter().importPackages(CROOKED);

  static Stream<Trial> rules() {
    HouseRules straight = new HouseRules(ROOT);
    HouseRules crooked = new HouseRules(CROOKED);
    return Stream.of(
        rule(
            straight.packages().arrowsRunAsPlanned(),
            crooked.packages().arrowsRunAsPlanned(),
            "inflow.InflowThatKnowsItsRotor",
            "quantity.QuantityThatKnowsItsCraft",
            "rotor.RotorThatKnowsTheAir"),
        rule(
            straight.packages().everyClassLivesInAPlannedPackage(),
            crooked.packages().everyClassLivesInAPlannedPackage(),
            "cellar.ClassInNoRoom",
            "util.ClassInAPackageForAnything"),
        rule(
            straight.packages().packagesHaveNoCycles(),
            crooked.packages().packagesHaveNoCycles(),
            "inflow.InflowThatKnowsItsRotor",
            "rotor.RotorOnItsInflow"),
        rule(
            straight.noInputOrOutput(),
            crooked.noInputOrOutput(),
            "dynamics.DynamicsThatPrint",
            "dynamics.DynamicsThatReadAFile"),
        rule(
            straight.transcendentalFunctionsAreThoseOfFastMath(),
            crooked.transcendentalFunctionsAreThoseOfFastMath(),
            "rotor.RotorWithThePlatformsSine",
            "rotor.RotorWithThePlatformsTanhByReference"),
        rule(
            straight.sameInputSameOutput(),
            crooked.sameInputSameOutput(),
            "pilot.PilotWhoLooksAtTheClock",
            "pilot.PilotWithoutASeed"),
        rule(
            straight.packages().namesSayWhatAClassIsFor(),
            crooked.packages().namesSayWhatAClassIsFor(),
            "craft.CraftUtils",
            "util.ClassInAPackageForAnything"),
        rule(
            straight.packages().noStaticFieldChanges(),
            crooked.packages().noStaticFieldChanges(),
            "craft.CraftWithACounter"),
        rule(
            straight.packages().everyPackageIsNullMarked(),
            crooked.packages().everyPackageIsNullMarked(),
            "cellar.ClassInNoRoom",
            "util.ClassInAPackageForAnything"));
  }

  private static Trial rule(ArchRule straight, ArchRule crooked, String... offenders) {
    return new Trial(straight, crooked, new TreeSet<>(List.of(offenders)));
  }

  /** A rule for the library, the same for the crooked house, and who breaks it there. */
  private record Trial(ArchRule straight, ArchRule crooked, SortedSet<String> offenders) {
    @Override
    public String toString() {
      return straight.getDescription();
    }
  }

  @ParameterizedTest
  @MethodSource("rules")
  void theLibraryKeepsTheRule(Trial rule) {
    rule.straight().check(LIBRARY);
  }

  @ParameterizedTest
  @MethodSource("rules")
  void theCrookedHouseBreaksTheRuleWhereItIsMeantTo(Trial rule) {
    assertEquals(rule.offenders(), offendersIn(rule.crooked()));
  }

  @Test
  void theRulesSeeTheLibrary() {
    assertFalse(LIBRARY.isEmpty());
  }

  private static SortedSet<String> offendersIn(ArchRule rule) {
    Pattern offender =
        Pattern.compile("(?:Class|Method|Constructor|Field) <" + CROOKED + "\\.(\\w+\\.\\w+)");
    SortedSet<String> found = new TreeSet<>();
    for (String line : rule.evaluate(CROOKED_HOUSE).getFailureReport().getDetails()) {
      Matcher matcher = offender.matcher(line);
      while (matcher.find()) {
        found.add(matcher.group(1));
      }
    }
    return found;
  }
}
