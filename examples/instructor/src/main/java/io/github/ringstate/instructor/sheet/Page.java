package io.github.ringstate.instructor.sheet;

import java.util.Map;

/**
 * A page to be filled in.
 *
 * @param template the name of the template
 * @param title the title of the document
 * @param model what the template asks for: texts, numbers, lists and records
 */
public record Page(String template, String title, Map<String, Object> model) {

  /** Copies the map. */
  public Page {
    model = Map.copyOf(model);
  }
}
