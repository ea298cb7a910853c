package io.github.ringstate.cluster;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.apache.spark.launcher.JavaModuleOptions;

/**
 * A Spark from Maven's jars whose processes listen on the loopback device alone: a standalone
 * cluster of one master and some workers, and the programs submitted to it.
 */
final class SparkOnLoopback implements AutoCloseable {

  /** Beyond it something hangs; no wait is expected to come near. */
  private static final long PATIENCE_SECONDS = 240;

  private static final String LOCALHOST = "127.0.0.1";

  /** What lives but a few seconds starts sooner so. */
  private static final String SHORT_LIVED = "-XX:TieredStopAtLevel=1 -XX:+UseSerialGC";

  /** Quiet logs. */
  private static final Path SETTINGS = Path.of("src", "main", "spark").toAbsolutePath();

  private final OwnProcesses processes = new OwnProcesses();
  private final Path folder;
  private final int port;
  private int started;

  SparkOnLoopback(Path folder) throws IOException {
    this.folder = folder;
    try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      port = free.getLocalPort();
    }
  }

  OwnProcesses processes() {
    return processes;
  }

  String master() {
    return "spark://" + LOCALHOST + ":" + port;
  }

  boolean masterListens() {
    try (Socket socket = new Socket()) {
      socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 1000);
      return true;
    } catch (IOException nobody) {
      return false;
    }
  }

  void startMaster() throws IOException, InterruptedException {
    daemon(
        LOCALHOST,
        "master",
        "org.apache.spark.deploy.master.Master",
        "--host",
        LOCALHOST,
        "--port",
        String.valueOf(port),
        "--webui-port",
        "0");
    await("the master listens", this::masterListens);
  }

  /**
   * Starts a worker with one core.
   *
   * @param address one of 127.0.0.0/8: Spark tells machines apart by it
   */
  Process startWorker(String address) throws IOException {
    return daemon(
        address,
        "worker",
        "org.apache.spark.deploy.worker.Worker",
        "--host",
        address,
        "--port",
        "0",
        "--webui-port",
        "0",
        "--cores",
        "1",
        "--memory",
        "1g",
        "--work-dir",
        folder.resolve("work").toString(),
        master());
  }

  /** Submits the job's jar, as the guide does. */
  Process submit(String master, Object... args) throws IOException {
    List<String> all = new ArrayList<>();
    for (String setting :
        List.of(
            "spark.ui.enabled=false",
            "spark.driver.host=" + LOCALHOST,
            "spark.driver.bindAddress=" + LOCALHOST,
            "spark.executor.memory=512m",
            "spark.executor.extraJavaOptions=" + SHORT_LIVED)) {
      all.addAll(List.of("--conf", setting));
    }
    all.addAll(List.of("--master", master));
    all.addAll(List.of("--class", SweepJob.class.getName()));
    all.add(property("ringstate.jar"));
    for (Object arg : args) {
      all.add(arg.toString());
    }
    all.add(0, Path.of("spark-submit").toAbsolutePath().toString());
    return start(LOCALHOST, "driver", all, "-Xmx512m " + SHORT_LIVED);
  }

  private static String property(String name) {
    return requireNonNull(System.getProperty(name), name);
  }

  /** A master or a worker, as Spark's own scripts start them. */
  private Process daemon(String address, String name, String mainClass, String... args)
      throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of(JavaModuleOptions.defaultModuleOptions().trim().split(" +", -1)));
    command.addAll(List.of(SHORT_LIVED.split(" ", -1)));
    command.addAll(List.of("-Xmx256m", "-Dspark.master.rest.enabled=false"));
    command.addAll(List.of("-cp", SETTINGS + File.pathSeparator + home().resolve("jars") + "/*"));
    command.add(mainClass);
    command.addAll(List.of(args));
    return start(address, name, command, "");
  }

  private static Path home() {
    return Path.of(property("spark.home"));
  }

  private Process start(String address, String name, List<String> command, String submitOptions)
      throws IOException {
    ProcessBuilder builder = new ProcessBuilder(command);
    Map<String, String> environment = builder.environment();
    environment.put("JAVA_HOME", System.getProperty("java.home"));
    environment.put("SPARK_HOME", home().toString());
    environment.put("SPARK_SCALA_VERSION", "2.13");
    environment.put("SPARK_CONF_DIR", SETTINGS.toString());
    environment.put("SPARK_SUBMIT_OPTS", submitOptions);
    environment.put("SPARK_LOCAL_IP", address);
    environment.put("SPARK_LOCAL_HOSTNAME", address);
    environment.put("SPARK_LOCAL_DIRS", folder.resolve("local").toString());
    Path log = folder.resolve(started++ + "-" + name + ".log");
    Process process = builder.redirectErrorStream(true).redirectOutput(log.toFile()).start();
    processes.add(process);
    return process;
  }

  /** What all processes said, for a test that fails. */
  String logs() throws IOException {
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < started; i++) {
      for (String name : List.of("master", "worker", "driver")) {
        Path log = folder.resolve(i + "-" + name + ".log");
        if (Files.exists(log)) {
          all.append(log.getFileName()).append('\n').append(Files.readString(log)).append('\n');
        }
      }
    }
    return all.toString();
  }

  void awaitEnd(Process process) throws IOException, InterruptedException {
    assertTrue(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS), this::said);
    assertTrue(process.exitValue() == 0, this::said);
  }

  void await(String what, BooleanSupplier condition) throws InterruptedException {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
    while (!condition.getAsBoolean()) {
      assertTrue(System.nanoTime() < end, () -> "not so in time: " + what + "\n" + said());
      TimeUnit.MILLISECONDS.sleep(5);
    }
  }

  private String said() {
    try {
      return logs();
    } catch (IOException unread) {
      return unread.toString();
    }
  }

  @Override
  public void close() {
    processes.close();
  }
}
