package io.github.ringstate.cluster;

import io.github.ringstate.cluster.portion.Cut;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.extension.ExtensionJar;
import io.github.ringstate.files.extension.Extensions;
import io.github.ringstate.files.sweep.SweepFile;
import io.github.ringstate.files.toml.Texts;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What the program was asked for.
 *
 * @param spec the sweep's file, as the user named it
 * @param output the folder for the results, as the user named it
 * @param portion points of a portion; empty if the program decides
 * @param extensions the jars with extensions, as the user named them
 */
record JobRequest(String spec, String output, OptionalInt portion, List<String> extensions) {

  private static final String PORTION = "--portion";
  private static final String EXTENSION = "--extension";
  private static final String ALLOWED =
      "SPEC OUTPUT [" + PORTION + " POINTS] [" + EXTENSION + " JAR]...";
  private static final String WHOLE_NUMBER = "a whole number of points, 1 to " + Integer.MAX_VALUE;

  /** Copies the list. */
  JobRequest {
    extensions = List.copyOf(extensions);
  }

  /** The sweep, read with its extensions. */
  SweepFile sweep() {
    return SweepFile.read(
        spec, Extensions.of(extensions.stream().map(ExtensionJar::read).toList()), Texts.FILES);
  }

  /**
   * Reads the arguments.
   *
   * @throws UserError if they are not understood
   */
  static JobRequest of(List<String> args) {
    List<String> names = new ArrayList<>();
    List<String> extensions = new ArrayList<>();
    OptionalInt portion = OptionalInt.empty();
    Iterator<String> rest = args.iterator();
    while (rest.hasNext()) {
      String arg = rest.next();
      if (arg.equals(PORTION)) {
        portion = OptionalInt.of(points(rest.hasNext() ? rest.next() : ""));
      } else if (arg.startsWith(PORTION + "=")) {
        portion = OptionalInt.of(points(arg.substring(PORTION.length() + 1)));
      } else if (arg.equals(EXTENSION)) {
        extensions.add(rest.hasNext() ? rest.next() : "");
      } else if (arg.startsWith(EXTENSION + "=")) {
        extensions.add(arg.substring(EXTENSION.length() + 1));
      } else if (arg.startsWith("-")) {
        throw UserError.usage(
            "unknown option " + UserError.quoted(arg) + UserError.ALLOWED + ALLOWED);
      } else {
        names.add(arg);
      }
    }
    if (names.size() != 2) {
      throw UserError.usage(
          names.size()
              + " names were given, not a file and a folder"
              + UserError.ALLOWED
              + ALLOWED);
    }
    return new JobRequest(names.get(0), names.get(1), portion, extensions);
  }

  private static int points(String text) {
    try {
      int points = text.matches("[0-9]+") ? Integer.parseInt(text) : 0;
      if (points >= 1) {
        return points;
      }
    } catch (NumberFormatException tooLarge) {
      // refused as any other
    }
    throw UserError.option(PORTION, text, WHOLE_NUMBER);
  }

  /**
   * The cut that was asked for.
   *
   * @param points how many points the sweep has
   * @return the cut; empty if the program decides
   * @throws UserError if the sweep cannot be cut so
   */
  Optional<Cut> cut(long points) {
    if (portion.isEmpty()) {
      return Optional.empty();
    }
    int size = portion.getAsInt();
    int minimum = Cut.minimumSize(points);
    if (size < minimum) {
      throw UserError.option(
          PORTION,
          Integer.toString(size),
          minimum + " points or more for a sweep of " + points + " points");
    }
    return Optional.of(new Cut(points, size));
  }
}
