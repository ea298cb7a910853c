package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import io.github.ringstate.instructor.desk.Browser;
import java.io.ByteArrayOutputStream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

/** What a start without arguments means. */
class StartTest {

  @Test
  void whatADoubleClickMeansIsUnderstood() {
    var desk = Main.commandLine(new ByteArrayOutputStream()).parseArgs(Start.DESK).subcommand();
    assertEquals("desk", desk.commandSpec().name());
    // nobody at a terminal can end it: it ends itself
    assertEquals("120", desk.matchedOptionValue("--idle", ""));
  }

  @Test
  void withoutAScreenItIsNoDoubleClick() {
    Assumptions.assumeFalse(Browser.isDesktop());
    assertFalse(Start.byDoubleClick());
  }
}
