package io.github.ringstate.instructor.plan;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.plan.PlanFile;
import io.github.ringstate.files.plan.PlanFile.Part;
import io.github.ringstate.instructor.option.Checked;
import io.github.ringstate.instructor.option.PlanArguments;
import io.github.ringstate.instructor.origin.Origin;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * The options that a plan holds: those of the commands that it is for, under the same names; those
 * of a run with {@code --run-} in front.
 */
public final class PlannedOptions {

  private static final String RUN = "run-";

  private static final Pattern OPTION = Pattern.compile("--([a-z-]+)");

  /** Options that every command shares. */
  private static final Set<String> CONDITIONS =
      Set.of("craft", "mass-kg", "pressure-altitude-ft", "elevation-ft", "altimeter-hpa", "oat-c");

  /** What belongs to one print or stands elsewhere in a plan, beside what is typed alone. */
  private static final Set<String> LEFT_OUT = Set.of("units", "start-height-ft", "abort-height-ft");

  private final List<Supplier<Object>> encounters;
  private final Supplier<Object> run;

  /**
   * Stands above a command that looks at its options, and knows where its texts come from.
   *
   * @param origin where from
   */
  @Command
  private record Reading(Origin origin) implements Origin.Holder {}

  /**
   * Options of some commands.
   *
   * @param encounters make the commands that fly encounters
   * @param run makes the command that plans a run
   */
  public PlannedOptions(List<Supplier<Object>> encounters, Supplier<Object> run) {
    this.encounters = List.copyOf(encounters);
    this.run = run;
  }

  /**
   * The options that a part of a plan may hold.
   *
   * @param part the part
   * @return by name, what each is for
   */
  public Map<String, String> described(Part part) {
    Map<String, String> described = new LinkedHashMap<>();
    for (Supplier<Object> command : part == Part.RUN ? List.of(run) : encounters) {
      options(command)
          .forEach(
              (name, option) -> {
                if (CONDITIONS.contains(name) == (part == Part.CONDITIONS)) {
                  described.putIfAbsent(name, description(option));
                }
              });
    }
    return described;
  }

  /**
   * The options of a command that tell it what to compute.
   *
   * @param command makes the command
   * @return by name, what each is for
   */
  public static Map<String, String> described(Supplier<Object> command) {
    Map<String, String> described = new LinkedHashMap<>();
    options(command).forEach((name, option) -> described.put(name, description(option)));
    return described;
  }

  /** As the help of the command says it. */
  private static String description(OptionSpec option) {
    return String.join(" ", option.description())
        .replace("${DEFAULT-VALUE}", String.valueOf(option.defaultValue()))
        .replace("%%", "%");
  }

  /**
   * Adds the options to a command.
   *
   * @param plan the command
   */
  void addTo(CommandSpec plan) {
    for (Supplier<Object> command : encounters) {
      options(command).forEach((name, option) -> add(plan, name, option));
    }
    ofRun().forEach((name, option) -> add(plan, RUN + name, option));
  }

  /** Without what is shared, and the recovery, which is the technique of the plan. */
  private Map<String, OptionSpec> ofRun() {
    Map<String, OptionSpec> options = options(run);
    options.keySet().removeAll(CONDITIONS);
    options.remove("recovery");
    return options;
  }

  private static void add(CommandSpec plan, String name, OptionSpec option) {
    if (!plan.optionsMap().containsKey("--" + name)) {
      plan.addOption(
          OptionSpec.builder("--" + name)
              .type(isFlag(option) ? boolean.class : String.class)
              .paramLabel(option.paramLabel())
              .defaultValue(option.defaultValue())
              .description(escaped(option.description()))
              .build());
    }
  }

  /** A description that is read comes without the second per cent sign that one given needs. */
  private static String[] escaped(String... description) {
    return Stream.of(description)
        .map(line -> line.replace("%%", "%").replace("%", "%%"))
        .toArray(String[]::new);
  }

  private static boolean isFlag(OptionSpec option) {
    return option.type() == boolean.class;
  }

  private static Map<String, OptionSpec> options(Supplier<Object> command) {
    Map<String, OptionSpec> options = new LinkedHashMap<>();
    for (OptionSpec option : new CommandLine(command.get()).getCommandSpec().options()) {
      String name = option.longestName().substring(2);
      if (!LEFT_OUT.contains(name) && !PlanArguments.isTypedAlone(name)) {
        options.put(name, option);
      }
    }
    return options;
  }

  /**
   * The options as given, with the defaults of those that were not, by the parts of a plan.
   *
   * @param plan the command with its options parsed
   * @return the options; those of a run only if one was given
   */
  Map<Part, Map<String, String>> given(CommandSpec plan) {
    Map<String, String> conditions = new LinkedHashMap<>();
    Map<String, String> encounter = new LinkedHashMap<>();
    Set<String> ofEncounters = new LinkedHashSet<>();
    encounters.forEach(command -> ofEncounters.addAll(options(command).keySet()));
    for (String name : ofEncounters) {
      put(CONDITIONS.contains(name) ? conditions : encounter, name, plan, name);
    }
    Map<Part, Map<String, String>> given = new LinkedHashMap<>();
    given.put(Part.CONDITIONS, conditions);
    given.put(Part.ENCOUNTER, encounter);
    boolean runs =
        plan.options().stream()
            .anyMatch(
                option ->
                    option.longestName().startsWith("--" + RUN)
                        && !option.stringValues().isEmpty());
    if (runs) {
      Map<String, String> run = new LinkedHashMap<>();
      for (String name : ofRun().keySet()) {
        put(run, name, plan, RUN + name);
      }
      given.put(Part.RUN, run);
    }
    return given;
  }

  private static void put(Map<String, String> to, String key, CommandSpec plan, String name) {
    Object value = Objects.requireNonNull(plan.findOption("--" + name)).getValue();
    if (value != null && !value.equals(false)) {
      to.put(key, value.toString());
    }
  }

  /**
   * Lets each command look at its options; nothing is flown.
   *
   * @param plan the plan
   * @param origin where the texts that the plan names come from
   * @return what the commands would fly
   */
  List<Encounter> flown(PlanFile plan, Origin origin) {
    List<Supplier<Object>> all = new ArrayList<>(encounters);
    if (plan.options().containsKey(Part.RUN)) {
      all.add(run);
    }
    List<Encounter> flown = new ArrayList<>();
    for (Supplier<Object> command : all) {
      CommandLine parsed = new CommandLine(command.get());
      List<String> arguments = new ArrayList<>(List.of(parsed.getCommandName()));
      arguments.addAll(PlanArguments.of(plan, parsed.getCommandSpec()));
      new CommandLine(new Reading(origin))
          .addSubcommand(parsed)
          .parseArgs(arguments.toArray(String[]::new));
      try {
        flown.addAll(((Checked) parsed.getCommand()).flown());
      } catch (UserError wrong) {
        throw command.equals(run) && wrong.status() == UserError.USAGE
            ? UserError.usage(inPlan(String.valueOf(wrong.getMessage())))
            : wrong;
      }
    }
    return flown;
  }

  /** A sentence on options of a run, as a plan names them. */
  private String inPlan(String sentence) {
    return OPTION
        .matcher(sentence)
        .replaceAll(
            option -> "--" + (ofRun().containsKey(option.group(1)) ? RUN : "") + option.group(1));
  }
}
