package io.github.ringstate.instructor.runs;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.option.BriefedRecoveryOption;
import io.github.ringstate.instructor.option.Checked;
import io.github.ringstate.instructor.option.CompareOption;
import io.github.ringstate.instructor.option.Loading;
import io.github.ringstate.instructor.option.MarginOption;
import io.github.ringstate.instructor.option.NumberText;
import io.github.ringstate.instructor.option.PrecisionOption;
import io.github.ringstate.instructor.option.SheetOutput;
import io.github.ringstate.instructor.option.TurbulenceOption;
import io.github.ringstate.instructor.pilots.Pool;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.study.run.RunLimits;
import io.github.ringstate.study.run.RunPlan;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plans a slow run over the ground. */
@Command(
    name = "runs",
    description = {
      "Plan a slow run for photographs or a survey: what each track takes in the wind, and whether"
          + " to fly it.",
      ""
    },
    footer = {
      "",
      "Airspeeds are judged in gusts as --gust-kt says; --turbulence adds gusts by the second to the"
          + " flights of the pilots, whose losses the height is judged by.",
      "",
      "Height and airspeed are judged by the points of the height-velocity diagram that the craft's"
          + " file holds (height_velocity_kt_ft; 'ringstate craft NAME' shows where). Without them"
          + " they are not judged.",
      "",
      "Example: the trainer at 600 ft, wind from 200 deg, 12 kt, gusts 18",
      "  ringstate runs --height-ft 600 --wind-from-deg 200 --wind-kt 12 --gust-kt 18",
      "and the sheet to agree on before the flight, in calm air",
      "  ringstate runs --calm --ground-speed-kt 35 --format pdf --output runs.pdf",
      "",
      Caution.TEXT
    })
public final class RunsCommand implements Runnable, Checked {

  private static final int STANDARD_PILOTS = 256;

  @Mixin private final Loading loading = new Loading();

  @Mixin private final WindOptions wind = new WindOptions();

  @Option(
      names = "--ground-speed-kt",
      paramLabel = "KT",
      defaultValue = "25",
      description = "Ground speed to be held. Unless given: ${DEFAULT-VALUE}.")
  private String groundSpeed = "";

  @Option(
      names = "--height-ft",
      paramLabel = "FT",
      defaultValue = "500",
      description = "Height above the ground. Unless given: ${DEFAULT-VALUE}.")
  private String height = "";

  @Option(
      names = "--descent-fpm",
      paramLabel = "FPM",
      defaultValue = "100",
      description = "Rate of descent planned. Unless given: ${DEFAULT-VALUE}.")
  private String descent = "";

  @Option(
      names = "--lowest-height-ft",
      paramLabel = "FT",
      description =
          "The operator's lowest height for runs; below it no run is flown. Unless given: 500, the"
              + " least that 14 CFR 91.119(c) lets aircraft fly above the surface outside congested"
              + " areas; its (d) lets helicopters go lower, which is for the operator to decide.")
  private @Nullable String lowestHeight;

  @Mixin private final MarginOption heightMargin = new MarginOption();

  @Mixin private final BriefedRecoveryOption recovery = new BriefedRecoveryOption();
  @Mixin private final TurbulenceOption turbulence = new TurbulenceOption();

  @Option(
      names = "--margin-fpm",
      paramLabel = "FPM",
      defaultValue = "300",
      description =
          "Extra rate of descent to be left before the ring state. Unless given: ${DEFAULT-VALUE}.")
  private String margin = "";

  @Option(
      names = "--minimum-airspeed-kt",
      paramLabel = "KT",
      defaultValue = "24",
      description =
          "Airspeed to be kept in any case. Unless given: ${DEFAULT-VALUE}, the upper end of"
              + " effective translational lift.")
  private String minimumAirspeed = "";

  @Option(
      names = "--pilots",
      paramLabel = "N",
      description =
          "Simulated pilots for each track, rounded up to 8 times a power of two. Unless given: "
              + STANDARD_PILOTS
              + ".")
  private @Nullable String pilots;

  @Mixin private final PrecisionOption precision = new PrecisionOption();

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "The same seed gives the same pilots. Unless given: ${DEFAULT-VALUE}.")
  private String seed = "";

  @Option(
      names = "--command-hours",
      paramLabel = "H",
      defaultValue = "500",
      description =
          "The operator's minimum hours in command, for the checklist. Unless given:"
              + " ${DEFAULT-VALUE} (common practice, no source).")
  private String commandHours = "";

  @Option(
      names = "--type-hours",
      paramLabel = "H",
      defaultValue = "100",
      description =
          "The operator's minimum hours on the type, for the checklist. Unless given:"
              + " ${DEFAULT-VALUE} (common practice, no source).")
  private String typeHours = "";

  @Mixin private final CompareOption compare = new CompareOption();
  @Mixin private final SheetOutput output = new SheetOutput();

  /** Made by the tool. */
  public RunsCommand() {}

  @Override
  public List<Encounter> flown() {
    return request().flown();
  }

  @Override
  public void run() {
    output.deliver(this::report);
  }

  private RunsReport report() {
    RunsRequest request = request();
    Optional<RunsRequest> worse = compare.worse().map(request::on);
    return new RunsReport(
        request,
        RunAnalysis.of(request),
        worse.map(then -> new RunsReport(then, RunAnalysis.of(then), Optional.empty())));
  }

  private RunsRequest request() {
    Conditions conditions = loading.conditions();
    ReportedWind reported = wind.reported();
    long seeded = NumberText.whole("--seed", seed, Long.MIN_VALUE, Long.MAX_VALUE);
    double flown = NumberText.si("--height-ft", height, RunPlan.HEIGHT);
    RunPlan plan =
        new RunPlan(
            conditions.craft(),
            loading.heightVelocity(),
            conditions.air(),
            wind.at(flown),
            NumberText.si("--ground-speed-kt", groundSpeed, RunPlan.GROUND_SPEED),
            NumberText.si("--descent-fpm", descent, RunPlan.DESCENT),
            flown,
            lowestHeight == null
                ? RunPlan.LOWEST_HEIGHT
                : NumberText.si("--lowest-height-ft", lowestHeight, RunPlan.LOWEST_HEIGHTS),
            heightMargin.margin());
    return new RunsRequest(
        conditions,
        reported,
        plan,
        recovery.recoveries(),
        NumberText.si("--margin-fpm", margin, RunLimits.BOUNDARY_MARGIN),
        NumberText.si("--minimum-airspeed-kt", minimumAirspeed, RunLimits.MINIMUM_AIRSPEED),
        new Disturbances(
            ParameterSet.standard(Disturbances.PARAMETERS)
                .with(Disturbances.GUST_WIND, turbulence.knots()),
            seeded),
        new Pool(
            precision.pilots(pilots, STANDARD_PILOTS),
            precision.metres(),
            Drawing.SOBOL,
            seeded,
            Optional.empty()),
        0,
        new CrewMinimum(
            NumberText.si("--command-hours", commandHours, CrewMinimum.COMMAND),
            NumberText.si("--type-hours", typeHours, CrewMinimum.TYPE)));
  }
}
