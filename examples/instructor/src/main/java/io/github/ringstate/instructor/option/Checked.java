package io.github.ringstate.instructor.option;

import io.github.ringstate.encounter.Encounter;
import java.util.List;

/** A command that can be asked what it would fly, and whether its options make sense. */
public interface Checked {

  /**
   * Builds the request and flies nothing.
   *
   * @return what would be flown, by the standard techniques
   * @throws io.github.ringstate.files.error.UserError if an option is wrong
   */
  List<Encounter> flown();
}
