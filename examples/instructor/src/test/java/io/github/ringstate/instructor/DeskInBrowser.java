package io.github.ringstate.instructor;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

/** A test class with a briefing desk of its own, shown in a browser. */
abstract class DeskInBrowser {

  /** That the page shows the losses of what its form holds. */
  static final String FRESH =
      "document.querySelector('[data-panel=loss] tbody') !== null"
          + " && !document.querySelector('[data-panel=loss]').classList.contains('old')";

  static OpenDesk desk;
  static Chromium browser;

  @BeforeAll
  static void open() throws InterruptedException {
    Chromium.isThere();
    desk = new OpenDesk();
    browser = new Chromium();
    browser.open(desk.address());
    browser.await(FRESH);
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
      desk.close();
    }
  }
}
