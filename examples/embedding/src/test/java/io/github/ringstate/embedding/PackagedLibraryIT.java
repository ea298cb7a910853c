package io.github.ringstate.embedding;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.PrintStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A project outside of this one: it has the packaged jar of the library and what its POM says that
 * it depends on, and nothing else.
 */
class PackagedLibraryIT {

  private static final Path JAR = Path.of(System.getProperty("ringstate.core")).normalize();
  private static final Path SOURCES = Path.of("src", "main", "java");
  private static final Pattern DEPENDENCY =
      Pattern.compile("<dependency>\\s*<groupId>([^<]+)</groupId>\\s*<artifactId>([^<]+)<");

  /** The POM that is published: the one in the jar, without the profile for our own checks. */
  private static String pom() throws Exception {
    try (JarFile jar = new JarFile(JAR.toFile())) {
      String text =
          new String(
              jar.getInputStream(
                      jar.getEntry("META-INF/maven/io.github.ringstate/ringstate-core/pom.xml"))
                  .readAllBytes(),
              UTF_8);
      return text.substring(0, text.indexOf("<profiles>"));
    }
  }

  /** The jar, those that the POM names, and those of the same makers that these need in turn. */
  private static List<Path> classPath() throws Exception {
    Set<String> wanted = new TreeSet<>();
    Matcher matcher = DEPENDENCY.matcher(pom());
    while (matcher.find()) {
      assertTrue(
          Set.of("org.hipparchus", "org.ejml", "org.jspecify").contains(matcher.group(1)),
          matcher.group());
      wanted.add(matcher.group(2));
    }
    wanted.add("hipparchus-geometry");
    wanted.add("hipparchus-fitting");
    String tests =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    List<Path> path = new ArrayList<>(List.of(JAR));
    for (String entry : tests.split(File.pathSeparator, -1)) {
      String name = Path.of(entry).getFileName().toString();
      if (wanted.stream().anyMatch(artifact -> name.matches(artifact + "-\\d.*\\.jar"))) {
        path.add(Path.of(entry));
      }
    }
    assertTrue(path.size() >= 7, path.toString());
    return path;
  }

  @Test
  void everyProgramOfTheGuideIsCompiledAgainstTheJarAndRuns(@TempDir Path out) throws Exception {
    List<String> arguments =
        new ArrayList<>(
            List.of(
                "-proc:none",
                "--release",
                "17",
                "-d",
                out.toString(),
                "-cp",
                classPath().stream()
                    .map(Path::toString)
                    .collect(Collectors.joining(File.pathSeparator))));
    List<String> programs = new ArrayList<>();
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path file : files.filter(each -> each.toString().endsWith(".java")).toList()) {
        arguments.add(file.toString());
        if (Files.readString(file).contains("static void main(")) {
          programs.add(file.getFileName().toString().replace(".java", ""));
        }
      }
    }
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    int code =
        ToolProvider.getSystemJavaCompiler()
            .run(null, said, said, arguments.toArray(String[]::new));
    assertEquals(0, code, said.toString(UTF_8));
    assertTrue(programs.size() >= 9, programs.toString());
    List<URL> urls = new ArrayList<>(List.of(out.toUri().toURL()));
    for (Path jar : classPath()) {
      urls.add(jar.toUri().toURL());
    }
    PrintStream before = System.out;
    try (URLClassLoader outside =
        new URLClassLoader(urls.toArray(URL[]::new), ClassLoader.getPlatformClassLoader())) {
      for (String program : programs) {
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        System.setOut(new PrintStream(printed, true, UTF_8));
        outside
            .loadClass("io.github.ringstate.embedding." + program)
            .getMethod("main", String[].class)
            .invoke(null, (Object) new String[0]);
        System.setOut(before);
        assertFalse(printed.toString(UTF_8).isBlank(), program + " prints something");
      }
    } finally {
      System.setOut(before);
    }
  }

  @Test
  void theLineForJshellAndTheDependencyOfTheGuideAreTrue() throws Exception {
    String guide = Files.readString(Path.of("GUIDE.md"));
    assertTrue(
        guide.contains("<version>" + System.getProperty("ringstate.version") + "</version>"));
    assertTrue(pom().contains("<artifactId>ringstate-core</artifactId>"));
    Matcher line = Pattern.compile("```jshell\n(.*?)\n```", Pattern.DOTALL).matcher(guide);
    assertTrue(line.find());
    try (JShell shell = JShell.create()) {
      for (Path jar : classPath()) {
        shell.addToClasspath(jar.toString());
      }
      SnippetEvent event = shell.eval(line.group(1)).get(0);
      assertEquals(Snippet.Status.VALID, event.status(), event.toString());
      assertTrue(event.value().startsWith("OptionalDouble["), event.value());
    }
  }
}
