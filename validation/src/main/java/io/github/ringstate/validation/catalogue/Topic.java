package io.github.ringstate.validation.catalogue;

import io.github.ringstate.validation.check.Section;

/** One subject of the catalogue. */
@FunctionalInterface
public interface Topic {

  /**
   * Works the subject's checks out.
   *
   * @param models what is under test
   * @return the checks with their figures
   */
  Section section(Models models);
}
