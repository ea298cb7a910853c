package io.github.ringstate.instructor.option;

import io.github.ringstate.files.plan.PlanFile;
import io.github.ringstate.files.plan.PlanFile.Fact;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.origin.Origin;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.message.Words;
import io.github.ringstate.study.ModelRevision;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A plan: its options stand in for those that are not given, and sheets say whose plan it is. */
public final class PlanOption {

  /** The option's name. */
  public static final String NAME = "--plan";

  @Option(
      names = NAME,
      paramLabel = "FILE",
      preprocessor = PlanArguments.class,
      description =
          "A plan as 'ringstate plan' writes it: its options hold where none are given here, and"
              + " sheets name its place, date, craft, crew and agreed heights.")
  private @Nullable String plan;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec = CommandSpec.create();

  /** Made by picocli. */
  public PlanOption() {}

  /**
   * What a sheet says of the plan.
   *
   * @param units the units to speak in
   * @return a line each; none without a plan
   */
  List<Term> terms(UnitSystem units) {
    return plan == null
        ? List.of()
        : terms(PlanFile.read(plan, Origin.of(Owner.of(spec, NAME))), units);
  }

  private static List<Term> terms(PlanFile plan, UnitSystem units) {
    List<String> heights = new ArrayList<>();
    for (PlanFile.AgreedHeight height : PlanFile.AgreedHeight.values()) {
      Double feet = plan.agreed().get(height);
      if (feet != null) {
        heights.add(height.title() + " " + units.given(Unit.FOOT, feet));
      }
    }
    boolean other = !plan.revision().isEmpty() && !plan.revision().equals(ModelRevision.current());
    return PlanMessages.SAY.planned(
        fact(plan, Fact.PLACE),
        fact(plan, Fact.DATE),
        fact(plan, Fact.REGISTRATION),
        plan.crew().isEmpty() ? PlanMessages.SAY.open() : Words.and(plan.crew()),
        plan.technique().isEmpty() ? PlanMessages.SAY.open() : plan.technique(),
        heights.isEmpty() ? PlanMessages.SAY.open() : Words.and(heights),
        other ? plan.revision() : "",
        ModelRevision.current());
  }

  private static String fact(PlanFile plan, Fact fact) {
    String said = plan.facts().getOrDefault(fact, "");
    return said.isEmpty() ? PlanMessages.SAY.open() : said;
  }
}
