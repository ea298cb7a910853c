package io.github.ringstate.instructor.desk;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.github.ringstate.files.text.Caution;
import io.github.ringstate.sheets.page.SheetFont;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;

/** The files of the page, all from the jar. Their names are fixed: no path is ever looked up. */
final class PageFiles {

  private static final String PAGE = "desk.html";
  private static final String SCRIPT = "text/javascript; charset=utf-8";

  private static final Map<String, String> TYPES =
      Map.ofEntries(
          Map.entry(PAGE, "text/html; charset=utf-8"),
          Map.entry("desk.css", "text/css; charset=utf-8"),
          Map.entry("paper.css", "text/css; charset=utf-8"),
          Map.entry("desk.js", SCRIPT),
          Map.entry("form.js", SCRIPT),
          Map.entry("keep.js", SCRIPT),
          Map.entry("ask.js", SCRIPT),
          Map.entry("blocks.js", SCRIPT),
          Map.entry("panels.js", SCRIPT),
          Map.entry("change.js", SCRIPT),
          Map.entry("papers.js", SCRIPT),
          Map.entry("words.js", SCRIPT),
          Map.entry("review.js", SCRIPT),
          Map.entry("side.js", SCRIPT));

  private static final Map<String, SheetFont> FONTS =
      Map.of("regular.ttf", SheetFont.REGULAR, "semibold.ttf", SheetFont.SEMIBOLD);

  /**
   * What a file is, for the browser.
   *
   * @param name what the page asks for; nothing for the page itself
   * @return the media type; empty if there is no file of that name
   */
  Optional<String> type(String name) {
    return FONTS.containsKey(name)
        ? Optional.of("font/ttf")
        : Optional.ofNullable(TYPES.get(name.isEmpty() ? PAGE : name));
  }

  /**
   * What is in a file.
   *
   * @param name the name of one that there is
   * @return its bytes
   */
  byte[] bytes(String name) {
    SheetFont font = FONTS.get(name);
    return font == null ? resource(name.isEmpty() ? PAGE : name) : font.bytes();
  }

  private static byte[] resource(String file) {
    try (InputStream in = PageFiles.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException(file + " is missing from the tool");
      }
      byte[] bytes = in.readAllBytes();
      return file.equals(PAGE)
          ? new String(bytes, UTF_8).replace("{{caution}}", Caution.TEXT).getBytes(UTF_8)
          : bytes;
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }
}
