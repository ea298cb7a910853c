package io.github.ringstate.instructor.conditions;

import io.github.ringstate.craft.FittedModel;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.study.ModelRevision;
import java.util.LinkedHashMap;
import java.util.Map;

/** A craft in the words and fields of every report, with the recordings it was fitted to. */
public final class CraftWords {

  /** What 95 in 100 lie within, in standard deviations. */
  private static final double BAND = 1.96;

  private CraftWords() {}

  /**
   * A craft in words.
   *
   * @param craft the craft
   * @return its name and description, and for a fitted craft to what it was fitted
   */
  public static String of(Helicopter craft) {
    String fit = fit(craft);
    String described = craft.name() + ": " + craft.description();
    return fit.isEmpty() ? described : described.replaceFirst("\\.$", "") + "; " + fit;
  }

  /**
   * To what a craft was fitted.
   *
   * @param craft the craft
   * @return the words, with a notice if it was another model; empty if it was not fitted
   */
  public static String fit(Helicopter craft) {
    return craft.fitted().map(CraftWords::fit).orElse("");
  }

  private static String fit(FittedModel model) {
    return ConditionMessages.SAY.fit(
        Integer.toString(model.encounters()),
        model.encounters() != 1,
        String.join(", ", model.recordings()),
        Decimals.fixed(model.formFactor(-BAND), 2),
        Decimals.fixed(model.formFactor(BAND), 2),
        !model.revision().equals(ModelRevision.current()),
        model.revision(),
        ModelRevision.current());
  }

  /**
   * A craft as fields for machines.
   *
   * @param craft the craft
   * @return fields by name; what concerns a fit only for a fitted craft
   */
  public static Map<String, Cell> facts(Helicopter craft) {
    Map<String, Cell> facts = new LinkedHashMap<>();
    facts.put("craft", Cell.text(craft.name()));
    facts.put("craft_description", Cell.text(craft.description()));
    craft
        .fitted()
        .ifPresent(
            model -> {
              facts.put("craft_fit", Cell.text(fit(model)));
              facts.put("craft_fit_encounters", Cell.number(model.encounters(), 0));
              facts.put("craft_fit_form_deviation", Cell.number(model.formDeviation(), 3));
              facts.put("craft_fit_model_revision", Cell.text(model.revision()));
            });
    return facts;
  }
}
