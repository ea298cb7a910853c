package io.github.ringstate.instructor.desk;

import io.github.ringstate.files.plan.PlanFile.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * One step of a study: a command that answers part of the question.
 *
 * @param panel where it is shown
 * @param pilots how many pilots fly; 0 for the standard one, or as many as the plan says
 * @param arguments the command with its arguments, but for the plan
 * @param drawn whether its drawings are shown
 * @param without options of the encounter that it passes over
 */
record Step(String panel, int pilots, List<String> arguments, boolean drawn, Set<String> without) {

  /** Pilots by whom a table becomes finer; the last is what a sheet has unless told otherwise. */
  private static final List<Integer> PILOTS = List.of(64, 128, 256, 512);

  private static final String MODELS = "models";

  /** What says how many simulated pilots fly, or with what. */
  private static final Set<String> MANY = Set.of("pilots", "precision-ft", MODELS);

  /** What is left to chance even if one pilot flies. */
  private static final Set<String> CHANCE = Set.of("turbulence", "shaking-pct");

  private static final Set<String> ALL = Set.of();

  /**
   * The steps of a study: at once what one standard pilot loses, then more and more pilots, then
   * those that the plan asks for.
   *
   * @param errand what is on the page
   * @param delay delay of the flight that is shown; empty for the standard one
   * @param shown its recovery
   * @return the steps in their order
   */
  static List<Step> of(Errand errand, String delay, String shown) {
    Set<String> given = errand.options().getOrDefault(Part.ENCOUNTER, Map.of()).keySet();
    List<Step> steps = new ArrayList<>();
    steps.add(standard(given));
    String flown = "--recovery=" + (shown.isEmpty() ? "forward" : shown);
    String acted = delay.isEmpty() ? "" : "--delay=" + delay;
    steps.add(new Step("fly", 0, arguments("fly", flown, acted), false, ALL));
    boolean asked = given.stream().anyMatch(MANY::contains);
    for (int pilots : asked ? PILOTS.subList(0, 1) : PILOTS) {
      steps.add(new Step("floor", pilots, arguments("floor", many(pilots)), false, MANY));
      steps.add(
          new Step("pilots", pilots, arguments("loss", "--format=html", many(pilots)), true, MANY));
      if (pilots == PILOTS.get(0)) {
        steps.add(new Step("card", pilots, arguments("card", many(pilots)), false, MANY));
        steps.add(
            new Step(
                "boundary", 0, arguments("boundary", "--format=svg", flown, acted), true, ALL));
        if (errand.options().containsKey(Part.RUN)) {
          steps.add(new Step("runs", 0, arguments("runs", "--format=html"), true, ALL));
        }
      }
    }
    if (asked) {
      boolean drawn = !given.contains(MODELS); // which have no place on a sheet
      boolean few = !given.contains("pilots") && !given.contains("precision-ft");
      int last = PILOTS.get(PILOTS.size() - 1);
      steps.add(new Step("floor", 0, arguments("floor"), false, ALL));
      steps.add(
          new Step(
              "pilots",
              0,
              arguments("loss", drawn ? "--format=html" : "", few ? many(last) : ""),
              drawn,
              ALL));
    }
    steps.add(new Step("card", 0, arguments("card"), false, ALL));
    return steps;
  }

  /**
   * One flight a line: what says how many fly is passed over, and the seed too where it is idle.
   */
  private static Step standard(Set<String> given) {
    boolean chance = given.stream().anyMatch(CHANCE::contains);
    String seed = chance && !given.contains("seed") ? "--seed=1" : "";
    Set<String> without = chance ? MANY : Set.of("pilots", "precision-ft", MODELS, "seed", "draws");
    return new Step("loss", 0, arguments("loss", seed), false, without);
  }

  private static String many(int pilots) {
    return "--pilots=" + pilots;
  }

  private static List<String> arguments(String... all) {
    return Stream.of(all).filter(one -> !one.isEmpty()).toList();
  }
}
