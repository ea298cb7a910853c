package io.github.ringstate.files.provenance;

import io.github.ringstate.files.report.Cell;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where a file came from.
 *
 * @param build which program made it
 * @param command the arguments that make it again, with {@code --output} and a name to be replaced
 *     at the end
 * @param sources what the command read
 * @param options the value of every option that has one, given or not
 * @param settings what was computed with: craft, air, entry, model and the like, by keys with their
 *     unit
 * @param units the units of columns, by their names
 */
public record Provenance(
    Build build,
    List<String> command,
    List<Source> sources,
    Map<String, String> options,
    Map<String, Cell> settings,
    Map<String, String> units) {

  /** What stands for the name of the file in {@link #command}; the format's name follows. */
  public static final String FILE = "FILE.";

  /** Copies the lists and maps. */
  public Provenance {
    command = List.copyOf(command);
    sources = List.copyOf(sources);
    options = Collections.unmodifiableMap(new LinkedHashMap<>(options));
    settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
    units = Collections.unmodifiableMap(new LinkedHashMap<>(units));
  }
}
