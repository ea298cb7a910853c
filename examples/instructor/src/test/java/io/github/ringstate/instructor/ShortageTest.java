package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.files.error.UserError;
import java.io.IOException;
import org.junit.jupiter.api.Test;

class ShortageTest {

  private static void assertNames(String what, Error error) {
    UserError said = Shortage.of(error);
    assertEquals(UserError.FILE, said.status());
    String message = String.valueOf(said.getMessage());
    assertEquals(1, message.lines().count());
    assertTrue(message.contains(what), message);
  }

  @Test
  void theRootOfAnErrorIsNamed() {
    assertNames("-Xmx512m", new OutOfMemoryError("Java heap space"));
    assertNames("-Xmx512m", new ExceptionInInitializerError(new OutOfMemoryError()));
    assertNames("-Xss1m", new StackOverflowError());
    assertNames("temporary folder", new ExceptionInInitializerError(new IOException("no")));
    assertNames("cannot run the tool", new NoClassDefFoundError("a/B"));
  }

  @Test
  void whatFailsToDrawNamesTheLibrariesOfFonts() {
    UnsatisfiedLinkError error = new UnsatisfiedLinkError("libfreetype.so.6: cannot open");
    error.setStackTrace(
        new StackTraceElement[] {
          new StackTraceElement("sun.font.FontManagerNativeLibrary", "load", "X.java", 1)
        });
    assertNames("freetype and fontconfig", error);
  }
}
