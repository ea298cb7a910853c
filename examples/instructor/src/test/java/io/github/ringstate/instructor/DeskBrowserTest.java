package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.files.text.Caution;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.WindowType;

/** The briefing desk in a browser. */
class DeskBrowserTest extends DeskInBrowser {

  @TempDir static Path folder = Path.of("");

  @BeforeEach
  void anEmptyDesk() throws InterruptedException {
    if (!desk.address().toString().equals(browser.driver().getCurrentUrl())) {
      browser.open(desk.address());
      browser.await(FRESH);
    }
    browser.run("document.getElementById('clear').click()");
    browser.await(FRESH);
  }

  /** The rows of the table of losses on the page. */
  private static List<String> losses() {
    return rows("[data-panel=loss]");
  }

  private static void assertPrinted(List<String> rows, String command) {
    List<String> printed = Run.line(command).rows();
    assertEquals(6, rows.size());
    assertTrue(printed.containsAll(rows), () -> rows + " is not in " + printed);
  }

  private static void choose(String id, String value) {
    browser.run(
        "const s = document.getElementById('"
            + id
            + "'); s.value = '"
            + value
            + "'; s.dispatchEvent(new Event('input', { bubbles: true }));");
  }

  private static String text(String css) {
    return browser.ask("document.querySelector('" + css + "').textContent");
  }

  /** What the page would hand to the browser to keep, base 64; the link is caught on its way. */
  private static byte[] handed(String click) throws InterruptedException {
    browser.run(
        "window.handed = '';"
            + "URL.createObjectURL = (blob) => { const r = new FileReader();"
            + " r.onload = () => { window.handed = window.handed || r.result; };"
            + " r.readAsDataURL(blob); return '#caught'; };");
    browser.run("document.querySelector('" + click + "').click()");
    browser.await("window.handed !== ''");
    return Base64.getDecoder().decode(browser.ask("window.handed.split(',')[1]"));
  }

  @Test
  void fromCraftAndDayToThePrintedSheetEveryNumberIsThatOfTheCommand()
      throws InterruptedException, IOException {
    assertPrinted(losses(), "loss");
    choose("f-conditions-craft", "twin");
    browser.type("#f-conditions-pressure-altitude-ft", "6000");
    browser.type("#f-conditions-oat-c", "20");
    browser.type("#f-facts-place", "Field <script>alert(1)</script>");
    browser.await(FRESH);
    assertPrinted(losses(), "loss --craft twin --pressure-altitude-ft 6000 --oat-c 20");
    assertTrue(text("#change").matches("Most changed by .*Air temperature: .*, from .* to .*\\."));
    // the plan as a file, and the sheet that the command makes of that file
    Path plan = folder.resolve("plan.toml");
    Files.write(plan, handed("#save"));
    assertTrue(Files.readString(plan).contains("pressure_altitude_ft = 6000"));
    assertPrinted(losses(), "loss --plan " + plan);
    String page = new String(handed("[data-sheet=fly]"), UTF_8);
    assertTrue(page.contains("Field &lt;script&gt;"), "what is typed is text, on paper too");
    assertEquals(
        numbers(
            new String(Documents.of("fly", "--plan", plan.toString(), "--format", "html"), UTF_8)),
        numbers(page));
    assertEquals(List.of(), browser.complaints());
  }

  /** A page without what says where it comes from, in which the folder of the plan stands. */
  private static String numbers(String page) {
    int from = page.indexOf("<script type=\"application/json\" id=\"data\">");
    assertTrue(from > 0);
    return page.substring(from);
  }

  @Test
  void aWrongValueIsSaidAtItsFieldWithTheBoundAndTheUnit() throws InterruptedException {
    browser.type("#f-conditions-mass-kg", "9999");
    browser.await("document.querySelector('.is-wrong') !== null");
    String said = text("#w-conditions-mass-kg");
    Run command = Run.of("loss", "--mass-kg=9999");
    assertEquals(command.err().strip().replace("ringstate loss: --mass-kg", "Mass"), said);
    assertEquals("true", browser.find("#f-conditions-mass-kg").getAttribute("aria-invalid"));
    // nothing that was flown before stays in sight as if it were flown now
    browser.await("document.getElementById('progress').textContent.startsWith('Not flown')");
    assertEquals("0", browser.ask("document.getElementById('side').children.length"));
    assertEquals("true", browser.ask("document.getElementById('beside-keep').disabled"));
    // and in another unit, which the tool converts
    browser.type("#f-conditions-mass-kg", "1235 lb");
    browser.await("document.querySelector('.is-wrong') === null");
    browser.await(FRESH);
    assertPrinted(losses(), "loss --mass-kg=1235lb");
  }

  @Test
  void aReloadLosesNothingAndAnotherTabBeginsWithIt() throws InterruptedException {
    browser.type("#f-conditions-oat-c", "31");
    browser.type("#f-crew", "A. Pilot");
    browser.driver().navigate().refresh();
    browser.await(FRESH);
    assertEquals("31", browser.ask("document.getElementById('f-conditions-oat-c').value"));
    assertEquals("A. Pilot", browser.ask("document.getElementById('f-crew').value"));
    String first = browser.driver().getWindowHandle();
    browser.driver().switchTo().newWindow(WindowType.TAB);
    browser.open(desk.address());
    browser.await(FRESH);
    assertEquals("31", browser.ask("document.getElementById('f-conditions-oat-c').value"));
    browser.type("#f-conditions-oat-c", "5");
    browser.await(FRESH);
    assertPrinted(losses(), "loss --oat-c=5");
    browser.driver().close();
    browser.driver().switchTo().window(first);
    assertEquals("31", browser.ask("document.getElementById('f-conditions-oat-c').value"));
  }

  @Test
  void fromTheRecordingToTheDebriefEveryNumberIsThatOfTheCommand()
      throws InterruptedException, IOException {
    Path flight = Files.write(folder.resolve("flight.gpx"), Documents.recording("gnss-1hz.gpx"));
    String reviewed =
        "document.getElementById('recording-said').textContent.includes('is reviewed')"
            + " && !document.getElementById('review').hidden";
    browser.find("#recording-file").sendKeys(flight.toString());
    browser.await(reviewed);
    List<String> printed = Run.line("review " + flight).rows();
    List<String> shown = rows("[data-panel=review]");
    assertTrue(shown.size() > 1 && printed.containsAll(shown), () -> shown + " / " + printed);
    // a change of the plan reaches the review
    browser.type("#r-ground-ft", "1000");
    browser.type("#f-agreed-least_height_ft", "600");
    browser.await(
        "document.querySelector('[data-panel=review]').textContent.includes('not below 600 ft')");
    browser.await(reviewed);
    Path plan = folder.resolve("debrief.toml");
    Files.write(plan, handed("#save"));
    String command = "review " + flight + " --ground-ft=1000 --plan=" + plan;
    assertTrue(Run.line(command).rows().containsAll(rows("[data-panel=review]")));
    String page = new String(handed("[data-debrief=html]"), UTF_8);
    assertTrue(page.contains("<title>") && page.contains(Caution.TEXT));
    assertTrue(new String(handed("[data-debrief=pdf]"), UTF_8).startsWith("%PDF-"));
    browser.run("document.getElementById('recording-away').click()");
    browser.await("document.getElementById('review').hidden");
    assertEquals(List.of(), browser.complaints());
  }

  /** The rows of the tables in a part of the page. */
  private static List<String> rows(String css) {
    return List.of(
        browser
            .ask(
                "Array.from(document.querySelectorAll('"
                    + css
                    + " tbody tr'), (row) => Array.from(row.cells,"
                    + " (cell) => cell.textContent).join(' ').trim()).join('\\n')")
            .split("\n"));
  }

  @Test
  void aCraftOfOnesOwnComesFromAFileAndAHugeOneIsRefused()
      throws IOException, InterruptedException {
    Path huge = folder.resolve("huge.toml");
    try (var out =
        Files.newByteChannel(huge, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      out.position(50_000_000 - 1);
      out.write(ByteBuffer.wrap(new byte[1]));
    }
    browser.find("#craft-file").sendKeys(huge.toString());
    browser.await("!document.getElementById('craft-file-wrong').hidden");
    assertEquals(
        "huge.toml has 50000000 bytes; a file of at most 65536 bytes is taken.",
        text("#craft-file-wrong"));
    Path own = folder.resolve("own.toml");
    Run.line("craft utility --output " + own);
    Files.writeString(
        own, Files.readString(own).replace("\"Invented", "\"<img src=x onerror=alert(1)>"));
    browser.find("#craft-file").sendKeys(own.toString());
    browser.await("document.getElementById('f-conditions-craft').value === 'own.toml'");
    browser.await(FRESH);
    assertPrinted(losses(), "loss --craft " + own);
    assertTrue(text("#craft-words").startsWith("utility: <img src=x onerror=alert(1)>"));
    assertEquals("0", browser.ask("document.querySelectorAll('img').length"));
    assertEquals(List.of(), browser.complaints());
  }

  @Test
  void figuresKeptBesideStayAndAreNamedByTheirConditions() throws InterruptedException {
    String floors = "document.querySelector('[data-panel=floor] > .take')";
    browser.await(floors + " !== null");
    browser.run("document.getElementById('beside-keep').click()");
    choose("f-conditions-craft", "heavy");
    browser.await(FRESH);
    browser.await(
        "document.getElementById('now-what').textContent.startsWith('On the form: heavy')");
    String kept = text("#beside");
    assertTrue(kept.startsWith("Kept beside: trainer; tailwind approach; "), kept);
    assertTrue(kept.contains("Lowest height at onset from which"), kept);
    assertPrinted(rows("#beside"), "loss");
    assertPrinted(losses(), "loss --craft heavy");
    browser.run("document.getElementById('beside-drop').click()");
  }

  @Test
  void aCraftFromAManualIsMadeOnThePageWithoutAWordOfTheCommandLine() throws InterruptedException {
    browser.run(
        "document.getElementById('manual').open = true; const n = {'name': 'mine',"
            + " 'empty-mass-kg': '950', 'maximum-mass-kg': '1800', 'rotor-diameter-m': '10.4',"
            + " 'chord-m': '0.28', 'blades': '30', 'rotor-rpm': '386', 'continuous-kw': '330',"
            + " 'take-off-kw': '380', 'hover-ceiling-ft': '6000', 'hover-ceiling-mass-kg': '1800',"
            + " 'hover-ceiling-oat-c': '20', 'climb-fpm': '1500', 'climb-speed-kt': '60'};"
            + " for (const k in n) { document.getElementById('m-' + k).value = n[k]; }"
            + " document.getElementById('m-engine').value = 'turbine';");
    String make = "document.getElementById('manual-make').click()";
    browser.run(make);
    browser.await("!document.getElementById('manual-wrong').hidden");
    assertTrue(text("#w-manual-blades").startsWith("Blades "), text("#w-manual-blades"));
    assertFalse(text("#manual").contains("--"), text("#manual-wrong"));
    browser.type("#m-blades", "3");
    browser.run(make);
    browser.await("document.querySelector('#manual-said tbody') !== null");
    assertFalse(text("#manual-said").contains("--"), text("#manual-said"));
    browser.await("document.getElementById('f-conditions-craft').value === 'mine.toml'");
    browser.await(FRESH);
    assertEquals("0", browser.ask("document.querySelectorAll('.is-wrong').length"));
    browser.run("document.getElementById('manual').open = false;");
  }

  /** What a person can work (WAI-ARIA 1.2, roles of widgets). */
  private static final Set<String> WIDGETS =
      Set.of("button", "checkbox", "combobox", "link", "slider", "textbox", "DisclosureTriangle");

  /** What has to say what it is (WCAG 2.1, 1.1.1 and 1.3.1). */
  private static final Set<String> SHOWN = Set.of("image", "table", "region", "form", "navigation");

  @Test
  void everyControlHasANameForAScreenReaderAndAWrongOneSaysWhy() throws InterruptedException {
    browser.run("document.getElementById('run-planned').click()");
    browser.run("document.querySelectorAll('details').forEach((one) => { one.open = true; });");
    browser.await("document.querySelector('[data-panel=boundary] svg') !== null");
    Set<String> seen = new HashSet<>();
    for (AccessibleNode node : AccessibleNode.all(browser)) {
      seen.add(node.role());
      boolean named = WIDGETS.contains(node.role()) || SHOWN.contains(node.role());
      assertFalse(named && node.name().isBlank(), () -> "without a name: " + node);
      // WCAG 2.1, 3.3.1: the field in error is identified and the error described
      assertFalse(
          node.invalid() && node.description().isBlank(), () -> "without a reason: " + node);
    }
    assertTrue(seen.containsAll(WIDGETS) && seen.containsAll(SHOWN), seen.toString());
    assertEquals(
        List.of("f-run-wind-kt"), // a run without a wind
        List.of(
            browser
                .ask(
                    "Array.from(document.querySelectorAll('[aria-invalid]'), (one) => one.id)"
                        + ".join(',')")
                .split(",")));
    browser.run("document.getElementById('run-planned').click()");
    assertEquals("0", browser.ask("document.querySelectorAll('.is-wrong').length"));
    // headings in order (WCAG 2.1, 1.3.1): no level is left out
    assertEquals(
        "true",
        browser.ask(
            "Array.from(document.querySelectorAll('h1, h2, h3'), (one) => Number(one.tagName[1]))"
                + ".every((level, i, all) => i === 0 ? level === 1 : level <= all[i - 1] + 1)"));
  }

  @Test
  void aTelephoneAndALargePrintScrollInOneDirectionAndShowTheCaution() throws InterruptedException {
    // WCAG 2.1, 1.4.10: 320 px wide is a window of 1280 px at 400 %
    for (int width : List.of(320, 360, 640, 1280)) {
      browser.sized(width, 800);
      assertEquals(
          "true",
          browser.ask("document.documentElement.scrollWidth <= window.innerWidth"),
          width + " px");
      assertTrue(browser.find("#caution").getText().contains(Caution.TEXT));
      assertTrue(
          Double.parseDouble(
                  browser.ask("document.getElementById('caution').getBoundingClientRect().bottom"))
              <= 800.5);
    }
  }

  @Test
  void onATelephoneEachFigureOfAWideTableStandsOnALineBehindItsName() throws InterruptedException {
    browser.await("document.querySelector('[data-panel=floor] tbody') !== null");
    browser.sized(360, 800);
    String figures =
        "Array.from(document.querySelectorAll('[data-panel=floor] tbody td:not(.words)'))";
    assertEquals("true", browser.ask(figures + ".length > 10"));
    // two lines of text are 43 px high
    assertEquals("true", browser.ask(figures + ".every((one) => one.offsetHeight < 40)"));
    assertEquals(
        "true",
        browser.ask(
            figures + ".every((one) => getComputedStyle(one, '::before').content.length > 4)"));
    // a table that is laid out otherwise is still one for a screen reader (WAI-ARIA 1.2)
    assertEquals("table", browser.find("[data-panel=floor] table").getAriaRole());
    // no letter of a drawing is smaller than 8 px (common practice, no source)
    browser.await("document.querySelector('[data-panel=boundary] svg') !== null");
    String letters = "Array.from(document.querySelectorAll('.drawn text'))";
    assertEquals("true", browser.ask(letters + ".length > 20"));
    String small =
        ".filter((one) => one.ownerSVGElement.getScreenCTM().a"
            + " * parseFloat(getComputedStyle(one).fontSize) < 8)"
            + ".map((one) => one.outerHTML).join(' ')";
    assertEquals("", browser.ask(letters + small));
    browser.sized(1280, 800);
  }
}
