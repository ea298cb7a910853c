package io.github.ringstate.instructor.option;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.plan.PlanFile;
import io.github.ringstate.files.plan.PlanFile.AgreedHeight;
import io.github.ringstate.files.plan.PlanFile.Part;
import io.github.ringstate.instructor.origin.Origin;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.Stack;
import picocli.CommandLine;
import picocli.CommandLine.IParameterPreprocessor;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/**
 * Puts the options of a plan among those that were typed, as far as the command has them and they
 * were not typed.
 */
public final class PlanArguments implements IParameterPreprocessor {

  /** The command that plans a run; all others meet the ring state. */
  private static final String RUNS = "runs";

  /** What was flown: a wind that was planned is not the one that blew. */
  private static final String REVIEW = "review";

  /** A table by delay: what states the plan is for does not concern it. */
  private static final String LOSS = "loss";

  private static final String STATE = "state";

  /** In tables, the recoveries to compare; elsewhere the one that was chosen. */
  private static final String RECOVERY = "recovery";

  private static final Set<String> TABLES = Set.of(LOSS, "floor");

  /** What a file from somebody else must not say: which files are read and written, and how. */
  private static final Set<String> TYPED_ALONE =
      Set.of(
          "help",
          "version",
          "output",
          "craft-file",
          "format",
          "paper",
          "plan",
          "columns",
          "extension",
          "folder",
          "example",
          "resume",
          "any-build",
          "quiet",
          "threads",
          "port",
          "idle",
          "no-browser");

  /** Made by picocli. */
  public PlanArguments() {}

  @Override
  @SuppressWarnings("JdkObsolete") // the interface is picocli's
  public boolean preprocess(
      Stack<String> args, CommandSpec command, ArgSpec option, Map<String, Object> info) {
    if (args.isEmpty()) {
      return false; // picocli says that the file is missing
    }
    try {
      PlanFile plan = PlanFile.read(args.peek(), Origin.of(command));
      refuseUnknown(plan, command, args.peek());
      options(plan, command)
          .forEach(
              (name, value) -> {
                if (Objects.requireNonNull(command.findOption("--" + name)).stringValues().isEmpty()
                    && !isTyped(args, name)) {
                  args.add(args.size() - 1, "--" + name + "=" + value);
                }
              });
    } catch (UserError refused) {
      throw new ParameterException(
          command.commandLine(), String.valueOf(refused.getMessage()), refused);
    }
    return false;
  }

  private static boolean isTyped(Stack<String> args, String name) {
    return args.stream()
        .anyMatch(arg -> arg.equals("--" + name) || arg.startsWith("--" + name + "="));
  }

  /** The options that concern a command. */
  private static Map<String, String> options(PlanFile plan, CommandSpec spec) {
    String command = spec.name();
    Map<String, String> planned = new LinkedHashMap<>(plan.options(Part.CONDITIONS));
    planned.putAll(plan.options(command.equals(RUNS) ? Part.RUN : Part.ENCOUNTER));
    Map<String, String> options = fullNames(planned, spec);
    if (command.equals(REVIEW)) {
      options.remove("wind-kt");
    }
    if (command.equals(LOSS)) {
      options.remove(STATE);
    }
    if (!TABLES.contains(command)) {
      options.remove("models"); // they widen the intervals of tables, which the others do not show
      options.remove(RECOVERY);
      if (!plan.technique().isEmpty()) {
        options.put(RECOVERY, plan.technique());
      }
    }
    plan.agreed()
        .forEach(
            (height, feet) -> {
              if (height != AgreedHeight.LEAST) {
                options.put(height.key().replace('_', '-'), feet.toString());
              }
            });
    options
        .keySet()
        .removeIf(
            name -> TYPED_ALONE.contains(name) || !spec.optionsMap().containsKey("--" + name));
    return options;
  }

  private static Map<String, String> fullNames(Map<String, String> options, CommandSpec command) {
    Map<String, String> full = new LinkedHashMap<>();
    options.forEach(
        (name, value) ->
            full.put(
                ShortNames.isShort(command, "--" + name)
                    ? ShortNames.full(command, "--" + name, value).substring(2)
                    : RenamedOptions.of(command, "--" + name).orElse("--" + name).substring(2),
                value));
    return full;
  }

  /**
   * Whether an option is never taken from a plan.
   *
   * @param name the option's name, without its hyphens
   * @return true if it says which files are read and written, and how
   */
  public static boolean isTypedAlone(String name) {
    return TYPED_ALONE.contains(name);
  }

  /**
   * The options of a plan that concern a command, as they would be typed.
   *
   * @param plan the plan
   * @param command the command
   * @return an argument for each
   */
  public static List<String> of(PlanFile plan, CommandSpec command) {
    return options(plan, command).entrySet().stream()
        .map(option -> "--" + option.getKey() + "=" + option.getValue())
        .toList();
  }

  /** A key that no command knows is a slip of the pen, and would be passed over in silence. */
  private static void refuseUnknown(PlanFile plan, CommandSpec command, String file) {
    Map<String, CommandLine> commands = command.root().subcommands();
    if (commands.isEmpty()) {
      return; // a command that stands alone knows nothing of the others
    }
    for (Part part : Part.values()) {
      for (String name : plan.options(part).keySet()) {
        boolean known =
            commands.entrySet().stream()
                .filter(one -> !TYPED_ALONE.contains(name))
                .filter(
                    one ->
                        part == Part.CONDITIONS || (part == Part.RUN) == one.getKey().equals(RUNS))
                .anyMatch(
                    one ->
                        one.getValue().getCommandSpec().optionsMap().containsKey("--" + name)
                            || ShortNames.isShort(one.getValue().getCommandSpec(), "--" + name)
                            || RenamedOptions.of(one.getValue().getCommandSpec(), "--" + name)
                                .isPresent());
        if (!known) {
          throw UserError.line(
              file,
              0,
              "unknown key "
                  + UserError.quoted(part.key() + "." + name.replace('-', '_'))
                  + UserError.ALLOWED
                  + "the options of "
                  + (part == Part.RUN ? RUNS : "the commands that fly encounters")
                  + ", with _ for -");
        }
      }
    }
  }
}
