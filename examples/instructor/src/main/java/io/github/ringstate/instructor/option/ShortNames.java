package io.github.ringstate.instructor.option;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.unit.Dimension;
import io.github.ringstate.files.unit.Given;
import io.github.ringstate.files.unit.TemperatureScale;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Stack;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.IParameterPreprocessor;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;

/**
 * Options without the unit in their name: {@code --mass 1235lb} stands for {@code --mass-kg}. The
 * value carries its unit; a bare number is in the unit that {@code --units} asks for, and refused
 * if it asks for none. Former names are put right too.
 */
public final class ShortNames implements IParameterPreprocessor {

  private static final String UNITS = "--units";
  private static final String CELSIUS = "-c";

  /** Units that end the names of options. */
  private static final List<Unit> SUFFIXES =
      List.of(
          Unit.KILOGRAM,
          Unit.FOOT,
          Unit.METRE,
          Unit.KNOT,
          Unit.FOOT_PER_MINUTE,
          Unit.KILOWATT,
          Unit.HECTOPASCAL,
          Unit.DEGREE);

  /** Made by {@code Main}, once for all commands. */
  public ShortNames() {}

  @Override
  @SuppressWarnings("JdkObsolete") // the interface is picocli's
  public boolean preprocess(
      Stack<String> args, CommandSpec command, @Nullable ArgSpec none, Map<String, Object> info) {
    try {
      Optional<UnitSystem> units = units(args);
      for (int i = args.size() - 1; i >= 0; i--) { // the first argument is on top
        String arg = args.get(i);
        int end = arg.indexOf('=');
        String name = end < 0 ? arg : arg.substring(0, end);
        Optional<String> now = RenamedOptions.of(command, name);
        if (now.isPresent()) {
          Notices.print(List.of(RenamedOptions.notice(name, now.get())), command);
          args.set(i, now.get() + (end < 0 ? "" : arg.substring(end)));
        }
        if (isShort(command, name) && (end >= 0 || i > 0)) {
          String value = end < 0 ? args.get(i - 1) : arg.substring(end + 1);
          Full full = full(command, name, value, units);
          args.set(i, end < 0 ? full.name() : full.name() + "=" + full.value());
          if (end < 0) {
            args.set(i - 1, full.value());
          }
        }
      }
    } catch (UserError refused) {
      throw new ParameterException(
          command.commandLine(), String.valueOf(refused.getMessage()), refused);
    }
    return false;
  }

  private record Full(String name, String value) {}

  /**
   * Whether a name is short for that of an option or of several.
   *
   * @param command the command
   * @param name a name with its hyphens
   * @return false for the name of an option too
   */
  static boolean isShort(CommandSpec command, String name) {
    return name.startsWith("--")
        && command.findOption(name) == null
        && !candidates(command, name).isEmpty();
  }

  /**
   * The name of the option that a short name stands for with a value that carries its unit.
   *
   * @param command the command
   * @param name a short name
   * @param value the value
   * @return the full name
   * @throws UserError if the value has no unit, or one that none of the options takes
   */
  static String full(CommandSpec command, String name, String value) {
    return full(command, name, value, Optional.empty()).name();
  }

  private static Full full(
      CommandSpec command, String name, String value, Optional<UnitSystem> units) {
    List<String> candidates = candidates(command, name);
    if (candidates.size() == 1 && NumberText.hasDecimalComma(value)) {
      // one number or two: the option itself asks
      return new Full(candidates.get(0), value);
    }
    List<String> said =
        Stream.of(value.split(",", -1))
            .map(part -> Given.of(part).map(Given::unit).orElse(""))
            .toList();
    if (!said.contains("")) {
      return new Full(
          candidates.stream()
              .filter(full -> takes(full, said.get(0)))
              .findFirst()
              .orElseThrow(
                  () ->
                      UserError.option(
                          name, value, "a unit of " + String.join(" or ", candidates))),
          value);
    }
    if (candidates.size() == 1
        && Stream.of(value.split(",", -1)).allMatch(part -> Given.of(part).isEmpty())) {
      // no number at all: the option itself says what it takes
      return new Full(candidates.get(0), value);
    }
    if (units.isEmpty() || candidates.size() > 1) {
      throw UserError.option(
          name,
          value,
          "a unit behind each number, such as "
              + candidates.stream().map(ShortNames::example).collect(Collectors.joining(" or "))
              + ", or "
              + String.join(" or ", candidates)
              + " without");
    }
    String full = candidates.get(0);
    String unit = own(full, units.get());
    return new Full(
        full,
        Stream.of(value.split(",", -1))
            .map(
                part ->
                    Given.of(part).filter(given -> given.unit().isEmpty()).isPresent()
                        ? part + unit
                        : part)
            .collect(Collectors.joining(",")));
  }

  private static List<String> candidates(CommandSpec command, String name) {
    List<String> candidates = new ArrayList<>();
    for (OptionSpec option : command.options()) {
      String full = option.longestName();
      if (full.startsWith(name + "-")
          && suffix(full).filter(end -> full.equals(name + end)).isPresent()) {
        candidates.add(full);
      }
    }
    return candidates;
  }

  private static Optional<String> suffix(String full) {
    return full.endsWith(CELSIUS)
        ? Optional.of(CELSIUS)
        : unit(full).map(unit -> "-" + unit.suffix());
  }

  private static Optional<Unit> unit(String full) {
    return SUFFIXES.stream().filter(unit -> full.endsWith("-" + unit.suffix())).findFirst();
  }

  private static boolean takes(String full, String word) {
    return full.endsWith(CELSIUS)
        ? TemperatureScale.named(word).isPresent()
        : unit(full)
                .flatMap(Dimension::of)
                .filter(
                    dimension ->
                        Dimension.unit(word).filter(dimension.units()::contains).isPresent())
                .isPresent()
            || unit(full).filter(unit -> unit.symbol().equals(word)).isPresent();
  }

  private static String own(String full, UnitSystem units) {
    return full.endsWith(CELSIUS)
        ? units.temperature().symbol()
        : units.own(unit(full).orElseThrow()).symbol();
  }

  private static String example(String full) {
    return full.endsWith(CELSIUS)
        ? "15C or 59F"
        : units(unit(full).orElseThrow()).stream()
            .limit(2)
            .map(ShortNames::example)
            .collect(Collectors.joining(" or "));
  }

  /** A number that people give in that unit. */
  private static String example(Unit unit) {
    String number =
        switch (unit) {
          case KNOT -> "15";
          case METRE_PER_SECOND -> "7.5";
          case HECTOPASCAL -> "1003";
          case INCH_OF_MERCURY -> "29.62";
          case DEGREE -> "240";
          default -> "600";
        };
    return number + unit.symbol();
  }

  private static List<Unit> units(Unit unit) {
    return Dimension.of(unit).map(Dimension::units).orElse(List.of(unit));
  }

  private static Optional<UnitSystem> units(List<String> args) {
    for (int i = args.size() - 1; i >= 0; i--) {
      String arg = args.get(i);
      String said =
          arg.startsWith(UNITS + "=")
              ? arg.substring(UNITS.length() + 1)
              : arg.equals(UNITS) && i > 0 ? args.get(i - 1) : "";
      Optional<UnitSystem> units =
          Stream.of(UnitSystem.values()).filter(system -> system.label().equals(said)).findFirst();
      if (units.isPresent()) {
        return units;
      }
    }
    return Optional.empty();
  }
}
