package io.github.ringstate.instructor;

import io.github.ringstate.files.error.UserError;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;

/** What to say of an option that a command does not have: the one that was probably meant. */
final class NearestOption {

  /** Letters that may be wrong in a name for another to be suggested, over its length. */
  private static final double WRONG_SHARE = 0.34;

  private NearestOption() {}

  /**
   * Says that an option is unknown.
   *
   * @param command the command
   * @param given what was typed
   * @return a sentence, with the nearest option if one is near
   */
  static String unknown(CommandLine command, String given) {
    int end = given.indexOf('=');
    String name = end < 0 ? given : given.substring(0, end);
    List<String> known =
        command.getCommandSpec().options().stream()
            .map(CommandLine.Model.OptionSpec::longestName)
            .filter(option -> option.startsWith("--"))
            .toList();
    return "there is no option "
        + UserError.quoted(name)
        + nearest(known, name).map(option -> "; did you mean " + option + "?").orElse("");
  }

  /**
   * The name that is nearest to another: one that continues it, such as by a unit, or else one with
   * few letters wrong.
   *
   * @param known all names
   * @param given the name that is none of them
   * @return the nearest; empty if none is near
   */
  static Optional<String> nearest(List<String> known, String given) {
    Optional<String> longer =
        known.stream()
            .filter(name -> given.length() > 2 && name.startsWith(given))
            .min(Comparator.comparingInt(String::length));
    return longer.isPresent()
        ? longer
        : known.stream()
            .min(Comparator.comparingInt(name -> distance(name, given)))
            .filter(name -> distance(name, given) <= WRONG_SHARE * (given.length() - 2));
  }

  /** Letters to insert, leave out or change (Levenshtein distance). */
  static int distance(String one, String other) {
    int[] row = new int[other.length() + 1];
    for (int j = 0; j < row.length; j++) {
      row[j] = j;
    }
    for (int i = 1; i <= one.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j < row.length; j++) {
        int changed = diagonal + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[other.length()];
  }
}
