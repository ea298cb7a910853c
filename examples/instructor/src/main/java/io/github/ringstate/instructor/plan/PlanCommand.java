package io.github.ringstate.instructor.plan;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.plan.PlanFile;
import io.github.ringstate.files.plan.PlanFile.AgreedHeight;
import io.github.ringstate.files.plan.PlanFile.Fact;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.instructor.option.AgreedHeights;
import io.github.ringstate.instructor.option.Choice;
import io.github.ringstate.instructor.option.NumberText;
import io.github.ringstate.instructor.option.OutputOptions;
import io.github.ringstate.instructor.origin.Origin;
import io.github.ringstate.study.ModelRevision;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes a plan down: what is flown, by whom, and what was agreed. */
@Command(
    name = "plan",
    description = {
      "Write a plan down as a file that other commands take by --plan: place, date, craft, crew,"
          + " conditions, entry, run, technique and agreed heights. It is kept as the record of what"
          + " was briefed.",
      ""
    },
    footer = {
      "",
      "Example (every name invented):",
      "  ringstate plan --place 'Example Field' --date 2026-12-01 --registration X-DEMO"
          + " --crew 'A. Pilot,B. Observer' --craft trainer --mass-kg 560 --oat-c 25"
          + " --height-ft 500 --technique lateral --agreed-height-ft 500 --output plan.toml",
      "and all of its sheets",
      "  ringstate brief plan.toml --folder .",
      "",
      Caution.TEXT
    })
public final class PlanCommand implements Runnable {

  private final PlannedOptions planned;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(names = "--place", paramLabel = "TEXT", description = "Where it is flown.")
  private String place = "";

  @Option(names = "--date", paramLabel = "TEXT", description = "When it is flown.")
  private String date = "";

  @Option(names = "--registration", paramLabel = "TEXT", description = "The craft's registration.")
  private String registration = "";

  @Option(names = "--crew", paramLabel = "NAME[,NAME...]", description = "Who flies.")
  private @Nullable String crew;

  @Option(
      names = "--technique",
      paramLabel = "NAME",
      description = "The recovery chosen: forward, lateral or autorotation.")
  private @Nullable String technique;

  @Option(
      names = "--agreed-height-ft",
      paramLabel = "FT",
      description = "Height above the ground that the crew agreed not to fly below.")
  private @Nullable String least;

  @Mixin private final AgreedHeights demonstration = new AgreedHeights();
  @Mixin private final OutputOptions output = new OutputOptions();

  private PlanCommand(PlannedOptions planned) {
    this.planned = planned;
  }

  /**
   * The command with all options that a plan may hold.
   *
   * @param planned the options
   * @return the command
   */
  public static CommandLine of(PlannedOptions planned) {
    CommandLine plan = new CommandLine(new PlanCommand(planned));
    planned.addTo(plan.getCommandSpec());
    return plan;
  }

  @Override
  public void run() {
    output.deliver(this::report);
  }

  private PlanReport report() {
    PlanFile plan = plan();
    return new PlanReport(plan, planned.flown(plan, Origin.of(spec)));
  }

  private PlanFile plan() {
    Map<AgreedHeight, Double> agreed = new EnumMap<>(AgreedHeight.class);
    agreed.putAll(demonstration.heights());
    if (least != null) {
      agreed.put(
          AgreedHeight.LEAST, NumberText.one("--agreed-height-ft", least, AgreedHeights.HEIGHT));
    }
    return new PlanFile(
        Map.of(
            Fact.PLACE, line("--place", place),
            Fact.DATE, line("--date", date),
            Fact.REGISTRATION, line("--registration", registration)),
        crew == null
            ? List.of()
            : Stream.of(crew.split(",", -1)).map(name -> line("--crew", name.strip())).toList(),
        technique == null ? "" : Choice.waysOut("--technique").one(technique).name(),
        planned.given(spec),
        agreed,
        ModelRevision.current());
  }

  private static String line(String option, String text) {
    if (text.length() > 300) { // arguments are on one line
      throw UserError.option(option, text, "one line of at most 300 characters");
    }
    return text;
  }
}
