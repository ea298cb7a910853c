package io.github.ringstate.instructor.option;

import io.github.ringstate.files.error.UserError;
import java.util.List;

/** Lists as users type them, with commas. */
final class Lists {

  private Lists() {}

  /**
   * The parts of a list.
   *
   * @param option the option's name
   * @param text what was given
   * @return the parts, at least one, none of them empty
   * @throws UserError if there is no part, or an empty one
   */
  static List<String> parts(String option, String text) {
    List<String> parts = List.of(text.split(",", -1)).stream().map(String::strip).toList();
    if (parts.contains("")) {
      throw UserError.option(option, text, "one value or several with commas between, none empty");
    }
    return parts;
  }

  /**
   * What to say of a part that stands twice.
   *
   * @param option the option's name
   * @param text what was given
   * @param part the part
   * @return the user error
   */
  static UserError twice(String option, String text, String part) {
    return UserError.option(option, text, "every value once, but " + part + " stands there twice");
  }
}
