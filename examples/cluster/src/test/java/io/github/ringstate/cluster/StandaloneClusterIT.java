package io.github.ringstate.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * One master and two workers as processes of their own, on the loopback device. Each test submits
 * the job's jar and breaks something in mid-run. It takes minutes, so no plain build does it.
 */
@Tag("soak")
@EnabledIfSystemProperty(named = "ringstate.soak", matches = "true")
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class StandaloneClusterIT {

  /** 12,000 points; some masses are beyond the limits of the craft. */
  private static final String SWEEP =
      """
      seed = 12
      [sample]
      method = "sobol"
      points = 25
      [craft]
      mass_kg = { from = 560, to = 630, values = 8 }
      download = { from = 0.01, to = 0.05, sampled = true }
      [pilot]
      technique = ["forward", "lateral", "autorotation"]
      delay_s = { from = 0, to = 2, values = 20 }
      """;

  private static final int POINTS = 12_000;
  private static final String PORTION = "200";
  private static final int PORTIONS = 60;

  /** Portions that are whole when something is broken: all executors are at work by then. */
  private static final int SOME = 8;

  private static final String EXECUTOR = "CoarseGrainedExecutorBackend";

  @TempDir static Path folder = Path.of("");

  private static Path spec = Path.of("");
  private static RowTable local;
  private static SparkOnLoopback spark;
  private static Process first;
  private static Process second;

  @BeforeAll
  static void startCluster() throws IOException, InterruptedException {
    spec = Files.writeString(folder.resolve("sweep.toml"), SWEEP);
    spark = new SparkOnLoopback(Files.createDirectory(folder.resolve("spark")));
    spark.startMaster();
    first = spark.startWorker("127.0.0.2");
    second = spark.startWorker("127.0.0.3");
    local = LocalTool.fly(spec, folder.resolve("local.parquet"));
    assertEquals(POINTS, local.rows().size());
  }

  @AfterAll
  static void nothingIsLeft() {
    Collection<ProcessHandle> all = spark.processes().alive();
    spark.close();
    assertEquals(List.of(), all.stream().filter(ProcessHandle::isAlive).toList());
    assertFalse(spark.masterListens());
  }

  private static int portions(Path output) {
    try {
      return RowTable.portions(output).size();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  /** Waits until some of the portions are whole. */
  private static void awaitMidRun(Path output, int whole) throws InterruptedException {
    spark.await("a run is at work", () -> portions(output) >= whole);
  }

  private static ProcessHandle executorOf(Process worker) throws InterruptedException {
    List<ProcessHandle> found = new ArrayList<>();
    spark.await(
        "a worker has an executor",
        () -> found.addAll(spark.processes().childrenRunning(worker, EXECUTOR)));
    return found.get(0);
  }

  private static void signal(String name, ProcessHandle process)
      throws IOException, InterruptedException {
    Process kill = new ProcessBuilder("sh", "-c", "kill -" + name + " " + process.pid()).start();
    assertEquals(0, kill.waitFor());
  }

  /** That something was broken while there was work left for it. */
  private static void assertMidRun(Path output) {
    int whole = portions(output);
    assertTrue(whole < PORTIONS - SOME, () -> "broken too late: after " + whole + " portions");
  }

  private static void assertWhole(Path output) throws IOException {
    RowTable rows = RowTable.ofPortions(output);
    assertEquals(local.schema(), rows.schema());
    assertEquals(local.rows(), rows.rows());
    assertEquals(PORTIONS, portions(output));
    assertEquals(List.of(), RowTable.drafts(output));
    List<String> summary = Files.readAllLines(output.resolve("summary.csv"));
    int points = List.of(summary.get(0).split(",", -1)).indexOf("points");
    assertEquals(
        POINTS,
        summary.stream()
            .skip(1)
            .mapToInt(row -> Integer.parseInt(row.split(",", -1)[points]))
            .sum());
  }

  @Test
  @Order(1)
  void anExecutorThatStandsStillIsOvertakenAndAllSocketsAreOnLoopback()
      throws IOException, InterruptedException {
    Path output = folder.resolve("straggler");
    Process driver = spark.submit(spark.master(), spec, output, "--portion", PORTION);
    awaitMidRun(output, SOME);
    ProcessHandle straggler = executorOf(first);
    signal("STOP", straggler);
    assertMidRun(output);
    try {
      assertSocketsOnLoopback();
      spark.awaitEnd(driver);
    } finally {
      straggler.destroyForcibly();
    }
    assertWhole(output);
  }

  private static void assertSocketsOnLoopback() throws IOException {
    if (!ListeningSockets.canBeSeen()) {
      return; // not Linux
    }
    int listening = 0;
    for (ProcessHandle process : spark.processes().alive()) {
      Collection<String> addresses = socketsOf(process);
      listening += addresses.isEmpty() ? 0 : 1;
      for (String address : addresses) {
        assertTrue(ListeningSockets.isLoopback(address), () -> address + " of " + process.info());
      }
    }
    // at least master, both workers and the driver
    assertTrue(listening >= 4, "processes that listen: " + listening);
  }

  private static Collection<String> socketsOf(ProcessHandle process) throws IOException {
    try {
      return ListeningSockets.of(process);
    } catch (NoSuchFileException ended) {
      return List.of(); // dead, or a zombie that its parent has not noticed
    }
  }

  @Test
  @Order(2)
  void aJobWhoseDriverWasKilledFliesOnlyWhatIsMissing() throws IOException, InterruptedException {
    Path output = folder.resolve("driver");
    Process killed = spark.submit(spark.master(), spec, output, "--portion", PORTION);
    awaitMidRun(output, SOME);
    signal("KILL", killed.toHandle());
    killed.waitFor();
    assertMidRun(output);
    spark.await(
        "executors without a driver end",
        () ->
            spark.processes().childrenRunning(first, EXECUTOR).isEmpty()
                && spark.processes().childrenRunning(second, EXECUTOR).isEmpty());
    Map<Path, Object> before = identities(output);
    assertTrue(before.size() >= SOME && before.size() < PORTIONS, () -> before.size() + " whole");
    assertFalse(Files.exists(output.resolve("summary.csv")));

    spark.awaitEnd(spark.submit(spark.master(), spec, output));
    Map<Path, Object> after = identities(output);
    assertEquals(PORTIONS, after.size());
    after.keySet().retainAll(before.keySet());
    assertEquals(before, after);
    assertWhole(output);
  }

  /** What changes when a file is written again: its inode and time. */
  private static Map<Path, Object> identities(Path output) throws IOException {
    Map<Path, Object> identities = new HashMap<>();
    for (Path file : RowTable.portions(output)) {
      BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
      identities.put(
          file, List.of(String.valueOf(attributes.fileKey()), attributes.lastModifiedTime()));
    }
    return identities;
  }

  @Test
  @Order(3)
  void anExecutorAndThenAWorkerKilledInMidRunCostNoRow() throws IOException, InterruptedException {
    Path output = folder.resolve("killed");
    Process driver = spark.submit(spark.master(), spec, output, "--portion", PORTION);
    awaitMidRun(output, SOME);
    ProcessHandle executor = executorOf(first);
    signal("KILL", executor);
    assertMidRun(output);
    awaitMidRun(output, 2 * SOME);
    // the worker first, or it would start another executor
    ProcessHandle another = executorOf(second);
    signal("KILL", second.toHandle());
    signal("KILL", another);
    assertMidRun(output);
    spark.awaitEnd(driver);
    assertFalse(executor.isAlive() || second.isAlive() || another.isAlive());
    assertWhole(output);
  }
}
