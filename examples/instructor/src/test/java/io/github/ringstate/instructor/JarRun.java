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
final class JarRun {

  private JarRun() {}

  /** The jar about to run in a virtual machine of its own. */
  static ProcessBuilder process(List<String> options, String... args) {
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
