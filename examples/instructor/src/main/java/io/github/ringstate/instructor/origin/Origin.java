package io.github.ringstate.instructor.origin;

import io.github.ringstate.files.digest.Digest;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.provenance.Build;
import io.github.ringstate.files.provenance.ColumnUnits;
import io.github.ringstate.files.provenance.Provenance;
import io.github.ringstate.files.provenance.Source;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.toml.Texts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/**
 * One run of a command: its arguments, and the texts that it read. A text that is kept from the run
 * before stands in for the file of that name.
 */
public final class Origin implements Texts {

  /** The option that says where a file goes. */
  public static final String OUTPUT = "--output";

  /** The option that says where a craft goes. */
  public static final String CRAFT_FILE = "--craft-file";

  /** What they name is written, not read. */
  private static final Set<String> WRITTEN = Set.of(OUTPUT, CRAFT_FILE);

  /** Options that do not change what is in a file. */
  private static final Set<String> WITHOUT_EFFECT =
      Set.of(OUTPUT, "--threads", "--resume", "--quiet");

  private final Kept kept;
  private final boolean again;
  private final Map<String, Source> read = new LinkedHashMap<>();
  private @Nullable ParseResult parsed;

  /**
   * Begins a run.
   *
   * @param kept what stands in for files
   * @param again whether the arguments were not typed but kept from a run before
   */
  public Origin(Kept kept, boolean again) {
    this.kept = kept;
    this.again = again;
  }

  /**
   * Whether the arguments were not typed but kept from a run before: a file that they name is not
   * replaced unasked.
   *
   * @return true if another command or the desk runs this one
   */
  public boolean again() {
    return again;
  }

  /** What knows the origin: the command at the top. */
  @FunctionalInterface
  public interface Holder {

    /**
     * The origin of the run.
     *
     * @return the origin
     */
    Origin origin();
  }

  /**
   * The origin of the run that a command is part of.
   *
   * @param spec the command
   * @return the origin; one that knows nothing if the command runs alone
   */
  public static Origin of(CommandSpec spec) {
    return spec.root().userObject() instanceof Holder holder
        ? holder.origin()
        : new Origin(Kept.NOTHING, false);
  }

  /**
   * Takes the arguments.
   *
   * @param command the command with its arguments, without those above it
   */
  public void begin(ParseResult command) {
    parsed = command;
  }

  @Override
  public String read(String name, String what, int largest) {
    String text = kept.texts().get(name);
    if (text == null) {
      refuseDisk(name);
      text = Texts.FILES.read(name, what, largest);
    }
    read.put(name, Source.of(name, text));
    return text;
  }

  /**
   * What stands in for the file of a recorded flight.
   *
   * @param name the file, as the user named it
   * @return its bytes; empty if it is on disk
   * @throws UserError if nothing is read from there
   */
  public Optional<byte[]> recording(String name) {
    byte[] content = kept.recordings().get(name);
    if (content == null) {
      refuseDisk(name);
    }
    return Optional.ofNullable(content);
  }

  private void refuseDisk(String name) {
    if (kept.alone()) {
      throw UserError.file(name, "cannot be read: it is not on the desk");
    }
  }

  /**
   * A file was read of which only the digest is kept.
   *
   * @param name the file, as the user named it
   * @param digest its SHA-256 digest
   */
  public void read(String name, String digest) {
    read.put(name, new Source(name, digest, Optional.empty()));
  }

  /**
   * Where a file comes from.
   *
   * @param format the name of its format
   * @param settings what was computed with
   * @param columns the names of its columns
   * @return the provenance
   */
  public Provenance provenance(
      String format, Map<String, Cell> settings, Collection<String> columns) {
    List<String> command = new ArrayList<>();
    if (parsed != null) {
      command.add(parsed.commandSpec().name());
      command.addAll(arguments(parsed));
      noteFiles(parsed);
    }
    command.add(OUTPUT);
    command.add(Provenance.FILE + format);
    return new Provenance(
        Build.current(),
        command,
        List.copyOf(read.values()),
        parsed == null ? Map.of() : options(parsed.commandSpec()),
        settings,
        ColumnUnits.of(columns));
  }

  /** The arguments as they were typed, but for those without effect. */
  private static List<String> arguments(ParseResult parsed) {
    List<String> arguments = new ArrayList<>();
    for (ArgSpec arg : parsed.matchedArgs()) {
      if (arg instanceof OptionSpec option) {
        if (WITHOUT_EFFECT.contains(option.longestName())) {
          continue;
        }
        if (option.arity().max() == 0) {
          arguments.add(option.longestName());
        } else {
          for (String value : option.originalStringValues()) {
            arguments.add(option.longestName());
            arguments.add(value);
          }
        }
      } else {
        arguments.addAll(arg.originalStringValues());
      }
    }
    return arguments;
  }

  /** Of a file that was named and not read as a text the digest is kept; a pipe has none. */
  private void noteFiles(ParseResult command) {
    for (ArgSpec arg : command.matchedArgs()) {
      boolean output = arg instanceof OptionSpec option && WRITTEN.contains(option.longestName());
      if (!output) {
        arg.originalStringValues().forEach(this::noteFile);
      }
    }
  }

  private void noteFile(String name) {
    try {
      byte[] recording = kept.recordings().get(name);
      if (recording != null) {
        read(name, Digest.of(recording));
      } else if (!kept.alone() && !read.containsKey(name) && Files.isRegularFile(Path.of(name))) {
        read(name, Digest.of(Path.of(name)));
      }
    } catch (InvalidPathException | IOException none) {
      // no file, or one that only the command can read
    }
  }

  private static Map<String, String> options(CommandSpec command) {
    Map<String, String> options = new TreeMap<>();
    for (OptionSpec option : command.options()) {
      @Nullable Object value = option.getValue();
      if (value != null
          && !option.hidden()
          && !option.usageHelp()
          && !option.versionHelp()
          && !WITHOUT_EFFECT.contains(option.longestName())) {
        options.put(option.longestName(), String.valueOf(value));
      }
    }
    return options;
  }
}
