package io.github.ringstate.instructor.sweep;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.extension.ExtensionJar;
import io.github.ringstate.files.extension.Extensions;
import io.github.ringstate.files.provenance.Provenance;
import io.github.ringstate.files.row.RowFormat;
import io.github.ringstate.files.sweep.SweepFile;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.whole.WholeFile;
import io.github.ringstate.instructor.delivery.Delivery;
import io.github.ringstate.instructor.delivery.Recipient;
import io.github.ringstate.instructor.option.Notices;
import io.github.ringstate.instructor.option.NumberText;
import io.github.ringstate.instructor.origin.Origin;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.sweep.Column;
import io.github.ringstate.study.sweep.SweepFlight;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Flies a sweep into a file of rows. */
@Command(
    name = "sweep",
    description = {
      "Fly many encounters, as a file says, and write one row for each.",
      "",
      "The file is TOML; 'ringstate sweep --example' prints one that explains itself. In the tables"
          + " [craft], [air], [entry], [pilot], [model] and [disturbance] each key is a setting with"
          + " its unit, and its value is fixed (3000), a list ([0, 3000]), a range ({ from = 0, to ="
          + " 6000, values = 7 }, with scale = \"log\" by equal ratios) or sampled together with"
          + " others ({ from = 0, to = 6000, sampled = true } or { distribution = \"normal\", mean ="
          + " 560, sd = 20 }; [sample] says how: latin-hypercube, sobol or independent, and how many"
          + " points). Lists, ranges and the sample are multiplied. 'count' in"
          + " [pilot] draws so many pilots for each.",
      "",
      "A row has an index, what varies, craft, entry, recovery and delay_s, outcome,"
          + " altitude_loss_ft, loss_after_recognition_ft, peak_descent_fpm, time_to_arrest_s,"
          + " impact_fpm, and an error that says why a point could not be flown. [output] asks for"
          + " SI units, for the numbers of drawn pilots, and for a column 'sensitive', which says"
          + " whether an outcome is on an edge. Where the rows come from is kept in a Parquet file,"
          + " and beside a CSV file in FILE.provenance.json; 'ringstate rerun' makes them again. If no point could be flown, the exit status is 1.",
      "",
      "Rows are kept beside FILE as FILE.part, with FILE.journal, until they are whole. A run that"
          + " was ended at any instant goes on with --resume, to the same rows as if it had not been.",
      ""
    },
    footer = {
      "",
      "Example: print a sweep to start from",
      "  ringstate sweep --example",
      "and, once it is in my-sweep.toml, fly it",
      "  ringstate sweep my-sweep.toml --output my-sweep.csv",
      "",
      Caution.TEXT
    })
public final class SweepCommand implements Callable<Integer> {

  private static final Quantity THREADS =
      new Quantity("threads", Unit.ONE, 1, SweepFlight.MOST_THREADS);
  private static final String FILES = "the name of a file that ends in .csv or .parquet";

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..1",
      paramLabel = "SPEC",
      description = "What to fly: a file in TOML. Needs --output.")
  private @Nullable String file;

  @Option(
      names = "--output",
      paramLabel = "FILE",
      description =
          "Where the rows go: a file that ends in .csv or .parquet. An old one is replaced.")
  private @Nullable String output;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description =
          "Threads that fly. Unless given: one for each processor. The rows are the same.")
  private @Nullable String threads;

  @Option(
      names = "--extension",
      paramLabel = "JAR",
      description =
          "Recoveries, entries, inflow models, delays and columns of your own, which the file may"
              + " then name; README.md says how to write them. May be given more than once.")
  private List<String> extensions = List.of();

  @Option(
      names = "--resume",
      description = "Go on with a run that was ended; begin if there is none.")
  private boolean resume;

  @Option(
      names = "--quiet",
      description =
          "Say nothing of how far it has come. Unless given: a bar on a terminal, elsewhere a line"
              + " every half minute.")
  private boolean quiet;

  @Option(names = "--example", description = "Print a sweep that explains itself, and fly nothing.")
  private boolean example;

  /** Made by the tool. */
  public SweepCommand() {}

  @Override
  public Integer call() {
    if (example) {
      Delivery.print(SweepFile.example(), Recipient.Holder.of(spec).terminal());
      return 0;
    }
    SweepRequest request = request();
    Notices.print(request.sweep().notices(), spec);
    long points = request.sweep().sweep().count();
    SweepResult result;
    try (SweepReporter reporter = new SweepReporter(points, quiet, this::say)) {
      result = SweepRun.fly(request, reporter);
    }
    if (result.failed() > 0) {
      say(SweepMessages.SAY.failed(result.failed(), result.points()));
    }
    return result.failed() == result.points() ? UserError.FILE : 0;
  }

  private SweepRequest request() {
    if (file == null) {
      throw UserError.usage("SPEC is missing" + UserError.ALLOWED + "a file in TOML, or --example");
    }
    if (output == null) {
      throw UserError.usage("--output is missing" + UserError.ALLOWED + FILES);
    }
    int flying =
        threads == null
            ? Math.min(Runtime.getRuntime().availableProcessors(), SweepFlight.MOST_THREADS)
            : threadCount(threads);
    String ending = output.toLowerCase(Locale.ROOT).replaceFirst("^.*\\.", "");
    if (!RowFormat.ENDINGS.contains(ending)) {
      throw UserError.option("--output", output, FILES);
    }
    WholeFile place = WholeFile.named("--output", output);
    Origin origin = Origin.of(spec);
    List<ExtensionJar> jars = extensions.stream().map(ExtensionJar::read).toList();
    jars.forEach(jar -> origin.read(jar.name(), jar.digest()));
    SweepFile sweep = SweepFile.read(file, Extensions.of(jars), origin);
    Provenance provenance =
        origin.provenance(
            ending,
            sweep.settings(),
            sweep.sweep().rowColumns().stream().map(Column::name).toList());
    return new SweepRequest(sweep, output, place, ending, flying, resume, provenance);
  }

  private static int threadCount(String text) {
    double number = NumberText.one("--threads", text, THREADS);
    if (number != Math.rint(number)) {
      throw UserError.option("--threads", text, "a whole number, 1 to " + SweepFlight.MOST_THREADS);
    }
    return (int) number;
  }

  private void say(String message) {
    spec.commandLine().getErr().println(spec.qualifiedName() + ": " + message);
  }
}
