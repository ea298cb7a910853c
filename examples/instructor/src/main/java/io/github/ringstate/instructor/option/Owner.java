package io.github.ringstate.instructor.option;

import java.util.Objects;
import picocli.CommandLine.Model.CommandSpec;

/** The command that an option of a group has come to, whatever groups are between. */
final class Owner {

  private Owner() {}

  /**
   * Finds it.
   *
   * @param mixee what the group was put into: a command, or a group that was put into one
   * @param option the name of an option of the group
   * @return the command
   */
  static CommandSpec of(CommandSpec mixee, String option) {
    return Objects.requireNonNull(mixee.findOption(option), option).command();
  }
}
