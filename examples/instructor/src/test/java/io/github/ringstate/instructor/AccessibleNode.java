package io.github.ringstate.instructor;

import java.util.List;
import java.util.Map;

/**
 * A part of a page as the browser tells it to a screen reader.
 *
 * @param role what it is, by WAI-ARIA or the browser's own word
 * @param name its accessible name
 * @param description its accessible description
 * @param invalid whether what is filled in is said to be wrong
 */
record AccessibleNode(String role, String name, String description, boolean invalid) {

  /** All parts of the page that are not ignored. */
  static List<AccessibleNode> all(Chromium browser) {
    Map<String, Object> tree =
        browser.driver().executeCdpCommand("Accessibility.getFullAXTree", Map.of());
    return list(tree.get("nodes")).stream()
        .filter(node -> !Boolean.TRUE.equals(node.get("ignored")))
        .map(
            node ->
                new AccessibleNode(
                    value(node.get("role")),
                    value(node.get("name")),
                    value(node.get("description")),
                    list(node.get("properties")).stream()
                        .filter(one -> "invalid".equals(one.get("name")))
                        .anyMatch(one -> !"false".equals(value(one.get("value"))))))
        .toList();
  }

  private static List<Map<?, ?>> list(Object json) {
    return json instanceof List<?> all
        ? all.stream().<Map<?, ?>>map(one -> (Map<?, ?>) one).toList()
        : List.of();
  }

  private static String value(Object json) {
    return json instanceof Map<?, ?> typed ? String.valueOf(typed.get("value")) : "";
  }
}
