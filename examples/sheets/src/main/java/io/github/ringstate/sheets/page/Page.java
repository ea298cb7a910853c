package io.github.ringstate.sheets.page;

import io.github.ringstate.sheets.page.Pictured.Picture;
import java.util.HashMap;
import java.util.Map;

/**
 * A page to be filled in.
 *
 * @param owner the class beside which the template lies, and what the template takes in
 * @param template the name of the template
 * @param title the title of the document
 * @param landscape whether the paper lies on its longer side
 * @param model what the template asks for: texts, numbers, lists and records
 * @param pictures the pictures by the names with which the template asks for them
 */
public record Page(
    Class<?> owner,
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
    return new Page(owner, template, title, landscape, more, pictures);
  }
}
