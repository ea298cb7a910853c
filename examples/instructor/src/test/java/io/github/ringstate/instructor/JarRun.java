package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The jar as a user gets it, in a virtual machine of its own. */
public final class JarRun {

  /** Less work for the compiler and the collector in a run that is over before it pays. */
  public static final List<String> QUICK_START =
      List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC");

  private JarRun() {}

  /** The jar about to run in a virtual machine of its own, with a quick start. */
  static ProcessBuilder process(List<String> options, String... args) {
    List<String> all = new ArrayList<>(QUICK_START);
    all.addAll(options);
    return plain(all, args);
  }

  /** The jar about to run with these options and no others. */
  static ProcessBuilder plain(List<String> options, String... args) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(options);
    command.addAll(List.of("-jar", property("ringstate.jar")));
    command.addAll(List.of(args));
    return new ProcessBuilder(command);
  }

  /** Runs the jar and keeps what it printed. */
  static Run of(List<String> options, String... args) throws IOException, InterruptedException {
    return of(process(options, args));
  }

  /** Runs a program to its end and keeps what it printed. */
  static Run of(ProcessBuilder program) throws IOException, InterruptedException {
    File err = File.createTempFile("err", ".txt");
    Process process = program.redirectError(err).start();
    process.getOutputStream().close();
    String out = new String(process.getInputStream().readAllBytes(), UTF_8);
    int status = process.waitFor();
    String complaint = Files.readString(err.toPath());
    Files.delete(err.toPath());
    return new Run(status, out, complaint);
  }

  /** What the build says of the jar. */
  static String property(String name) {
    return requireNonNull(System.getProperty(name), name);
  }
}
