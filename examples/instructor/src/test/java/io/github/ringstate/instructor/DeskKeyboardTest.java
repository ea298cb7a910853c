package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;

/** The briefing desk by the keyboard alone (WCAG 2.1, 2.1.1, 2.1.2, 2.4.3 and 2.4.7). */
class DeskKeyboardTest extends DeskInBrowser {

  private static final String SETTLED =
      "document.getElementById('progress').textContent.startsWith('Settled')";

  /** All that can be worked or moved, in the order of the page; a table only if it is too wide. */
  private static final String WANTED =
      "window.wanted = () => Array.from(document.querySelectorAll("
          + "'a[href], button, input, select, summary, .scroll'))"
          + ".filter((e) => !e.disabled && e.checkVisibility()"
          + " && (!e.classList.contains('scroll') || e.scrollWidth > e.clientWidth));";

  /**
   * Before the focus goes on: what has it, whether that shows it, and whether nothing lies over it.
   */
  private static final String WALK =
      """
      window.walked = []; window.faults = []; window.around = false;
      document.addEventListener('keydown', () => {
        const e = document.activeElement;
        if (e === document.body || window.around) { window.around = window.walked.length > 0; return; }
        window.walked.push(e);
        const shows = e.classList.contains('unseen') ? e.labels[0] : e;
        const { left, top, width, height } = shows.getBoundingClientRect();
        const over = document.elementFromPoint(left + Math.min(20, width / 2), top + Math.min(10, height / 2));
        if (getComputedStyle(shows).outlineStyle !== 'solid') { window.faults.push('does not show it: ' + e.outerHTML); }
        if (over === null || !(shows.contains(over) || over.contains(shows))) { window.faults.push('is hidden: ' + e.outerHTML); }
      }, true);
      """;

  @BeforeAll
  static void settled() throws InterruptedException {
    browser.await(SETTLED);
  }

  @Test
  void theWholePageIsWalkedByTabAloneInItsOrderAndTheFocusIsInSight() throws InterruptedException {
    browser.driver().navigate().refresh(); // the focus is at the top
    browser.sized(640, 400); // a window of 1280 px at 200 % (WCAG 2.1, 1.4.4)
    browser.await(FRESH);
    browser.run("document.getElementById('run-planned').click()");
    browser.run("document.querySelectorAll('details').forEach((one) => { one.open = true; });");
    browser.await(SETTLED);
    browser.run(WANTED + WALK);
    String tabs = String.join("", Collections.nCopies(60, Keys.TAB));
    for (int i = 0; i < 6 && !browser.ask("window.around").equals("true"); i++) {
      new Actions(browser.driver()).sendKeys(tabs).perform();
    }
    assertEquals("true", browser.ask("window.around"), "the focus is caught");
    assertEquals("", browser.ask("window.faults.join('; ')"));
    String names = ".map((e) => e.tagName + ' ' + e.id + ' ' + (e.ariaLabel || '')).join('\\n')";
    assertEquals(browser.ask("window.wanted()" + names), browser.ask("window.walked" + names));
    assertTrue(Integer.parseInt(browser.ask("window.walked.length")) > 200);
    browser.run("document.getElementById('run-planned').click()");
    browser.sized(1280, 800);
  }

  private static void press(String id, CharSequence key) {
    browser.run("document.getElementById('" + id + "').focus()");
    browser.press(key);
  }

  @Test
  void keysDoWhatTheyDoOnAnyPage() throws InterruptedException {
    browser.run("document.getElementById('f-conditions-craft').focus()");
    browser.press(Keys.TAB);
    assertEquals("What is: Mass", browser.ask("document.activeElement.ariaLabel"));
    browser.press(Keys.ENTER);
    assertFalse(browser.find("#h-conditions-mass-kg").getText().isEmpty());
    browser.press(Keys.SPACE);
    assertEquals("true", browser.ask("document.getElementById('h-conditions-mass-kg').hidden"));
    press("f-conditions-craft", Keys.ARROW_DOWN);
    browser.await("!" + FRESH + " || document.getElementById('craft-words').textContent !== ''");
    browser.await(FRESH);
    String second = browser.ask("document.getElementById('f-conditions-craft').options[1].value");
    assertEquals(second, browser.ask("document.getElementById('f-conditions-craft').value"));
    press("run-planned", Keys.SPACE);
    assertEquals("false", browser.ask("document.getElementById('run').hidden"));
    press("run-planned", Keys.SPACE);
    assertEquals("true", browser.ask("document.getElementById('run').hidden"));
    press("delay", Keys.ARROW_RIGHT);
    assertEquals("1.5 s", browser.ask("document.getElementById('delay-out').textContent"));
    press("clear", Keys.ENTER);
    assertEquals("trainer", browser.ask("document.getElementById('f-conditions-craft').value"));
  }
}
