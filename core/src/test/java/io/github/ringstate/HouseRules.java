package io.github.ringstate;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;

import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.lang.ArchRule;
import io.github.ringstate.rules.PackageRules;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/** The rules of the house, for the packages under a root. */
final class HouseRules {

  /**
   * Each package and those that it stands on. It may use those, what they stand on in turn, and
   * nothing else.
   */
  private static final Map<String, List<String>> STANDS_ON = new LinkedHashMap<>();

  static {
    STANDS_ON.put("quantity", List.of());
    STANDS_ON.put("integrate", List.of());
    STANDS_ON.put("chance", List.of());
    STANDS_ON.put("inflow", List.of("quantity"));
    STANDS_ON.put("air", List.of("quantity"));
    STANDS_ON.put("rotor", List.of("inflow"));
    STANDS_ON.put("craft", List.of("rotor", "air"));
    STANDS_ON.put("dynamics", List.of("craft", "integrate"));
    STANDS_ON.put("pilot", List.of("dynamics", "chance"));
    STANDS_ON.put("encounter", List.of("pilot"));
    STANDS_ON.put("study", List.of("encounter"));
    STANDS_ON.put("analysis", List.of("study"));
    STANDS_ON.put("recording", List.of("encounter"));
    STANDS_ON.put("calibration", List.of("study", "recording"));
  }

  /** What an implementation of the Java platform may round as it likes, within a bound. */
  private static final Set<String> INEXACT =
      Set.of(
          "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh", "exp",
          "expm1", "log", "log1p", "log10", "pow", "cbrt", "hypot");

  private static final Set<String> GENERATORS =
      Set.of("java.util.Random", "java.util.SplittableRandom");

  private final String root;

  HouseRules(String root) {
    this.root = root;
  }

  static Collection<String> names() {
    return STANDS_ON.keySet();
  }

  static Set<String> mayUse(String name) {
    Set<String> below = new TreeSet<>();
    for (String floor : STANDS_ON.getOrDefault(name, List.of())) {
      below.add(floor);
      below.addAll(mayUse(floor));
    }
    return below;
  }

  /** The rules that every module has. */
  PackageRules packages() {
    Map<String, Set<String>> mayUse = new LinkedHashMap<>();
    names().forEach(name -> mayUse.put(name, mayUse(name)));
    return new PackageRules(root, mayUse);
  }

  ArchRule noInputOrOutput() {
    return noClasses()
        .that()
        .resideInAPackage(root + "..")
        .should()
        .dependOnClassesThat(
            describe(
                "read or write",
                used ->
                    (used.getPackageName().equals("java.io")
                            && !used.getFullName().equals("java.io.Serializable"))
                        || used.getPackageName().startsWith("java.nio")
                        || used.getPackageName().startsWith("java.net")))
        .orShould(ACCESS_STANDARD_STREAMS);
  }

  ArchRule transcendentalFunctionsAreThoseOfFastMath() {
    return noClassShouldAccess(
        "a transcendental function of the Java platform (use Hipparchus FastMath)",
        target ->
            INEXACT.contains(target.getName())
                && (target.getOwner().isEquivalentTo(Math.class)
                    || target.getOwner().isEquivalentTo(StrictMath.class)));
  }

  ArchRule sameInputSameOutput() {
    return noClassShouldAccess(
        "a clock or an unseeded generator of random numbers",
        target -> {
          String owner = target.getOwner().getFullName();
          String name = target.getName();
          return name.equals("currentTimeMillis")
              || name.equals("nanoTime")
              || (owner.equals("java.lang.Math") && name.equals("random"))
              || (owner.startsWith("java.time.") && name.equals("now"))
              || owner.equals("java.util.concurrent.ThreadLocalRandom")
              || owner.equals("java.security.SecureRandom")
              || (GENERATORS.contains(owner)
                  && target instanceof CodeUnitAccessTarget code
                  && name.equals("<init>")
                  && code.getRawParameterTypes().isEmpty());
        });
  }

  private ArchRule noClassShouldAccess(String what, Predicate<AccessTarget> is) {
    return noClasses()
        .that()
        .resideInAPackage(root + "..")
        .should()
        .accessTargetWhere(
            describe("it is " + what, (JavaAccess<?> access) -> is.test(access.getTarget())));
  }
}
