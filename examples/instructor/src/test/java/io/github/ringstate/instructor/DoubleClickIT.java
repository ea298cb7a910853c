package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The jar opened as a desktop opens it: no arguments, no terminal on any stream. */
@EnabledOnOs(OS.LINUX)
class DoubleClickIT {

  /** A screen that is named and does not answer, as after a connection that broke. */
  private static final String SCREEN = ":9876";

  @TempDir static Path folder = Path.of("");

  private final File said = folder.resolve("said.txt").toFile();

  private Process started(Map<String, String> screen) throws IOException {
    ProcessBuilder jar = JarRun.process(List.of());
    jar.environment().keySet().removeAll(List.of("DISPLAY", "WAYLAND_DISPLAY"));
    jar.environment().putAll(screen);
    jar.environment().merge("PATH", folder.toString(), (path, first) -> first + ":" + path);
    return jar.redirectInput(new File("/dev/null"))
        .redirectOutput(said)
        .redirectError(ProcessBuilder.Redirect.appendTo(said))
        .start();
  }

  /** A browser that writes down what it is to show (freedesktop.org names the command). */
  private static Path browser() throws IOException {
    Path shown = folder.resolve("shown.txt");
    Path command = folder.resolve("xdg-open");
    Files.writeString(command, "#!/bin/sh\necho \"$1\" > '" + shown + "'\n");
    assertTrue(command.toFile().setExecutable(true));
    return shown;
  }

  private static HttpRequest post(URI page, String action, String body) {
    return HttpRequest.newBuilder(page.resolve(action))
        .header("Origin", "http://127.0.0.1:" + page.getPort())
        .header("Content-Type", OpenDesk.TYPE)
        .POST(HttpRequest.BodyPublishers.ofString(body))
        .build();
  }

  @Test
  void theDeskOpensInTheBrowserPrintsASheetAndEnds() throws IOException, InterruptedException {
    Path shown = browser();
    Process jar = started(Map.of("DISPLAY", SCREEN));
    try {
      for (int i = 0; i < 600 && !(Files.exists(shown) && Files.size(shown) > 0); i++) {
        assertTrue(jar.isAlive(), this::said);
        Thread.sleep(50);
      }
      URI page = URI.create(Files.readString(shown).strip());
      HttpClient http = HttpClient.newHttpClient();
      assertEquals(
          200,
          http.send(HttpRequest.newBuilder(page).build(), BodyHandlers.discarding()).statusCode());
      // a sheet has drawings, which must not need the screen
      String sheet =
          "{\"sheet\":\"loss\",\"format\":\"pdf\",\"units\":\"aviation\",\"paper\":\"a4\","
              + "\"plan\":{\"encounter\":{\"pilots\":\"64\"}}}";
      String printed = http.send(post(page, "sheet", sheet), BodyHandlers.ofString()).body();
      assertTrue(printed.startsWith("%PDF-"), printed);
      http.send(post(page, "end", "{}"), BodyHandlers.discarding());
      assertTrue(jar.waitFor(20, TimeUnit.SECONDS), "it goes on after its end");
      assertEquals(0, jar.exitValue(), this::said);
    } finally {
      jar.destroyForcibly();
    }
  }

  @Test
  void withoutAScreenItSaysHowItIsUsed() throws IOException, InterruptedException {
    Process jar = started(Map.of());
    assertTrue(jar.waitFor(60, TimeUnit.SECONDS));
    assertEquals(0, jar.exitValue(), this::said);
    assertTrue(said().startsWith("Usage: ringstate"), this::said);
  }

  private String said() {
    try {
      return Files.readString(said.toPath());
    } catch (IOException none) {
      return none.toString();
    }
  }
}
