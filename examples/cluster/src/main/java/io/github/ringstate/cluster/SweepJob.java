package io.github.ringstate.cluster;

import io.github.ringstate.cluster.portion.CarriedSweep;
import io.github.ringstate.cluster.portion.Cut;
import io.github.ringstate.cluster.portion.FlownPortion;
import io.github.ringstate.cluster.portion.Portion;
import io.github.ringstate.cluster.result.Manifest;
import io.github.ringstate.cluster.result.PortionPlaces;
import io.github.ringstate.cluster.result.ResultFolder;
import io.github.ringstate.cluster.summary.LossSummary;
import io.github.ringstate.cluster.summary.RowSchema;
import io.github.ringstate.cluster.summary.SummaryReport;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.provenance.Build;
import io.github.ringstate.files.provenance.ColumnUnits;
import io.github.ringstate.files.provenance.Provenance;
import io.github.ringstate.files.provenance.Source;
import io.github.ringstate.files.report.CsvWriter;
import io.github.ringstate.files.report.TextWriter;
import io.github.ringstate.files.sweep.SweepFile;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.unit.UnitSystem;
import java.io.IOException;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.apache.hadoop.conf.Configuration;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.util.SerializableConfiguration;
import scala.Tuple2;

/** Flies a sweep on a cluster: the program that {@code spark-submit} starts. */
public final class SweepJob {

  private static final String NAME = "ringstate-cluster";

  private static final String HELP =
      """
      Usage: spark-submit --class io.github.ringstate.cluster.SweepJob ringstate-cluster.jar \\
               SPEC OUTPUT [--portion POINTS] [--extension JAR]...
      Fly a sweep on a cluster, or on all cores of this machine if no --master is given.

        SPEC              what to fly: a file in TOML, as 'ringstate sweep' takes it
        OUTPUT            the folder for the results, on a file system that all machines share;
                          one that a run with the same SPEC has begun is gone on with
        --portion POINTS  points that a task flies into a file of its own. Unless given: four
                          portions for each core, 1024 to 262144 points, or as it was begun
        --extension JAR   recoveries, entries, models, delays and columns of your own, as
                          'ringstate sweep' takes them; may be given more than once

      %s
      """
          .formatted(Caution.TEXT);

  /** Enough for slow machines to be overtaken, while a task reads many portions. */
  private static final int CHECKS_A_CORE = 8;

  private final JobRequest request;
  private final SweepFile file;
  private final ResultFolder folder;

  private SweepJob(JobRequest request, SweepFile file, ResultFolder folder) {
    this.request = request;
    this.file = file;
    this.folder = folder;
  }

  /**
   * Runs the program; ends the virtual machine unless all went well.
   *
   * @param args the sweep's file and the folder for the results
   */
  public static void main(String[] args) {
    int status = run(List.of(args), System.out, System.err);
    if (status != 0) {
      System.exit(status);
    }
  }

  /**
   * Runs the program.
   *
   * @param args the arguments
   * @param out where the summary goes
   * @param err where the cost of the run goes, or a user error
   * @return the exit status
   */
  static int run(List<String> args, PrintStream out, PrintStream err) {
    if (args.contains("--help") || args.contains("-h")) {
      out.print(HELP);
      return 0;
    }
    try {
      JobRequest request = JobRequest.of(args);
      SweepFile file = request.sweep();
      file.notices().forEach(notice -> err.println(NAME + ": " + notice));
      SparkConf conf = settings();
      SweepJob job =
          new SweepJob(request, file, ResultFolder.named(request.output(), fileSystems(conf)));
      job.askedBefore();
      SummaryReport report = job.fly(conf, err);
      new TextWriter(UnitSystem.AVIATION).write(report, out);
      if (report.summary().failed() > 0) {
        err.println(
            NAME
                + ": "
                + report.summary().failed()
                + " of "
                + report.summary().points()
                + " points could not be flown; their rows say why");
      }
      return report.summary().failed() == report.summary().points() ? UserError.FILE : 0;
    } catch (UserError error) {
      err.println(NAME + ": " + error.getMessage());
      return error.status();
    } catch (IOException failed) {
      err.println(NAME + ": standard output cannot be written: " + failed.getMessage());
      return UserError.FILE;
    }
  }

  private static SparkConf settings() {
    return new SparkConf()
        .setIfMissing("spark.master", "local[*]")
        .setIfMissing("spark.app.name", "ringstate sweep")
        // a second attempt does no harm and overtakes a slow machine
        .setIfMissing("spark.speculation", "true")
        // else the end waits for an answer of the slow one, two minutes
        .setIfMissing("spark.cleaner.referenceTracking.blocking", "false");
  }

  /** How to reach file systems, as Spark is told with settings that begin so. */
  private static Configuration fileSystems(SparkConf conf) {
    Configuration hadoop = new Configuration();
    for (Tuple2<String, String> setting : conf.getAllWithPrefix("spark.hadoop.")) {
      hadoop.set(setting._1(), setting._2());
    }
    return hadoop;
  }

  /** Refuses what needs no cluster to be seen, and finds how the sweep was cut before. */
  private Optional<Cut> askedBefore() {
    long points = file.sweep().count();
    Optional<Cut> asked = request.cut(points);
    Optional<Cut> cut =
        asked.isPresent()
            ? asked
            : folder
                .begun()
                .map(begun -> Math.max(begun.cut().size(), Cut.minimumSize(points)))
                .map(size -> new Cut(points, size));
    cut.ifPresent(known -> folder.check(Manifest.of(file, known)));
    return cut;
  }

  private SummaryReport fly(SparkConf conf, PrintStream err) {
    SparkSession session = session(conf);
    try {
      JavaSparkContext spark = JavaSparkContext.fromSparkContext(session.sparkContext());
      Cut cut =
          askedBefore()
              .orElseGet(() -> Cut.forCores(file.sweep().count(), spark.defaultParallelism()));
      PortionPlaces places = folder.begin(Manifest.of(file, cut));
      removeDamaged(spark, places, err);
      err.println(NAME + ": " + flyMissing(spark, cut, places).text());
      SummaryReport report = new SummaryReport(summary(session, places));
      folder.summary(out -> new CsvWriter().write(report, out), provenance());
      return report;
    } catch (IllegalStateException failed) {
      // Spark gives up a master that is silent for a minute while the job begins
      if (session.sparkContext().isStopped()) {
        throw UserError.usage("the master " + conf.get("spark.master") + " does not answer");
      }
      throw failed;
    } finally {
      session.stop();
    }
  }

  private static SparkSession session(SparkConf conf) {
    try {
      return SparkSession.builder().config(conf).getOrCreate();
    } catch (Exception failed) { // Spark throws checked exceptions that it does not declare
      throw UserError.usage(
          "the master "
              + conf.get("spark.master")
              + " cannot be used: "
              + String.valueOf(failed.getMessage()).lines().findFirst().orElse("unknown"));
    }
  }

  /** What an earlier run left is read once, by all machines; what is damaged is flown again. */
  private void removeDamaged(JavaSparkContext spark, PortionPlaces places, PrintStream err) {
    List<Integer> there = folder.whole(places).stream().boxed().toList();
    if (there.isEmpty()) {
      return;
    }
    PortionCheck check =
        new PortionCheck(
            places, spark.broadcast(new SerializableConfiguration(spark.hadoopConfiguration())));
    int tasks = Math.min(there.size(), CHECKS_A_CORE * spark.defaultParallelism());
    attempt(() -> spark.parallelize(there, tasks).flatMap(check).collect())
        .forEach(
            file ->
                err.println(NAME + ": " + file + " is damaged or was changed; it is flown again"));
  }

  private FlightCost flyMissing(JavaSparkContext spark, Cut cut, PortionPlaces places) {
    List<Portion> missing = missing(cut, places);
    FlightCost cost = FlightCost.NONE;
    if (!missing.isEmpty()) {
      PortionTask task =
          new PortionTask(
              spark.broadcast(new CarriedSweep(file, provenance())),
              places,
              spark.broadcast(new SerializableConfiguration(spark.hadoopConfiguration())));
      long start = System.nanoTime();
      List<FlownPortion> flown =
          attempt(() -> spark.parallelize(missing, missing.size()).map(task).collect());
      cost = FlightCost.of(flown, System.nanoTime() - start);
    }
    List<Portion> lost = missing(cut, places);
    if (!lost.isEmpty()) {
      throw UserError.file(
          request.output(),
          "lacks "
              + lost.size()
              + " portions that were flown: the folder must be on a file system that all machines"
              + " share");
    }
    folder.removeDrafts(places);
    return cost;
  }

  /** The same whatever the folder, the cut and the machines. */
  private Provenance provenance() {
    List<Source> sources = new ArrayList<>();
    sources.add(Source.of(file.name(), file.text()));
    file.crafts().forEach((name, text) -> sources.add(Source.of(name, text)));
    file.extensions()
        .jars()
        .forEach(jar -> sources.add(new Source(jar.name(), jar.digest(), Optional.empty())));
    return new Provenance(
        Build.current(),
        List.of(NAME, file.name()),
        sources,
        Map.of(),
        file.settings(),
        ColumnUnits.of(file.sweep().rowColumns().stream().map(column -> column.name()).toList()));
  }

  private List<Portion> missing(Cut cut, PortionPlaces places) {
    BitSet whole = folder.whole(places);
    return IntStream.range(0, cut.portions())
        .filter(number -> !whole.get(number))
        .mapToObj(cut::portion)
        .toList();
  }

  private LossSummary summary(SparkSession session, PortionPlaces places) {
    LossSummary summary =
        attempt(
            () -> {
              Dataset<Row> rows =
                  session
                      .read()
                      .schema(RowSchema.of(file.sweep().rowColumns()))
                      .option("pathGlobFilter", places.names())
                      .parquet(places.folder());
              return LossSummary.of(file, rows);
            });
    long points = summary.points();
    if (points != file.sweep().count()) {
      throw UserError.file(
          request.output(),
          "holds " + points + " rows, not " + file.sweep().count() + ": it was changed since");
    }
    return summary;
  }

  private <T> T attempt(Supplier<T> work) {
    try {
      return work.get();
    } catch (Exception failed) { // Spark throws checked exceptions that it does not declare
      String why = String.valueOf(failed.getMessage()).lines().findFirst().orElse("unknown");
      throw UserError.file(
          request.output(),
          "is not whole: the job ended with '" + why + "'; start the same again to go on",
          failed);
    }
  }
}
