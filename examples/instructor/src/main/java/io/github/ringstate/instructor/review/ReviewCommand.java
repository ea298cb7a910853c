package io.github.ringstate.instructor.review;

import io.github.ringstate.air.Wind;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.plan.PlanFile;
import io.github.ringstate.files.recording.ColumnMap;
import io.github.ringstate.files.recording.RecordingFile;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.option.Choice;
import io.github.ringstate.instructor.option.Loading;
import io.github.ringstate.instructor.option.NumberText;
import io.github.ringstate.instructor.option.PlanOption;
import io.github.ringstate.instructor.option.SheetOutput;
import io.github.ringstate.instructor.origin.Origin;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints what a recorded flight shows. */
@Command(
    name = "review",
    description = {
      "Print what a recorded flight shows: descents into the vortex ring state, when the pilot acted,"
          + " the altitude lost with its uncertainty, and what one and two seconds more would have cost"
          + " by the model.",
      "",
      "FILE is GPX 1.1, NMEA 0183 (GGA, RMC, VTG) or CSV; its content says which. Columns of CSV are"
          + " named like time_s, height_ft, ground_speed_kt, track_deg, vertical_speed_fpm, pitch_deg,"
          + " collective_pct, or --columns says which they are. Times are seconds, times of day (which"
          + " go on over midnight), or dates with times by ISO 8601.",
      ""
    },
    footer = {
      "",
      "Example: a recording that comes with the tool (invented)",
      "  ringstate review --demo instruments",
      "a flight in a wind that was reported, and the sheet for the debriefing",
      "  ringstate review flight.gpx --craft mine.toml --wind-from-deg 240 --wind-kt 8 --format pdf"
          + " --output debrief.pdf",
      "a CSV file with columns of other names",
      "  ringstate review log.csv --columns \"time=t:s,height=GPS alt:m,ground_speed=v:m/s,"
          + "track=course:deg\"",
      "",
      Caution.TEXT
    })
public final class ReviewCommand implements Runnable {

  private static final String DEMO = "--demo";
  private static final String WIND = "--wind-kt";
  private static final String FROM = "--wind-from-deg";
  private static final Quantity SPEED = new Quantity("wind", Unit.KNOT, 0, 60);
  private static final Quantity DIRECTION = new Quantity("wind from", Unit.DEGREE, 0, 360);
  private static final Quantity GROUND = new Quantity("ground", Unit.FOOT, -2000, 30_000);

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FILE", arity = "0..1", description = "The recording.")
  private @Nullable String file;

  @Option(
      names = DEMO,
      paramLabel = "NAME",
      description =
          "Review an invented recording that comes with the tool: gnss-1hz (GPX), gnss-5hz (NMEA),"
              + " instruments (CSV), or other-form (CSV of a flight by another inflow model, in gusts,"
              + " by an imperfect pilot).")
  private @Nullable String demo;

  @Option(
      names = ColumnMap.OPTION,
      paramLabel = "MAP|FILE",
      description =
          "What the columns of a CSV file hold: QUANTITY=COLUMN:UNIT,... or a TOML file with a table"
              + " for each quantity that has column and unit. Quantities: time (s, ms, iso, or hms for"
              + " a time of day such as 23:58:40), height and"
              + " pressure_altitude (ft, m), vertical_speed (fpm, m/s, kt), ground_speed and airspeed"
              + " (kt, m/s, km/h), track, heading, pitch, bank, latitude and longitude (deg, rad),"
              + " collective, torque and rotor_speed (percent, 1). Unless given: the columns' names say"
              + " it.")
  private @Nullable String columns;

  @Mixin private final Loading loading = new Loading();

  @Option(
      names = WIND,
      paramLabel = "KT",
      description =
          "Wind at the height flown, with "
              + FROM
              + ". Unless given: estimated from the recording.")
  private @Nullable String wind;

  @Option(
      names = FROM,
      paramLabel = "DEG",
      description = "Where the wind comes from, clockwise from true north.")
  private @Nullable String from;

  @Option(
      names = "--entry",
      paramLabel = "ENTRY",
      defaultValue = "tailwind-approach",
      description =
          "How the model comes to the ring state where it cannot begin with what was recorded at the"
              + " onset: an entry as 'ringstate loss' has them. Unless given: ${DEFAULT-VALUE}.")
  private String entry = "";

  @Option(
      names = "--ground-ft",
      paramLabel = "FT",
      description =
          "Height of the ground in the recording's own heights; heights are then above the ground."
              + " Unless given: heights are as recorded.")
  private @Nullable String ground;

  @Mixin private final SheetOutput output = new SheetOutput();

  /** Made by the tool. */
  public ReviewCommand() {}

  @Override
  public void run() {
    output.deliver(() -> new ReviewReport(Debrief.of(request())));
  }

  private ReviewRequest request() {
    if ((file == null) == (demo == null)) {
      throw UserError.usage("give FILE or " + DEMO + ", and not both");
    }
    Optional<Wind> given = wind();
    EntryKind kind = new Choice<>("--entry", EntryKind.ALL, EntryKind::name).one(entry);
    OptionalDouble level =
        ground == null
            ? OptionalDouble.empty()
            : OptionalDouble.of(NumberText.si("--ground-ft", ground, GROUND));
    Conditions conditions = loading.conditions();
    RecordingFile recording = recording();
    return new ReviewRequest(
        file == null ? String.valueOf(demo) : file,
        file == null,
        recording,
        conditions,
        kind,
        given
            .map(DebriefedWind::given)
            .orElseGet(() -> DebriefedWind.estimated(recording.recording())),
        level,
        plan());
  }

  private RecordingFile recording() {
    String name = file;
    if (name == null) {
      return new Choice<>(DEMO, DemoRecording.ALL, DemoRecording::name)
          .one(String.valueOf(demo))
          .read();
    }
    ColumnMap map =
        columns == null
            ? ColumnMap.BY_NAMES
            : ColumnMap.of(ColumnMap.OPTION, columns, Origin.of(spec));
    return Origin.of(spec)
        .recording(name)
        .map(content -> RecordingFile.of(name, content, map))
        .orElseGet(() -> RecordingFile.read(name, map));
  }

  private Optional<Wind> wind() {
    if (wind == null && from == null) {
      return Optional.empty();
    }
    if (wind == null || from == null) {
      throw UserError.usage(WIND + " and " + FROM + " are given together or not at all");
    }
    return Optional.of(
        Wind.from(NumberText.si(FROM, from, DIRECTION), NumberText.si(WIND, wind, SPEED)));
  }

  /** The plan of which the sheet says whose it is. */
  private Optional<PlanFile> plan() {
    @Nullable Object given = spec.findOption(PlanOption.NAME).getValue();
    return given == null
        ? Optional.empty()
        : Optional.of(PlanFile.read(given.toString(), Origin.of(spec)));
  }
}
