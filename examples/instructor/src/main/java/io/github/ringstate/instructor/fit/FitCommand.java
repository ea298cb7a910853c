package io.github.ringstate.instructor.fit;

import io.github.ringstate.air.Air;
import io.github.ringstate.calibration.Calibration;
import io.github.ringstate.calibration.Demonstration;
import io.github.ringstate.calibration.Fit;
import io.github.ringstate.calibration.Prior;
import io.github.ringstate.calibration.UnsupportedFitException;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.craft.CraftFile;
import io.github.ringstate.files.craft.CraftWriter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.recording.ColumnMap;
import io.github.ringstate.files.recording.RecordingFile;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.instructor.option.Choice;
import io.github.ringstate.instructor.option.CraftOption;
import io.github.ringstate.instructor.option.EntryOptions;
import io.github.ringstate.instructor.option.Loadings;
import io.github.ringstate.instructor.option.NumberText;
import io.github.ringstate.instructor.option.TableOutput;
import io.github.ringstate.instructor.origin.Origin;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.UncertainNumbers;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.recording.Recording;
import io.github.ringstate.study.ModelRevision;
import io.github.ringstate.study.model.OpenNumbers;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Fits a craft to recordings of it. */
@Command(
    name = "fit",
    description = {
      "Fit numbers of the model to recorded flights of a craft, and write a craft file whose tables"
          + " include what the recordings leave open.",
      ""
    },
    footer = {
      "",
      "Example: three recorded recoveries of a craft of your own",
      "  ringstate fit one.csv two.csv three.csv --craft mine.toml --craft-file fitted.toml",
      "  ringstate loss --craft fitted.toml --pilots 1024",
      "",
      Caution.TEXT
    })
public final class FitCommand implements Runnable {

  private static final String PARAMETERS = "--parameters";
  private static final String LEAVE_OUT = "--leave-out";
  private static final String DEVIATION = "--wind-deviation-kt";
  private static final String DATE = "--date";
  private static final String UNDATED = "none";
  private static final double STANDARD_DEVIATION = 2;

  /** Models of which the prior is made, and their seed. */
  private static final int MODELS = 200;

  private static final long SEED = 1;

  @Parameters(
      arity = "1..*",
      paramLabel = "FILE",
      description = "Recordings: GPX 1.1, NMEA 0183 or CSV, each with one encounter or several.")
  private List<String> files = List.of();

  @Mixin private final CraftOption craft = new CraftOption();
  @Mixin private final Loadings loadings = new Loadings();
  @Mixin private final EntryOptions entry = new EntryOptions();

  @Option(
      names = DEVIATION,
      paramLabel = "KT",
      description = "How far the wind may be off, one standard deviation. Unless given: 2.")
  private @Nullable String windDeviation;

  @Option(
      names = "--recovery",
      paramLabel = "NAME",
      description =
          "The recovery that was flown. Unless given: lateral where the recorded bank says so, else"
              + " forward.")
  private @Nullable String recovery;

  @Option(
      names = ColumnMap.OPTION,
      paramLabel = "MAP",
      description =
          "What the columns of CSV files hold: QUANTITY=COLUMN:UNIT,... or a TOML file. Unless"
              + " given: their names say it.")
  private @Nullable String columns;

  @Option(
      names = PARAMETERS,
      paramLabel = "KEY[,KEY...]",
      description =
          "What is fitted: keys of the ring state or of the craft file. Unless given: seven numbers"
              + " of the ring state, induced_power_factor and profile_drag_coefficient.")
  private @Nullable String parameters;

  @Option(
      names = LEAVE_OUT,
      paramLabel = "N[,N...]",
      description = "Encounters to leave out, counted from 1 in the order of the report.")
  private @Nullable String leaveOut;

  @Option(
      names = Origin.CRAFT_FILE,
      paramLabel = "FILE",
      description = "Write the fitted craft to this file, which --craft takes.")
  private @Nullable String craftFile;

  @Option(
      names = DATE,
      paramLabel = "DAY",
      description =
          "The day to write into that file, year-month-day. Unless given: "
              + UNDATED
              + ", so that the same fit gives the same file on any day.")
  private @Nullable String date;

  @Mixin private final TableOutput output = new TableOutput();

  @Spec private CommandSpec spec = CommandSpec.create();

  /** Made by the tool. */
  public FitCommand() {}

  @Override
  public void run() {
    output.deliver(this::report);
  }

  private FitReport report() {
    String day = date();
    Optional<FittedFile> place =
        Optional.ofNullable(craftFile).map(name -> FittedFile.named(Origin.CRAFT_FILE, name, spec));
    if (craft.craft().fitted().isPresent()) {
      throw UserError.usage(
          "--craft is fitted already: give the craft it was fitted from, and all recordings");
    }
    List<Helicopter> crafts = loadings.load(craft.craft());
    List<Air> airs = loadings.airs();
    if (crafts.size() != 1 || airs.size() != 1) {
      throw UserError.usage("a fit takes one mass and one pressure altitude");
    }
    Demonstrations search =
        new Demonstrations(
            crafts.get(0),
            airs.get(0),
            entry.approach(OptionalDouble.empty()),
            windDeviation == null
                ? STANDARD_DEVIATION
                : NumberText.one(
                    DEVIATION, windDeviation, new Quantity("deviation", Unit.KNOT, 0.1, 20)),
            Optional.ofNullable(recovery)
                .map(new Choice<>("--recovery", Technique.ALL, Technique::name)::one));
    List<Demonstration> usable = new ArrayList<>();
    List<List<String>> skipped = new ArrayList<>();
    for (String file : files) {
      Demonstrations.Found found = search.in(file, read(file));
      usable.addAll(found.usable());
      skipped.addAll(found.skipped());
    }
    leaveOut(usable, skipped);
    Fit fit = fit(search.craft(), usable, skipped);
    if (place.isPresent()) {
      Helicopter fitted = fit.craft(craft.craft(), files, day, ModelRevision.current());
      byte[] text =
          (String.join(
                      "\n",
                      CraftWriter.lines(new CraftFile(fitted, craft.heightVelocity(), List.of())))
                  + "\n")
              .getBytes(StandardCharsets.UTF_8);
      place.get().put(text);
    }
    return new FitReport(search.craft(), fit, skipped, Optional.ofNullable(craftFile));
  }

  private String date() {
    if (date == null) {
      return UNDATED;
    }
    try {
      return LocalDate.parse(date.strip()).toString();
    } catch (DateTimeException none) {
      throw UserError.option(DATE, date, "a day, for instance 2030-01-31");
    }
  }

  private Recording read(String file) {
    ColumnMap map =
        columns == null
            ? ColumnMap.BY_NAMES
            : ColumnMap.of(ColumnMap.OPTION, columns, Origin.of(spec));
    return RecordingFile.read(file, map).recording();
  }

  private void leaveOut(List<Demonstration> usable, List<List<String>> skipped) {
    if (leaveOut != null) {
      List<Demonstration> out = new ArrayList<>();
      for (String number : leaveOut.split(",", -1)) {
        int place = (int) NumberText.whole(LEAVE_OUT, number, 1, Math.max(1, usable.size()));
        out.add(usable.get(place - 1));
      }
      out.forEach(one -> skipped.add(List.of(one.name(), "left out as asked")));
      usable.removeAll(out);
    }
  }

  private Fit fit(Helicopter loaded, List<Demonstration> usable, List<List<String>> skipped) {
    List<Parameter> fitted = parameters();
    UncertainNumbers prior =
        Prior.of(
            fitted,
            loaded,
            OpenNumbers.accepted(Math.max(MODELS, 10 * fitted.size()), SEED).kept());
    try {
      return new Calibration(prior, loaded).fitAndTest(usable);
    } catch (UnsupportedFitException refused) {
      String others =
          skipped.stream()
              .map(one -> "; " + one.get(0) + " was not used: " + one.get(1))
              .collect(Collectors.joining());
      throw UserError.file(
          "the recordings", "support no fit: " + refused.getMessage() + others, refused);
    }
  }

  private List<Parameter> parameters() {
    return parameters == null
        ? Prior.STANDARD
        : new Choice<>(
                PARAMETERS,
                Stream.concat(
                        RingStateInflow.PARAMETERS.stream(),
                        Helicopter.STANDARD_NUMBERS.parameters().stream())
                    .toList(),
                Parameter::key)
            .several(parameters);
  }
}
