package io.github.ringstate.instructor.fit;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.toml.TextFile;
import io.github.ringstate.files.whole.WholeFile;
import io.github.ringstate.instructor.origin.Origin;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Arrays;
import picocli.CommandLine.Model.CommandSpec;

/**
 * Where a fitted craft is written. A run that makes a report anew leaves a craft file of another
 * content alone, since nobody named it.
 *
 * @param name the file, as the user named it
 * @param file the same as a place to write to
 * @param again whether a run makes its report anew
 */
record FittedFile(String name, WholeFile file, boolean again) {

  /** The file, which can be written so far as can be seen before. */
  static FittedFile named(String option, String name, CommandSpec spec) {
    return new FittedFile(name, WholeFile.named(option, name), Origin.of(spec).again());
  }

  void put(byte[] text) {
    if (again && Files.exists(file.place())) {
      if (!holds(text)) {
        throw UserError.file(
            name, "holds another craft, which a rerun does not replace; move it away", null);
      }
      return;
    }
    file.replace(out -> out.write(text));
  }

  private boolean holds(byte[] text) {
    try {
      return Arrays.equals(Files.readAllBytes(file.place()), text);
    } catch (IOException failed) {
      throw TextFile.refused(name, failed);
    }
  }
}
