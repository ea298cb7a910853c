package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.Soak;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What goes wrong around the desk's page, for a moment in each build and for minutes in the soak.
 */
@Tag("soak")
class DeskBrowserFaultsTest extends DeskInBrowser {

  private static final String OAT = "document.getElementById('f-conditions-oat-c').value";

  @TempDir static Path folder = Path.of("");

  /** The first row of the table of losses on the page. */
  private static String losses() {
    return browser.ask(
        "Array.from(document.querySelectorAll('[data-panel=loss] tbody tr:first-child > *'),"
            + " (cell) => cell.textContent).join(' ').trim()");
  }

  private static String printed(String oat) {
    return Run.line("loss --delays=0 --oat-c=" + oat).rows().stream()
        .filter(line -> line.startsWith("0.0 "))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void quickChangesEndWithTheFiguresOfTheLast() throws InterruptedException {
    int threads = Thread.activeCount();
    int changes = Soak.isWhole() ? 10_000 : 200;
    // by hand they come a few milliseconds apart; all at once they are one change for the page
    browser.run(
        "window.moved = 0; const f = document.getElementById('f-conditions-oat-c');"
            + "const change = (i) => { f.value = i < "
            + changes
            + " ? String(i % 41 - 5) : '17';"
            + " f.dispatchEvent(new Event('input', { bubbles: true })); window.moved = i;"
            + " if (i < "
            + changes
            + ") { setTimeout(() => change(i + 1), i % 7); } }; change(1);");
    while (!browser.ask("window.moved >= " + changes).equals("true")) {
      Thread.sleep(50);
    }
    browser.await(FRESH);
    assertEquals(printed("17"), losses());
    assertEquals(List.of(), browser.complaints());
    // studies that were overtaken leave no thread behind but those that wait for the next request
    assertTrue(Thread.activeCount() <= threads + 8, Thread.activeCount() + " after " + threads);
  }

  @Test
  void twoTabsHaveAnswersOfTheirOwn() throws InterruptedException {
    String first = browser.driver().getWindowHandle();
    String name = browser.ask("sessionStorage.getItem('tab')");
    // a page that another opens begins with a copy of its session storage (WHATWG HTML, 12.2.2)
    browser.run("window.open(location.href)");
    String copy =
        browser.driver().getWindowHandles().stream()
            .filter(handle -> !handle.equals(first))
            .findFirst()
            .orElseThrow();
    browser.driver().switchTo().window(copy);
    browser.await(FRESH);
    assertFalse(browser.ask("sessionStorage.getItem('tab')").equals(name));
    int rounds = Soak.isWhole() ? 60 : 1;
    for (int i = 0; i < rounds; i++) {
      String here = String.valueOf(5 + i % 20);
      String there = String.valueOf(30 - i % 20);
      browser.driver().switchTo().window(copy);
      browser.type("#f-conditions-oat-c", here);
      browser.driver().switchTo().window(first);
      browser.type("#f-conditions-oat-c", there);
      browser.await(FRESH);
      assertEquals(printed(there), losses());
      browser.driver().switchTo().window(copy);
      browser.await(FRESH);
      assertEquals(printed(here), losses());
      assertEquals(here, browser.ask(OAT));
    }
    browser.driver().close();
    browser.driver().switchTo().window(first);
    browser.driver().navigate().refresh();
    browser.await(FRESH);
    assertEquals(name, browser.ask("sessionStorage.getItem('tab')"));
  }

  @Test
  void aLargeRecordingIsReviewedAndOneThatIsTooLargeIsNotSent()
      throws IOException, InterruptedException {
    Path file =
        Files.write(folder.resolve("large.gpx"), OpenDesk.large((Soak.isWhole() ? 50 : 1) << 20));
    int times = Soak.isWhole() ? 10 : 1;
    for (int i = 0; i < times; i++) {
      browser.find("#recording-file").sendKeys(file.toString());
      browser.await("!document.getElementById('review').hidden");
      browser.run("document.getElementById('recording-away').click()");
    }
    Path larger = folder.resolve("larger.gpx");
    try (var sparse = new RandomAccessFile(larger.toFile(), "rw")) {
      sparse.setLength((50 << 20) + 1);
    }
    browser.find("#recording-file").sendKeys(larger.toString());
    browser.await("!document.getElementById('recording-wrong').hidden");
    assertEquals(
        "larger.gpx has 52428801 bytes; a recording of at most 52428800 bytes is taken.",
        browser.ask("document.getElementById('recording-wrong').textContent"));
    browser.run("document.getElementById('recording-away').click()");
  }

  @Test
  void aDeskThatHasEndedSaysSoAndThePlanCanStillBeSaved() throws InterruptedException {
    for (int i : IntStream.range(0, Soak.isWhole() ? 8 : 1).toArray()) {
      ended(String.valueOf(12 + i));
    }
    browser.open(desk.address());
    browser.await(FRESH);
    browser.complaints(); // requests that found nobody
  }

  private static void ended(String oat) throws InterruptedException {
    try (OpenDesk other = new OpenDesk()) {
      browser.open(other.address());
      browser.await(FRESH);
      browser.type("#f-conditions-oat-c", oat);
      // the page notes the plan when the hand has been still for a while
      browser.await(
          "performance.getEntriesByType('resource').some((one) => one.name.endsWith('/save'))");
      browser.run("document.getElementById('end').click()");
      browser.await("document.getElementById('trouble').textContent.includes('is ended')");
      assertTrue(other.isEnded());
    }
    browser.type("#f-conditions-oat-c", "40");
    browser.await("document.getElementById('trouble').textContent.includes('does not answer')");
    browser.run(
        "window.handed = ''; URL.createObjectURL = (blob) => { const r = new FileReader();"
            + " r.onload = () => { window.handed = window.handed || r.result; };"
            + " r.readAsDataURL(blob); return '#caught'; };"
            + "document.getElementById('save').click()");
    browser.await("window.handed !== ''");
    String plan =
        new String(Base64.getDecoder().decode(browser.ask("window.handed.split(',')[1]")), UTF_8);
    assertTrue(plan.contains("oat_c = " + oat), plan);
  }
}
