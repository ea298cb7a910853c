package io.github.ringstate.instructor.runs;

import io.github.ringstate.air.PowerLawWind;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.delivery.Delivery;
import io.github.ringstate.instructor.option.Checked;
import io.github.ringstate.instructor.option.Choice;
import io.github.ringstate.instructor.option.CraftOption;
import io.github.ringstate.instructor.option.Loading;
import io.github.ringstate.instructor.option.MarginOption;
import io.github.ringstate.instructor.option.NumberText;
import io.github.ringstate.instructor.option.SheetOutput;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.run.RunLimits;
import io.github.ringstate.study.run.RunPlan;
import java.io.OutputStream;
import java.util.List;
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
      "Example: the trainer at 300 ft, wind from 200 deg, 12 kt, gusts 18",
      "  ringstate runs --height-ft 300 --wind-from-deg 200 --wind-kt 12 --gust-kt 18",
      "and the sheet to agree on before the flight",
      "  ringstate runs --height-ft 300 --format pdf --output runs.pdf",
      "",
      Caution.TEXT
    })
public final class RunsCommand implements Runnable, Checked {

  private static final Quantity WIND = new Quantity("wind", Unit.KNOT, 0, 60);

  private static final List<Technique> TO_BRIEF =
      List.of(Technique.FORWARD, Technique.LATERAL, Technique.AUTOROTATION);

  /** Ways out that are briefed unless the user wants another. */
  private static final List<Technique> TO_CHOOSE_FROM =
      List.of(Technique.FORWARD, Technique.LATERAL);

  private final OutputStream terminal;

  @Mixin private final CraftOption craft = new CraftOption();
  @Mixin private final Loading loading = new Loading();

  @Option(
      names = "--wind-from-deg",
      paramLabel = "DEG",
      defaultValue = "240",
      description =
          "Where the wind comes from, clockwise from north. Unless given: ${DEFAULT-VALUE}.")
  private String windFrom = "";

  @Option(
      names = "--wind-kt",
      paramLabel = "KT",
      defaultValue = "12",
      description = "Mean wind 33 ft (10 m) above ground. Unless given: ${DEFAULT-VALUE}.")
  private String wind = "";

  @Option(
      names = "--gust-kt",
      paramLabel = "KT",
      description = "Gusts there, not below the mean. Unless given: one and a half times the mean.")
  private @Nullable String gust;

  @Option(
      names = "--wind-exponent",
      paramLabel = "P",
      description =
          "Power of height with which the wind grows: 0.143 open land, 0.11 water, 0.28 wood or"
              + " suburb. Unless given: one seventh.")
  private @Nullable String exponent;

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

  @Mixin private final MarginOption heightMargin = new MarginOption();

  @Option(
      names = "--technique",
      paramLabel = "NAME",
      description =
          "Recovery briefed: forward, lateral or autorotation. Unless given: forward or lateral,"
              + " whichever loses less at its worst.")
  private @Nullable String technique;

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
      defaultValue = "250",
      description = "Simulated pilots for each track. Unless given: ${DEFAULT-VALUE}.")
  private String pilots = "";

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

  @Mixin private final SheetOutput output = new SheetOutput();

  /**
   * Creates the command.
   *
   * @param terminal where the report goes if no file is given
   */
  public RunsCommand(OutputStream terminal) {
    this.terminal = terminal;
  }

  @Override
  public void check() {
    request();
  }

  @Override
  public void run() {
    Delivery delivery = output.delivery(terminal);
    RunsRequest request = request();
    delivery.deliver(new RunsReport(request, RunAnalysis.of(request)));
  }

  private RunsRequest request() {
    Conditions conditions = Conditions.of(loading.load(craft.craft()), loading.air());
    ReportedWind reported = reported();
    double flown = NumberText.si("--height-ft", height, RunPlan.HEIGHT);
    double ratio = reported.ratio(flown);
    RunPlan plan =
        new RunPlan(
            conditions.craft(),
            conditions.air(),
            reported.from(),
            reported.mean() * ratio,
            reported.gust() * ratio,
            NumberText.si("--ground-speed-kt", groundSpeed, RunPlan.GROUND_SPEED),
            NumberText.si("--descent-fpm", descent, RunPlan.DESCENT),
            flown,
            heightMargin.margin());
    return new RunsRequest(
        conditions,
        reported,
        plan,
        techniques(),
        NumberText.si("--margin-fpm", margin, RunLimits.BOUNDARY_MARGIN),
        NumberText.si("--minimum-airspeed-kt", minimumAirspeed, RunLimits.MINIMUM_AIRSPEED),
        (int) NumberText.whole("--pilots", pilots, 20, 100_000),
        NumberText.whole("--seed", seed, Long.MIN_VALUE, Long.MAX_VALUE),
        craft.heightVelocity(),
        new CrewMinimum(
            NumberText.si("--command-hours", commandHours, CrewMinimum.COMMAND),
            NumberText.si("--type-hours", typeHours, CrewMinimum.TYPE)));
  }

  private ReportedWind reported() {
    // as typed, so that a gust of the same number is not below it
    double typed = NumberText.one("--wind-kt", wind, WIND);
    Quantity gusts = new Quantity("gust", WIND.unit(), typed, 90);
    double mean = WIND.unit().toSi(typed);
    return new ReportedWind(
        NumberText.si("--wind-from-deg", windFrom, RunPlan.WIND_FROM),
        mean,
        gust == null ? 1.5 * mean : NumberText.si("--gust-kt", gust, gusts),
        exponent == null
            ? PowerLawWind.EXPONENT_OPEN_LAND
            : NumberText.si("--wind-exponent", exponent, PowerLawWind.EXPONENT.quantity()));
  }

  private List<Technique> techniques() {
    if (technique == null) {
      return TO_CHOOSE_FROM;
    }
    if (technique.strip().equals(Technique.COLLECTIVE.name())) {
      throw UserError.option(
          "--technique",
          technique,
          "forward, lateral, autorotation; collective alone is not a way out and no technique to"
              + " brief");
    }
    return List.of(new Choice<>("--technique", TO_BRIEF, Technique::name).one(technique));
  }
}
