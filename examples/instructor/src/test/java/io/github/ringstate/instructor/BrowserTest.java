package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.text.NotAWayOut;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Keys;

/**
 * Pages in a browser without a window, opened from disk. Continuous integration installs the
 * browser; elsewhere the tests are skipped without one, which is said.
 */
class BrowserTest {

  private static final String DOM = "document.documentElement.outerHTML";

  @TempDir static Path folder = Path.of("");

  @BeforeAll
  static void thereIsABrowser() {
    Chromium.isThere();
  }

  private static Chromium open(String command) throws IOException, InterruptedException {
    Path file = Files.createTempFile(folder, "driven", ".html");
    Files.writeString(file, Documents.text(command));
    Chromium browser = new Chromium();
    browser.open(file.toUri());
    return browser;
  }

  private static String set(String slider, String value) {
    return "(function () { var s = document.getElementById('"
        + slider
        + "'); s.value = '"
        + value
        + "'; s.dispatchEvent(new Event('input')); })()";
  }

  private static String found(String dom, String pattern) {
    Matcher matcher = Pattern.compile(pattern).matcher(dom);
    assertTrue(matcher.find(), pattern);
    return matcher.group(1);
  }

  @Test
  void theSlidersMoveWhatTheyShould() throws IOException, InterruptedException {
    String rest = "id=\"delay-out\"[^>]*>([^<]*)<";
    String line = "<line x1=\"([0-9.]+)\"[^>]*id=\"now-line\"";
    String loss = "arrested, ([0-9]+) ft lost</td>";
    try (Chromium page = open("fly --format html")) {
      String first = page.ask(DOM);
      page.ask(set("time", "5"));
      String later = page.ask(DOM);
      page.ask(set("delay", "8"));
      String slower = page.ask(DOM);
      assertEquals(List.of(), page.complaints());
      assertEquals("1.0 s", found(first, rest));
      assertEquals("4.0 s", found(slower, rest));
      // three seconds of the 27 that the axis spans, which is as wide as the window lets it be
      double axis =
          Double.parseDouble(found(first, "id=\"strips\"[^>]*viewBox=\"0 0 ([0-9]+) ")) - 170;
      double moved =
          Double.parseDouble(found(later, line)) - Double.parseDouble(found(first, line));
      assertEquals(3 * axis / 27, moved, 0.1);
      // a longer delay loses more, and no less than that
      int little = Integer.parseInt(found(first, loss));
      int much = Integer.parseInt(found(slower, loss));
      assertTrue(much > little, much + " and " + little);
      assertNotEquals(first, later);
    }
  }

  @Test
  void theLossOnThePageIsThatOfTheTable() throws IOException, InterruptedException {
    String loss;
    try (Chromium page = open("fly --recovery forward --delay 2 --format html")) {
      loss = found(page.ask(DOM), "forward</th>.*?arrested, ([0-9]+) ft lost");
    }
    String csv = Run.line("loss --recovery forward --delays 2 --format csv").out();
    double table = Double.parseDouble(found(csv, "arrested,([0-9.]+)"));
    assertEquals(table, Double.parseDouble(loss), 0.55);
  }

  private static final String FOCUSED = "document.activeElement.id || document.activeElement.value";

  @Test
  void everyControlOfTheClassroomPageIsReachedByTheKeyboardAndSeenToBe()
      throws IOException, InterruptedException {
    try (Chromium page = open("fly --format html")) {
      List<String> reached = new ArrayList<>();
      for (int i = 0; i < 7; i++) {
        page.press(Keys.TAB);
        reached.add(page.ask(FOCUSED));
        // what has the focus is outlined (WCAG 2.1, 2.4.7)
        assertEquals("solid", page.ask("getComputedStyle(document.activeElement).outlineStyle"));
      }
      assertEquals(
          List.of("forward", "lateral", "autorotation", "none", "others", "delay", "time"),
          reached);
      assertEquals(List.of(), page.complaints());
    }
  }

  @Test
  void powerAloneIsNamedOnThePageForWhatItIsNotAndThePrintIsStillOneSheet()
      throws IOException, InterruptedException {
    try (Chromium page = open("fly --recovery collective --delay 2 --format html");
        PDDocument paper = Loader.loadPDF(page.printed())) {
      String named = "collective (not a way out)";
      assertTrue(page.ask("document.getElementById('said').textContent").contains(named));
      assertTrue(page.ask("document.getElementById('side').textContent").contains(named));
      assertTrue(page.ask("document.getElementById('readout').textContent").contains(named));
      assertTrue(page.ask("document.querySelector('.note').textContent").equals(NotAWayOut.TEXT));
      assertEquals(1, paper.getNumberOfPages());
      assertEquals(List.of(), page.complaints());
    }
  }

  private static void tabTo(Chromium page, String control)
      throws IOException, InterruptedException {
    for (int i = 0; i < 10 && !page.ask(FOCUSED).equals(control); i++) {
      page.press(Keys.TAB);
    }
    assertEquals(control, page.ask(FOCUSED));
  }

  private static double loss(Chromium page) throws IOException, InterruptedException {
    return Double.parseDouble(
        found(page.ask("document.getElementById('said').textContent"), "arrested, ([0-9]+) ft"));
  }

  @Test
  void arrowsHomeAndEndMoveTheSlidersAndTheDrawingsWithThem()
      throws IOException, InterruptedException {
    String rest = "document.getElementById('delay-out').textContent";
    String drawn =
        "Array.from(document.querySelectorAll('#side polyline[stroke-width=\"2.4\"]'))"
            + ".map(function (l) { return l.getAttribute('data-delay'); }).join(' ')";
    String line = "document.getElementById('now-line').getAttribute('x1')";
    String wide = "String(document.getElementById('strips').viewBox.baseVal.width)";
    try (Chromium page = open("fly --format html")) {
      tabTo(page, "delay");
      double before = loss(page);
      page.press(Keys.ARROW_RIGHT);
      assertEquals("1.5 s", page.ask(rest));
      assertEquals("1.5 1.5", page.ask(drawn));
      assertTrue(loss(page) > before, "a longer delay loses no more");
      page.press(Keys.ARROW_LEFT);
      assertEquals("1.0 s", page.ask(rest));
      assertEquals(before, loss(page));
      page.press(Keys.END);
      assertEquals("6.0 s", page.ask(rest));
      page.press(Keys.HOME);
      assertEquals("0.0 s", page.ask(rest));
      assertEquals("0 0", page.ask(drawn));

      tabTo(page, "time");
      double axis = Double.parseDouble(page.ask(wide)) - 170;
      double now = Double.parseDouble(page.ask(line));
      page.press(Keys.ARROW_RIGHT);
      // one step of 0.2 s of the 27 s that the axis spans
      assertEquals(now + 0.2 * axis / 27, Double.parseDouble(page.ask(line)), 0.05);
      page.press(Keys.HOME);
      assertEquals(70, Double.parseDouble(page.ask(line)), 0.05);
      page.press(Keys.END);
      assertEquals(70 + axis, Double.parseDouble(page.ask(line)), 0.05);
      assertEquals(List.of(), page.complaints());
    }
  }

  @Test
  void theRingOnALineStandsAtTheTimeChosenAndTheDiamondAtTheDelay()
      throws IOException, InterruptedException {
    String rings =
        "String(Array.from(document.querySelectorAll('#strips circle.now')).map(function (c) {"
            + " return Math.abs(c.getAttribute('cx')"
            + " - document.getElementById('now-line').getAttribute('x1')); })"
            + ".reduce(function (a, b) { return Math.max(a, b); }))";
    String diamond =
        "document.querySelector('#strips path[fill=\"#111\"]').getAttribute('d')"
            + ".replace(/^M([0-9.]+) .*/, '$1')";
    String wide = "String(document.getElementById('strips').viewBox.baseVal.width)";
    // samples are whole steps since the start of the flight, hence never at the instants asked for
    try (Chromium page = open("fly --format html")) {
      double axis = Double.parseDouble(page.ask(wide)) - 170;
      assertEquals(0, Double.parseDouble(page.ask(rings)), 0.05);
      // four of the 27 s that begin 3 s before onset; the delay is given in hundredths
      assertEquals(70 + 4 * axis / 27, Double.parseDouble(page.ask(diamond)), 0.2);
    }
  }

  @Test
  void aFlightIntoTheGroundIsToldAsSuch() throws IOException, InterruptedException {
    String flown = " --height-ft 100 --recovery autorotation";
    String impact = found(Run.line("loss --delays 2" + flown).out(), "GROUND ([0-9]+)");
    try (Chromium page = open("fly --delay 2 --format html" + flown)) {
      String said = page.ask("document.getElementById('said').textContent");
      double told =
          Double.parseDouble(found(said, "autorotation reaches the ground at ([0-9]+) ft/min"));
      // the table is rounded to 10 ft/min, and flown fast
      assertEquals(Double.parseDouble(impact), told, 10);
      assertEquals(List.of(), page.complaints());
    }
  }

  @Test
  void aPageWithoutRingStateHasNothingToMoveAndDrawsNothing()
      throws IOException, InterruptedException {
    try (Chromium page = open("fly --entry settling --wind-kt 40 --format html")) {
      assertEquals(
          "0", page.ask("document.querySelectorAll('input, svg, script:not([type])').length"));
      String text = page.ask("document.body.textContent.replace(/\\s+/g, ' ')");
      assertTrue(text.contains("This entry does not lead into the ring state"), text);
      assertTrue(text.contains(Caution.TEXT), text);
      assertEquals(List.of(), page.complaints());
    }
  }

  @Test
  void inANarrowWindowNoPageIsWiderThanTheWindowAndLettersKeepTheirSize()
      throws IOException, InterruptedException {
    for (String command :
        List.of(
            "fly --format html",
            "loss --pilots 8 --mass-kg 520,600 --format html",
            "loss --pilots 8 --format html",
            "floor --pilots 8 --height-ft 300 --state primed --format html",
            "card --pilots 8 --state primed --format html",
            "lesson --pilots 8 --state primed --format html",
            "runs --wind-from-deg 240 --wind-kt 12 --pilots 8 --format html",
            "boundary --format html")) {
      try (Chromium page = open(command)) {
        // a telephone, and on both sides of what the sheets of paper measure across
        for (int width : new int[] {390, 805, 1000, 1070, 1145}) {
          page.sized(width, 800);
          assertEquals(
              "0",
              page.ask(
                  "document.documentElement.scrollWidth - document.documentElement.clientWidth"),
              command + " at " + width);
        }
        assertEquals(List.of(), page.complaints());
      }
    }
    try (Chromium page = open("fly --format html")) {
      page.sized(390, 800);
      String scale =
          "String(document.getElementById('side').clientWidth"
              + " / document.getElementById('side').viewBox.baseVal.width)";
      // letters are drawn 14 units high; below 0.8 they would be smaller than 11 pixels
      assertTrue(Double.parseDouble(page.ask(scale)) > 0.8, page.ask(scale));
    }
  }

  /** Pairs of texts of a drawing whose boxes overlap by more than the white around letters. */
  private static String collisions(String drawing) {
    return "(function () { var hit = []; var all = Array.from(document.querySelectorAll('#"
        + drawing
        + " text')); all.forEach(function (one, i) { all.slice(0, i).forEach(function (other) {"
        + " var a = one.getBoundingClientRect(); var b = other.getBoundingClientRect();"
        + " if (a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom - 5"
        + " && b.top < a.bottom - 5) { hit.push(one.textContent + '/' + other.textContent); }"
        + " }); }); return hit.join(', '); })()";
  }

  @Test
  void theClassroomFitsAProjectorWithoutScrollingAndNoLabelsCollide()
      throws IOException, InterruptedException {
    try (Chromium page = open("fly --height-ft 500 --terrain-ft 0:0,300:80 --format html")) {
      page.sized(1280, 720);
      assertEquals("true", page.ask("document.documentElement.scrollHeight <= window.innerHeight"));
      assertEquals("", page.ask(collisions("side")));
      assertEquals("", page.ask(collisions("strips")));
      page.sized(390, 800);
      assertEquals("", page.ask(collisions("side")));
      assertEquals("", page.ask(collisions("strips")));
      // every recovery at once, which is where names and numbers have the least room
      page.ask(
          "String(Array.from(document.getElementsByName('recovery')).forEach("
              + "function (t) { t.checked = true; }))");
      for (int width : new int[] {360, 1280}) {
        page.sized(width, 720);
        for (int delay = 0; delay <= 10; delay += 2) {
          page.ask(
              "String(document.getElementById('delay').value = "
                  + delay
                  + ", document.getElementById('delay').dispatchEvent(new Event('input')))");
          assertEquals("", page.ask(collisions("side")), width + ", delay " + delay);
          assertEquals("", page.ask(collisions("strips")), width + ", delay " + delay);
          assertTrue(
              width < 1280
                  || page.ask("document.documentElement.scrollHeight <= window.innerHeight")
                      .equals("true"),
              "higher than the window, delay " + delay);
        }
      }
    }
  }

  @Test
  void theSpaceBarTicksARecoveryAndItIsDrawnAndToldAndPrinted()
      throws IOException, InterruptedException {
    try (Chromium page = open("fly --format html")) {
      tabTo(page, "autorotation");
      page.press(Keys.SPACE);
      assertEquals("true", page.ask("document.activeElement.checked"));
      assertEquals(
          "forward lateral autorotation",
          page.ask(
              "Array.from(document.querySelectorAll('#readout tbody th'))"
                  + ".map(function (t) { return t.textContent; }).join(' ')"));
      try (PDDocument paper = Loader.loadPDF(page.printed())) {
        String text = new PDFTextStripper().getText(paper).replaceAll("\\s+", " ");
        assertEquals(1, paper.getNumberOfPages());
        assertTrue(text.contains("autorotation -"), text);
        assertTrue(text.contains("distance from the point of onset, ft"), text);
        assertTrue(text.contains("time since onset, s"), text);
        assertTrue(text.contains(Caution.TEXT), text);
      }
      assertEquals(List.of(), page.complaints());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "loss --pilots 8 --delays 0s;2s --format html, 595, 842",
    "runs --wind-from-deg 240 --wind-kt 12 --pilots 8 --recovery lateral --format html, 842, 595",
    "boundary --recovery lateral --format html, 595, 842"
  })
  void aPagePrintedByABrowserIsOneSheetOfPaper(String command, double width, double height)
      throws IOException, InterruptedException {
    try (Chromium page = open(command.replace(';', ','));
        PDDocument paper = Loader.loadPDF(page.printed())) {
      // of a loss table the words are on the back
      assertEquals(command.startsWith("loss") ? 2 : 1, paper.getNumberOfPages());
      assertEquals(width, paper.getPage(0).getMediaBox().getWidth(), 1);
      assertEquals(height, paper.getPage(0).getMediaBox().getHeight(), 1);
      assertEquals(List.of(), page.complaints());
    }
  }
}
