package io.github.ringstate.instructor.option;

import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;

/** Options by the names that earlier builds had for them; scripts and plans keep them. */
final class RenamedOptions {

  private static final Map<String, String> NEW =
      Map.of(
          "--recoveries", "--recovery",
          "--technique", "--recovery",
          "--fly", "--recovery",
          "--gust-kt", Turbulence.OPTION);

  private RenamedOptions() {}

  /**
   * The name that an option has.
   *
   * @param command the command
   * @param name a name with its hyphens
   * @return the option's name; empty if the name is the command's own, or unknown
   */
  static Optional<String> of(CommandSpec command, String name) {
    return Optional.ofNullable(NEW.get(name))
        .filter(now -> command.findOption(name) == null && command.findOption(now) != null);
  }

  /**
   * What to say of it.
   *
   * @param name the former name
   * @param now the name
   * @return a sentence
   */
  static String notice(String name, String now) {
    return name + " is now called " + now;
  }
}
