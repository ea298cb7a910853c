package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.Soak;
import io.github.ringstate.files.Mutation;
import io.github.ringstate.files.text.Unprintable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is typed, the tool answers or says in one sentence why not. */
class MutatedOptionsTest {

  private static final List<String> LINES =
      List.of(
          "loss --craft trainer --delays 0,1 --recovery lateral --pressure-altitude-ft 2000",
          "loss --mass-kg 560 --oat-c 30 --delays 2 --recovery forward --format csv",
          "fly --craft utility --recovery autorotation --delay 1.5 --height-ft 300 --format json",
          "boundary --craft twin --step-kt 2 --format csv",
          "craft heavy",
          "floor --height-ft 250 --pilots 8 --recovery lateral --state primed",
          "runs --calm --pilots 8 --recovery lateral --height-ft 500",
          "manual",
          "completion");

  private static String fault(int number) {
    SplittableRandom random = new SplittableRandom(number);
    List<String> args =
        new ArrayList<>(Arrays.asList(LINES.get(random.nextInt(LINES.size())).split(" ", -1)));
    for (int i = random.nextInt(3); i >= 0; i--) {
      int place = random.nextInt(args.size());
      switch (random.nextInt(4)) {
        case 0 -> args.set(place, args.get(random.nextInt(args.size())));
        case 1 -> args.add(place, args.get(random.nextInt(args.size())));
        default -> args.set(place, Mutation.of(args.get(place), random));
      }
    }
    // an answer is given; what a mutated name of a file would overwrite is not tried
    if (args.stream().anyMatch(arg -> arg.startsWith("--o") && !arg.startsWith("--oat"))) {
      return "";
    }
    Run run = Run.of(args.toArray(String[]::new));
    return said(run) ? "" : args + " " + run.status() + " " + run.err();
  }

  private static boolean said(Run run) {
    List<String> lines =
        run.err().lines().filter(line -> !line.contains(" is now called ")).toList();
    boolean clean = lines.stream().allMatch(line -> Unprintable.first(line).isEmpty());
    return switch (run.status()) {
      case 0 -> clean;
      case 1, 2 ->
          clean
              && run.out().isEmpty()
              && !run.err().contains("error in the tool")
              && !run.err().contains("Exception")
              && (lines.size() == 1 || (lines.size() == 2 && lines.get(1).startsWith("Try '")));
      default -> false;
    };
  }

  @Tag("soak")
  @Test
  void theToolAnswersOrSaysInASentenceWhyNot() {
    Soak.assertNoFaults("options", 100_000, MutatedOptionsTest::fault);
  }

  @ParameterizedTest
  @ValueSource(strings = {"\u001b[31m", "a\u009bb", "a\u2028b", "a\u202eb", "a\ud800", "a\ufffe"})
  void anArgumentThatCannotBePrintedIsNotEchoed(String bad) {
    for (List<String> args : List.of(List.of("loss", "--craft", bad), List.of("craft", bad))) {
      Run run = Run.of(args.toArray(String[]::new));
      assertEquals(2, run.status());
      assertTrue(run.err().contains("holds U+"), run.err());
      assertTrue(run.err().lines().allMatch(line -> Unprintable.first(line).isEmpty()), run.err());
    }
    Run unknown = Run.of("loss", "--" + bad);
    assertEquals(2, unknown.status());
    assertTrue(unknown.err().lines().allMatch(line -> Unprintable.first(line).isEmpty()));
  }
}
