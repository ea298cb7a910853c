package io.github.ringstate.instructor.option;

import io.github.ringstate.files.error.UserError;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Files that a command reads. */
public final class Inputs {

  private static final String OUTPUT = "--output";

  private Inputs() {}

  /**
   * Sees to it that no command writes over a file that it was given to read.
   *
   * @param parsed the command with its arguments
   * @throws UserError if {@code --output} names the same file as another argument
   */
  public static void keep(ParseResult parsed) {
    OptionSpec output = parsed.matchedOption(OUTPUT);
    if (output == null) {
      return;
    }
    for (String place : output.stringValues()) {
      for (ArgSpec argument : parsed.matchedArgs()) {
        if (!argument.equals(output)
            && argument.stringValues().stream().anyMatch(input -> isSame(input, place))) {
          throw UserError.option(
              OUTPUT, place, "a file other than the one that is read, which would be lost");
        }
      }
    }
  }

  private static boolean isSame(String input, String place) {
    try {
      Path there = Path.of(place);
      return Files.isRegularFile(there) && Files.isSameFile(Path.of(input), there);
    } catch (InvalidPathException | IOException none) {
      return false; // no file is named, or there is none
    }
  }
}
