package io.github.ringstate.files.extension;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.study.sweep.SweepExtension;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import javax.tools.ToolProvider;

/** A jar that a test compiles, as a user would. */
public final class BuiltJar {

  /** What every source of a test begins with. */
  private static final String IMPORTS =
      """
      import io.github.ringstate.encounter.*;
      import io.github.ringstate.inflow.*;
      import io.github.ringstate.pilot.*;
      import io.github.ringstate.quantity.*;
      import io.github.ringstate.study.sweep.*;
      import java.util.*;
      import org.hipparchus.distribution.continuous.*;
      """;

  private BuiltJar() {}

  /**
   * Compiles one class and packs it.
   *
   * @param folder where to
   * @param name the simple name of the class, and of the jar
   * @param body the class without package and imports
   * @return the jar, whose service file names that class
   */
  public static Path of(Path folder, String name, String body) throws IOException {
    return of(folder, name, body, name);
  }

  /** The same with a service file that names whatever class. */
  static Path of(Path folder, String name, String body, String named) throws IOException {
    Path source = folder.resolve(name + ".java");
    Files.writeString(source, IMPORTS + body);
    Path classes = Files.createDirectories(folder.resolve(name + "-classes"));
    int status =
        ToolProvider.getSystemJavaCompiler()
            .run(
                null,
                OutputStream.nullOutputStream(),
                null,
                "-proc:none",
                "-d",
                classes.toString(),
                "-cp",
                System.getProperty("java.class.path"),
                source.toString());
    assertTrue(status == 0, "the class of the test does not compile");
    Path jar = folder.resolve(name + ".jar");
    try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar));
        Stream<Path> files = Files.list(classes)) {
      for (Path file : files.sorted().toList()) {
        put(out, file.getFileName().toString(), Files.readAllBytes(file));
      }
      if (!named.isEmpty()) {
        put(out, "META-INF/services/" + SweepExtension.class.getName(), named.getBytes(UTF_8));
      }
    }
    return jar;
  }

  private static void put(JarOutputStream out, String name, byte[] bytes) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTime(0);
    out.putNextEntry(entry);
    out.write(bytes);
    out.closeEntry();
  }

  /** Loads jars. */
  static Extensions load(Path... jars) {
    return Extensions.of(
        List.of(jars).stream().map(Path::toString).map(ExtensionJar::read).toList());
  }
}
