package io.github.ringstate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.ringstate.study.ModelRevision;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * Tests on many drawn cases. Each build tries a thousandth of them. With {@code -Psoak} all are
 * tried, a portion at a time, and {@code target/soak} keeps what came of each portion: a run that
 * was ended goes on behind the last whole one, as long as the model of flight is the same.
 */
public final class Soak {

  /** The system property that asks for all cases. */
  public static final String PROPERTY = "ringstate.soak";

  private static final int PORTIONS = 1000;
  private static final String PORTION = "portion ";

  private Soak() {}

  /**
   * Whether all cases are asked for.
   *
   * @return true with {@code -Psoak}
   */
  public static boolean isWhole() {
    return Boolean.getBoolean(PROPERTY);
  }

  /**
   * Tries cases and fails if there are faults.
   *
   * @param name what the report is called
   * @param whole how many cases there are, a multiple of a thousand
   * @param fault what is wrong with the case of a number; empty if nothing is
   */
  public static void assertNoFaults(String name, int whole, IntFunction<String> fault) {
    assertEquals(List.of(), faults(name, whole, fault));
  }

  /**
   * Tries cases.
   *
   * @param name what the report is called
   * @param whole how many cases there are, a multiple of a thousand
   * @param fault what is wrong with the case of a number; empty if nothing is
   * @return every fault, with the number of its case before it
   */
  public static List<String> faults(String name, int whole, IntFunction<String> fault) {
    int size = whole / PORTIONS;
    if (!isWhole()) {
      return portion(0, size, fault);
    }
    try {
      return reported(Path.of("target", "soak", name + ".txt"), size, fault);
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private static List<String> portion(int first, int size, IntFunction<String> fault) {
    return IntStream.range(first, first + size)
        .parallel()
        .mapToObj(
            number -> {
              String found = fault.apply(number);
              return found.isEmpty() ? "" : number + ": " + found;
            })
        .filter(line -> !line.isEmpty())
        .toList();
  }

  private static List<String> reported(Path report, int size, IntFunction<String> fault)
      throws IOException {
    String head = "model " + ModelRevision.current();
    List<String> kept = Files.exists(report) ? Files.readAllLines(report) : List.of();
    if (kept.isEmpty() || !kept.get(0).equals(head)) {
      Files.createDirectories(report.getParent());
      Files.writeString(report, head + "\n");
      kept = List.of(head);
    }
    int done = (int) kept.stream().filter(line -> line.startsWith(PORTION)).count();
    List<String> faults =
        new ArrayList<>(kept.stream().skip(1).filter(line -> !line.startsWith(PORTION)).toList());
    for (int i = done; i < PORTIONS; i++) {
      List<String> found = portion(i * size, size, fault);
      faults.addAll(found);
      String lines = found.isEmpty() ? "" : String.join("\n", found) + "\n";
      Files.writeString(
          report,
          lines + PORTION + i + ": " + found.size() + " faults in " + size + " cases\n",
          StandardOpenOption.APPEND);
    }
    return faults;
  }
}
