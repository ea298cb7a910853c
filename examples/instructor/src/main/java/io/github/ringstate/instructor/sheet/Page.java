package io.github.ringstate.instructor.sheet;

import io.github.ringstate.instructor.sheet.Pictured.Picture;
import java.util.HashMap;
import java.util.Map;

/**
 * A page to be filled in.
 *
 * @param template the name of the template
 * @param title the title of the document
 * @param landscape whether the paper lies on its longer side
 * @param model what the template asks for: texts, numbers, lists and records
 * @param pictures the pictures by the names with which the template asks for them
 */
public record Page(
    String template,
    String title,
    boolean landscape,
    Map<String, Object> model,
    Map<String, Picture> pictures) {

  /** Copies the maps. */
  public Page {
    model = Map.copyOf(model);
    pictures = Map.copyOf(pictures);
  }

  /** The page with one more thing, or another one, that the template asks for. */
  Page with(String name, Object value) {
    Map<String, Object> more = new HashMap<>(model);
    more.put(name, value);
    return new Page(template, title, landscape, more, pictures);
  }
}
