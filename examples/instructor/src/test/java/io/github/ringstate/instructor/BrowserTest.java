package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Pages in a browser without a window, opened from disk. Continuous integration installs the
 * browser; elsewhere the tests are skipped without one.
 */
class BrowserTest {

  private static final List<Path> BROWSERS =
      List.of(Path.of("/usr/bin/chromium"), Path.of("/usr/bin/chromium-browser"));

  @TempDir static Path folder = Path.of("");

  private record Shown(String dom, String complaints) {}

  @BeforeAll
  static void thereIsABrowser() {
    assumeTrue(BROWSERS.stream().anyMatch(Files::isExecutable));
  }

  /** The page as it stands once a script of the test has run in it. */
  private static Shown shown(String page, String script) throws IOException, InterruptedException {
    Path file = Files.createTempFile(folder, "page", ".html");
    Files.writeString(file, page.replace("</body>", "<script>" + script + "</script></body>"));
    Path err = Files.createTempFile(folder, "err", ".txt");
    Path out = Files.createTempFile(folder, "dom", ".html");
    Process browser =
        new ProcessBuilder(
                BROWSERS.stream().filter(Files::isExecutable).findFirst().orElseThrow().toString(),
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--user-data-dir=" + Files.createTempDirectory(folder, "profile"),
                "--enable-logging=stderr",
                "--dump-dom",
                file.toUri().toString())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    assertTrue(browser.waitFor(120, TimeUnit.SECONDS), "the browser does not end");
    String complaints =
        String.join(
            "\n",
            Files.readString(err, UTF_8).lines().filter(line -> line.contains("CONSOLE")).toList());
    return new Shown(Files.readString(out, UTF_8), complaints);
  }

  private static String set(String slider, String value) {
    return "var s=document.getElementById('"
        + slider
        + "');s.value='"
        + value
        + "';s.dispatchEvent(new Event('input'));";
  }

  private static String found(String dom, String pattern) {
    Matcher matcher = Pattern.compile(pattern).matcher(dom);
    assertTrue(matcher.find(), pattern);
    return matcher.group(1);
  }

  @Test
  void theSlidersMoveWhatTheyShould() throws IOException, InterruptedException {
    String page = new String(Documents.of("fly", "--delay", "1", "--format", "html"), UTF_8);
    String rest = "id=\"delay-out\"[^>]*>([^<]*)<";
    String line = "<line x1=\"([0-9.]+)\"[^>]*id=\"now-line\"";
    String loss = "arrested, ([0-9]+) ft lost</td>";
    Shown first = shown(page, "");
    Shown later = shown(page, set("time", "5"));
    Shown slower = shown(page, set("delay", "8"));
    assertEquals("", first.complaints() + later.complaints() + slower.complaints());
    assertEquals("1.0 s", found(first.dom(), rest));
    assertEquals("4.0 s", found(slower.dom(), rest));
    // three seconds of the 27 that the axis of 790 units spans
    double moved =
        Double.parseDouble(found(later.dom(), line)) - Double.parseDouble(found(first.dom(), line));
    assertEquals(3 * 790.0 / 27, moved, 0.1);
    // a longer delay loses more, and no less than that
    int little = Integer.parseInt(found(first.dom(), loss));
    int much = Integer.parseInt(found(slower.dom(), loss));
    assertTrue(much > little, much + " and " + little);
    assertNotEquals(first.dom(), later.dom());
  }

  @Test
  void theLossOnThePageIsThatOfTheTable() throws IOException, InterruptedException {
    String page =
        new String(
            Documents.of("fly", "--recovery", "forward", "--delay", "2", "--format", "html"),
            UTF_8);
    String loss = found(shown(page, "").dom(), "forward</th>.*?arrested, ([0-9]+) ft lost");
    String csv =
        Run.of("loss", "--recoveries", "forward", "--delays", "2", "--format", "csv").out();
    double table = Double.parseDouble(found(csv, "arrested,([0-9.]+)"));
    assertEquals(table, Double.parseDouble(loss), 0.55);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "loss --pilots 20 --delays 0,2 --format html",
        "runs --pilots 20 --technique lateral --format html",
        "boundary --fly lateral --format html"
      })
  void noPageComplains(String command) throws IOException, InterruptedException {
    String page = new String(Documents.of(command.split(" ", -1)), UTF_8);
    assertEquals("", shown(page, "").complaints());
  }
}
