package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.WebElement;

/** The briefing desk in a browser. */
class DeskBrowserTest {

  private static OpenDesk desk;
  private static Chromium browser;

  @BeforeAll
  static void open() throws InterruptedException {
    Chromium.isThere();
    desk = new OpenDesk();
    browser = new Chromium();
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
    if (desk != null) {
      desk.close();
    }
  }

  private static final String LOSS = "document.querySelector('[data-panel=loss]')";

  /** The rows of the table of losses on the page. */
  private static List<String> losses() {
    return browser.all("[data-panel=loss] tbody tr").stream()
        .map(WebElement::getText)
        .map(row -> row.replaceAll("\\s+", " "))
        .toList();
  }

  private static List<String> printed(String command) {
    return Run.line(command).lines().stream()
        .map(line -> line.strip().replaceAll(" +", " "))
        .toList();
  }

  @Test
  void fromCraftAndDayToALiveTableThatIsThatOfTheCommand() throws InterruptedException {
    browser.open(desk.address());
    browser.await(LOSS + ".querySelector('tbody') !== null");
    List<String> first = losses();
    assertEquals(6, first.size());
    assertTrue(printed("loss").containsAll(first), first.toString());
    browser.run(
        "const s = document.getElementById('f-craft'); s.value = 'twin';"
            + " s.dispatchEvent(new Event('input', { bubbles: true }));");
    browser.type("#f-altitude", "6000");
    browser.type("#f-oat", "20");
    browser.await("!" + LOSS + ".classList.contains('old')");
    List<String> command = printed("loss --craft twin --pressure-altitude-ft 6000 --oat-c 20");
    List<String> then = losses();
    assertTrue(command.containsAll(then), then + " is not in " + command);
    assertEquals(List.of(), browser.complaints());
  }
}
