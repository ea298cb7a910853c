package io.github.ringstate.files.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.files.craft.CraftFile;
import io.github.ringstate.files.error.UserError;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The Unicode Standard 15.0, chapter 23, and ISO 6429 for the controls. */
class UnprintableTest {

  @ParameterizedTest
  @ValueSource(
      ints = {
        0, 0x1b, 0x7f, 0x9b, 0x2028, 0x2029, 0x202a, 0x202e, 0x2066, 0x2069, 0xfdd0, 0xfffe, 0xffff,
        0x1fffe, 0x10ffff
      })
  void whatIsNotForPrintingIsFoundAndReplaced(int codePoint) {
    String text = "a" + Character.toString(codePoint) + "b";
    assertEquals(OptionalInt.of(codePoint), Unprintable.first(text));
    assertEquals("a?b", Unprintable.replaced(text));
  }

  @Test
  void halvesOfPairsAreFoundAndWholePairsAreLeft() {
    assertEquals(OptionalInt.of(0xd83d), Unprintable.first("a\ud83d"));
    assertEquals("??", Unprintable.replaced("\ude81\ude81"));
    assertEquals("\ud83d\ude81 \u00e9 \u0645", Unprintable.replaced("\ud83d\ude81 \u00e9 \u0645"));
  }

  @Test
  void aCharacterIsNamedByItsCodePoint() {
    assertEquals("U+001B", Unprintable.name(0x1b));
    assertEquals("U+202E", Unprintable.name(0x202e));
    assertEquals("U+10FFFF", Unprintable.name(0x10ffff));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\\u001b[31m", "\\u009b", "\\u2028", "\\u202e", "\\ufffe"})
  void aTextOfAFileThatCannotBePrintedIsRefused(String escaped) {
    String text = "name = \"a " + escaped + "\"\n";
    UserError refused =
        assertThrows(
            UserError.class, () -> CraftFile.read("x.toml", (file, what, largest) -> text));
    String message = String.valueOf(refused.getMessage());
    assertTrue(message.startsWith("x.toml, line 1: name holds U+"), message);
    assertEquals(OptionalInt.empty(), Unprintable.first(message));
  }
}
