package io.github.ringstate.instructor;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.text.Unprintable;
import io.github.ringstate.instructor.best.BestCommand;
import io.github.ringstate.instructor.boundary.BoundaryCommand;
import io.github.ringstate.instructor.craftlist.CraftCommand;
import io.github.ringstate.instructor.delivery.Delivery;
import io.github.ringstate.instructor.delivery.Recipient;
import io.github.ringstate.instructor.desk.Browser;
import io.github.ringstate.instructor.desk.DeskCommand;
import io.github.ringstate.instructor.desk.Fields;
import io.github.ringstate.instructor.equilibria.EquilibriaCommand;
import io.github.ringstate.instructor.fit.FitCommand;
import io.github.ringstate.instructor.floor.CardCommand;
import io.github.ringstate.instructor.floor.FloorCommand;
import io.github.ringstate.instructor.floor.LessonCommand;
import io.github.ringstate.instructor.fly.FlyCommand;
import io.github.ringstate.instructor.loss.LossCommand;
import io.github.ringstate.instructor.manual.ManualCommand;
import io.github.ringstate.instructor.option.Inputs;
import io.github.ringstate.instructor.option.PlanOption;
import io.github.ringstate.instructor.option.ShortNames;
import io.github.ringstate.instructor.origin.Kept;
import io.github.ringstate.instructor.origin.Origin;
import io.github.ringstate.instructor.plan.BriefCommand;
import io.github.ringstate.instructor.plan.PlanCommand;
import io.github.ringstate.instructor.plan.PlannedOptions;
import io.github.ringstate.instructor.rerun.RerunCommand;
import io.github.ringstate.instructor.review.ReviewCommand;
import io.github.ringstate.instructor.runs.RunsCommand;
import io.github.ringstate.instructor.sensitivity.SensitivityCommand;
import io.github.ringstate.instructor.sweep.SweepCommand;
import java.awt.AWTError;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExecutionException;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.RunLast;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** The command-line tool. */
@Command(
    name = "ringstate",
    mixinStandardHelpOptions = true,
    scope = ScopeType.INHERIT,
    versionProvider = PackagedVersion.class,
    sortOptions = false,
    description = {
      "What a helicopter does in the vortex ring state (settling with power), and what it costs to"
          + " get out: computed from a simplified model, in print or as data.",
      ""
    },
    footer = {
      "",
      "Example: what delay costs in the trainer",
      "  ringstate loss",
      "",
      "Exit status: 0 done, 1 a file cannot be read or written or holds a wrong value, 2 a wrong"
          + " option or value, 130 or 143 ended from outside.",
      "",
      Caution.TEXT
    })
public final class Main implements Runnable, Origin.Holder, Recipient.Holder {

  private static final String RERUN = "rerun";

  /** The commands, in the order in which the help lists them. */
  private static final List<String> COMMANDS =
      List.of(
          "loss",
          "floor",
          "card",
          "lesson",
          "fly",
          "runs",
          "plan",
          "brief",
          "boundary",
          "equilibria",
          "best",
          "sensitivity",
          "craft",
          "manual",
          "review",
          "fit",
          "sweep",
          "desk",
          RERUN,
          CompletionCommand.NAME);

  /** Columns of help and version. */
  static final int HELP_WIDTH = 90;

  /** As shells have it: 128 and the number of the signal of an interrupt. */
  private static final int INTERRUPTED = 130;

  @Spec private CommandSpec spec;

  private final Origin origin;
  private final Optional<Recipient> recipient;
  private final OutputStream terminal;

  private Main(Origin origin, Optional<Recipient> recipient, OutputStream terminal) {
    this.origin = origin;
    this.recipient = recipient;
    this.terminal = terminal;
  }

  @Override
  public Origin origin() {
    return origin;
  }

  @Override
  public Optional<Recipient> recipient() {
    return recipient;
  }

  @Override
  public OutputStream terminal() {
    return terminal;
  }

  /**
   * Runs the tool and ends the virtual machine.
   *
   * @param args the arguments
   */
  public static void main(String[] args) {
    boolean opened = args.length == 0 && Start.byDoubleClick();
    Browser.drawWithoutScreen();
    // picocli counts and sorts by the default locale: an Arabic completion script would be no
    // script
    Locale.setDefault(Locale.ROOT);
    System.exit(status(opened ? Start.DESK : args));
  }

  @SuppressWarnings("SystemErr") // where the memory has run out, nothing else speaks
  private static int status(String... args) {
    try {
      return commandLine(new FileOutputStream(FileDescriptor.out), asked(args)).execute(args);
    } catch (OutOfMemoryError error) {
      System.err.println("ringstate: " + Shortage.NO_MEMORY);
      return UserError.FILE;
    }
  }

  /** A command named first needs none of the others made, and reads as if they were there. */
  private static List<String> asked(String[] args) {
    boolean alone =
        args.length > 0
            && COMMANDS.contains(args[0])
            && !args[0].equals(CompletionCommand.NAME)
            && !takesPlan(args);
    return alone ? List.of(args[0]) : COMMANDS;
  }

  /** A plan's keys are held against the options of all commands. */
  private static boolean takesPlan(String... args) {
    return Stream.of(args)
        .anyMatch(arg -> arg.equals(PlanOption.NAME) || arg.startsWith(PlanOption.NAME + "="));
  }

  /**
   * The tool with all commands, ready to run.
   *
   * @param terminal where reports go if no file is given
   * @return the tool; its {@code execute} gives the exit status and throws nothing
   */
  static CommandLine commandLine(OutputStream terminal) {
    return commandLine(terminal, COMMANDS);
  }

  private static CommandLine commandLine(OutputStream terminal, List<String> commands) {
    return commandLine(terminal, commands, new Origin(Kept.NOTHING, false), Optional.empty());
  }

  private static CommandLine commandLine(
      OutputStream terminal, List<String> commands, Origin origin, Optional<Recipient> recipient) {
    CommandLine tool = new CommandLine(new Main(origin, recipient, terminal));
    for (String name : commands) {
      tool.addSubcommand(command(name, terminal));
    }
    ShortNames shortNames = new ShortNames();
    tool.getSubcommands()
        .values()
        .forEach(command -> command.getCommandSpec().preprocessor(shortNames));
    return tool.setExpandAtFiles(false)
        .setUsageHelpWidth(HELP_WIDTH)
        .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
        .setExecutionStrategy(parsed -> run(parsed, terminal))
        .setParameterExceptionHandler((refused, args) -> notUnderstood(refused))
        .setExecutionExceptionHandler((failed, command, parsed) -> failed(failed, command));
  }

  /** Help, version and completion are gathered before: a print writer swallows what goes wrong. */
  private static int run(ParseResult parsed, OutputStream terminal) {
    StringWriter said = new StringWriter();
    List<CommandLine> asked = parsed.asCommandLineList();
    asked.get(0).setOut(new PrintWriter(said));
    int status;
    try {
      refuseUnprintable(parsed.originalArgs());
      ParseResult command = asked.get(asked.size() - 1).getParseResult();
      Inputs.keep(command);
      if (asked.get(0).getCommandSpec().userObject() instanceof Origin.Holder holder) {
        holder.origin().begin(command);
      }
      status = new RunLast().execute(parsed);
      Delivery.print(said.toString(), terminal);
    } catch (UserError error) {
      throw failed(asked, error);
    } catch (VirtualMachineError | LinkageError | AWTError error) {
      throw failed(asked, Shortage.of(error));
    }
    return status;
  }

  private static ExecutionException failed(List<CommandLine> asked, UserError error) {
    return new ExecutionException(
        asked.get(asked.size() - 1), String.valueOf(error.getMessage()), error);
  }

  /** What users type is echoed by reports and kept in files. */
  private static void refuseUnprintable(List<String> args) {
    for (String arg : args) {
      OptionalInt found = Unprintable.first(arg);
      if (found.isPresent()) {
        throw UserError.usage(
            "the argument "
                + UserError.quoted(arg)
                + " holds "
                + Unprintable.name(found.getAsInt())
                + ", which cannot be printed");
      }
    }
  }

  private static Object command(String name, OutputStream terminal) {
    return switch (name) {
      case "loss" -> new LossCommand();
      case "floor" -> new FloorCommand();
      case "card" -> new CardCommand();
      case "lesson" -> new LessonCommand();
      case "plan" -> PlanCommand.of(planned());
      case "brief" -> new BriefCommand(args -> commandLine(terminal).execute(args));
      case "fly" -> new FlyCommand();
      case "runs" -> new RunsCommand();
      case "boundary" -> new BoundaryCommand();
      case "equilibria" -> new EquilibriaCommand();
      case "best" -> new BestCommand();
      case "sensitivity" -> new SensitivityCommand();
      case "craft" -> new CraftCommand();
      case "manual" -> new ManualCommand();
      case "review" -> new ReviewCommand();
      case "fit" -> new FitCommand();
      case "sweep" -> new SweepCommand();
      case "desk" -> new DeskCommand(Main::hosted, Main::fields, terminal);
      case RERUN ->
          new RerunCommand(
              (arguments, texts, err) ->
                  hosted(arguments, Kept.texts(texts), terminal, err, Optional.empty()));
      case CompletionCommand.NAME -> new CompletionCommand();
      default -> throw new IllegalArgumentException(name);
    };
  }

  private static PlannedOptions planned() {
    return new PlannedOptions(
        List.of(FloorCommand::new, LossCommand::new, CardCommand::new, LessonCommand::new),
        RunsCommand::new);
  }

  private static Fields fields() {
    return new Fields(
        planned()::described,
        PlannedOptions.described(ManualCommand::new),
        PlannedOptions.described(ReviewCommand::new));
  }

  /** Runs a command inside another, on texts that stand in for files. */
  static int hosted(
      List<String> arguments,
      Kept kept,
      OutputStream terminal,
      PrintWriter err,
      Optional<Recipient> recipient) {
    String[] args = arguments.toArray(String[]::new);
    return commandLine(terminal, asked(args), new Origin(kept, true), recipient)
        .setErr(err)
        .execute(args);
  }

  private static int notUnderstood(ParameterException refused) {
    CommandLine command = refused.getCommandLine();
    if (refused.getCause() instanceof UserError error) {
      say(command, String.valueOf(error.getMessage()));
      return error.status();
    }
    say(command, why(refused));
    command.getErr().println("Try '" + command.getCommandSpec().qualifiedName() + " --help'.");
    return UserError.USAGE;
  }

  /** What was not understood; two messages of the library are for programmers. */
  private static String why(ParameterException refused) {
    if (refused instanceof UnmatchedArgumentException unmatched && !unmatched.isUnknownOption()) {
      String argument = UserError.quoted(unmatched.getUnmatched().get(0));
      return unmatched.getCommandLine().getParent() == null
          ? "there is no command " + argument + UserError.ALLOWED + String.join(", ", COMMANDS)
          : argument + " is one argument too many";
    }
    if (refused instanceof UnmatchedArgumentException unmatched && unmatched.isUnknownOption()) {
      return NearestOption.unknown(unmatched.getCommandLine(), unmatched.getUnmatched().get(0));
    }
    if (refused instanceof MissingParameterException missing && missing.getMissing().size() == 1) {
      ArgSpec missed = missing.getMissing().get(0);
      if (missed instanceof OptionSpec option) {
        return option.longestName() + " has no value" + UserError.ALLOWED + option.paramLabel();
      }
    }
    return String.valueOf(refused.getMessage()).lines().findFirst().orElse("");
  }

  private static int failed(Exception failed, CommandLine command) {
    if (failed instanceof CancellationException) {
      say(command, "interrupted; nothing was written");
      return INTERRUPTED;
    }
    if (failed instanceof UserError error) {
      say(command, String.valueOf(error.getMessage()));
      return error.status();
    }
    say(command, "cannot compute this, which is an error in the tool: " + failed);
    return UserError.FILE;
  }

  private static void say(CommandLine command, String message) {
    command
        .getErr()
        .println(command.getCommandSpec().qualifiedName() + ": " + Unprintable.replaced(message));
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }
}
