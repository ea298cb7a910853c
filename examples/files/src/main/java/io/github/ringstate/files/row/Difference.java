package io.github.ringstate.files.row;

import java.util.List;
import java.util.Optional;

/** Where what was begun differs from what is asked for. */
public final class Difference {

  private static final String NOTHING = "nothing more";

  private Difference() {}

  /**
   * The first line in which two lists differ.
   *
   * @param begun what was begun, one thing a line
   * @param asked what is asked for
   * @return a part of a sentence; empty if they are the same
   */
  public static Optional<String> between(List<String> begun, List<String> asked) {
    for (int i = 0; i < Math.max(begun.size(), asked.size()); i++) {
      String there = i < begun.size() ? begun.get(i) : NOTHING;
      String here = i < asked.size() ? asked.get(i) : NOTHING;
      if (!there.equals(here)) {
        return Optional.of("has '" + there + "', this one has '" + here + "'");
      }
    }
    return Optional.empty();
  }
}
