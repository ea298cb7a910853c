package io.github.ringstate.inflow;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/**
 * The numbers of a reference file: comma-separated, a header line, origin in lines that begin with
 * #.
 */
final class ReferenceTable {

  private ReferenceTable() {}

  static List<String[]> rows(String file) {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(ReferenceTable.class.getResourceAsStream(file), file),
                StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .filter(line -> !line.startsWith("#"))
          .skip(1)
          .map(line -> line.split(","))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
