package io.github.ringstate.instructor.manual;

import io.github.ringstate.craft.EngineKind;
import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.whole.WholeFile;
import io.github.ringstate.instructor.option.Choice;
import io.github.ringstate.instructor.option.NumberText;
import io.github.ringstate.instructor.option.TableOutput;
import io.github.ringstate.instructor.option.TemperatureText;
import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Makes a craft of the numbers that a flight manual has. */
@Command(
    name = "manual",
    description = {
      "Make a craft of the numbers that a flight manual has, and say how the model meets the"
          + " manual's hover ceiling, climb and autorotation.",
      ""
    },
    footer = {
      "",
      "Example (every number invented):",
      "  ringstate manual --name mine --empty-mass-kg 950 --maximum-mass-kg 1800"
          + " --rotor-diameter-m 10.4 --chord-m 0.28 --blades 3 --rotor-rpm 386 --engine turbine"
          + " --rotation counter-clockwise --continuous-kw 330 --take-off-kw 380"
          + " --hover-ceiling-ft 6000 --hover-ceiling-mass-kg 1800 --hover-ceiling-oat-c 20"
          + " --climb-fpm 1500 --climb-speed-kt 60 --craft-file mine.toml",
      "  ringstate loss --craft mine.toml",
      "",
      Caution.TEXT
    })
public final class ManualCommand implements Runnable {

  private static final Quantity POWER = new Quantity("power", Unit.KILOWATT, 20, 10_000);

  @Option(names = "--name", paramLabel = "WORD", required = true, description = "The craft's name.")
  private String name = "";

  @Option(
      names = "--empty-mass-kg",
      paramLabel = "KG",
      required = true,
      description = "Least mass in flight.")
  private String emptyMass = "";

  @Option(
      names = "--maximum-mass-kg",
      paramLabel = "KG",
      required = true,
      description = "Greatest mass.")
  private String maximumMass = "";

  @Option(
      names = "--rotor-diameter-m",
      paramLabel = "M",
      required = true,
      description = "Diameter of the main rotor.")
  private String diameter = "";

  @Option(names = "--chord-m", paramLabel = "M", required = true, description = "Chord of a blade.")
  private String chord = "";

  @Option(names = "--blades", paramLabel = "N", required = true, description = "Blades.")
  private String blades = "";

  @Option(
      names = "--rotor-rpm",
      paramLabel = "RPM",
      required = true,
      description = "Rotor speed, power on.")
  private String rotorSpeed = "";

  @Option(
      names = "--engine",
      paramLabel = "KIND",
      required = true,
      description = "piston or turbine.")
  private String engine = "";

  @Option(
      names = "--rotation",
      paramLabel = "SENSE",
      required = true,
      description = "clockwise or counter-clockwise, seen from above.")
  private String rotation = "";

  @Option(
      names = "--continuous-kw",
      paramLabel = "KW",
      required = true,
      description = "Power without limit of time.")
  private String continuous = "";

  @Option(
      names = "--take-off-kw",
      paramLabel = "KW",
      required = true,
      description = "Power for minutes.")
  private String takeOff = "";

  @Option(
      names = "--hover-ceiling-ft",
      paramLabel = "FT",
      required = true,
      description = "Pressure altitude of the hover ceiling out of ground effect.")
  private String ceiling = "";

  @Option(
      names = "--hover-ceiling-mass-kg",
      paramLabel = "KG",
      required = true,
      description = "The mass that it holds for.")
  private String ceilingMass = "";

  @Option(
      names = "--hover-ceiling-oat-c",
      paramLabel = "C",
      required = true,
      description = "The air temperature at the ceiling.")
  private String ceilingTemperature = "";

  @Option(
      names = "--climb-fpm",
      paramLabel = "FPM",
      required = true,
      description =
          "Best rate of climb at sea level on a standard day, maximum mass, continuous power.")
  private String climb = "";

  @Option(
      names = "--climb-speed-kt",
      paramLabel = "KT",
      required = true,
      description = "The airspeed of the best climb.")
  private String climbSpeed = "";

  @Option(
      names = "--autorotation-fpm",
      paramLabel = "FPM",
      description = "Rate of descent in autorotation at that airspeed, if the manual has it.")
  private @Nullable String autorotation;

  @Option(
      names = "--craft-file",
      paramLabel = "FILE",
      description = "Write the craft to this file, which --craft takes.")
  private @Nullable String craftFile;

  @Mixin private final TableOutput output = new TableOutput();

  /** Made by the tool. */
  public ManualCommand() {}

  @Override
  public void run() {
    output.deliver(this::report);
  }

  private ManualReport report() {
    ManualReport report = new ManualReport(comparison());
    if (craftFile != null) {
      byte[] text = report.craftText().getBytes(StandardCharsets.UTF_8);
      WholeFile.named("--craft-file", craftFile).replace(out -> out.write(text));
    }
    return report;
  }

  private Comparison comparison() {
    try {
      return Comparison.of(numbers());
    } catch (OutOfRangeException outside) {
      throw UserError.usage("these numbers make no craft: " + outside.getMessage());
    }
  }

  private ManualNumbers numbers() {
    if (!name.matches("[\\p{L}\\p{N}_-]{1,30}")) {
      throw UserError.option("--name", name, "one word of at most 30 letters, digits, _ and -");
    }
    double greatest = number("--maximum-mass-kg", maximumMass, Unit.KILOGRAM, 200, 20_000);
    double least = number("--empty-mass-kg", emptyMass, Unit.KILOGRAM, 200, greatest);
    double altitude = number("--hover-ceiling-ft", ceiling, Unit.FOOT, -1000, 20_000);
    return new ManualNumbers(
        name,
        new Choice<>("--rotation", List.of(RotationSense.values()), RotationSense::label)
            .one(rotation),
        new Choice<>("--engine", List.of(EngineKind.values()), EngineKind::label).one(engine),
        least,
        greatest,
        number("--rotor-diameter-m", diameter, Unit.METRE, 2, 30),
        number("--chord-m", chord, Unit.METRE, 0.05, 1.5),
        (int) NumberText.whole("--blades", blades, 2, 8),
        number("--rotor-rpm", rotorSpeed, Unit.ONE, 100, 800),
        NumberText.one("--continuous-kw", continuous, POWER),
        NumberText.one("--take-off-kw", takeOff, POWER),
        altitude,
        number("--hover-ceiling-mass-kg", ceilingMass, Unit.KILOGRAM, least, greatest),
        TemperatureText.air("--hover-ceiling-oat-c", ceilingTemperature, altitude).temperature(),
        number("--climb-fpm", climb, Unit.FOOT_PER_MINUTE, 50, 5000),
        number("--climb-speed-kt", climbSpeed, Unit.KNOT, 25, 120),
        autorotation == null
            ? OptionalDouble.empty()
            : OptionalDouble.of(
                number("--autorotation-fpm", autorotation, Unit.FOOT_PER_MINUTE, 500, 5000)));
  }

  private static double number(String option, String text, Unit unit, double low, double high) {
    return NumberText.si(option, text, new Quantity("value", unit, low, high));
  }
}
