package io.github.ringstate.files;

import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.Soak;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.files.craft.CraftFile;
import io.github.ringstate.files.craft.CraftWriter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.extension.Extensions;
import io.github.ringstate.files.plan.PlanFile;
import io.github.ringstate.files.sweep.SweepFile;
import io.github.ringstate.files.text.Unprintable;
import io.github.ringstate.files.toml.Texts;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Files that were damaged are read or refused in one sentence, and soon. */
@Tag("soak")
class MutatedFilesTest {

  private static final int CASES = 100_000;
  private static final int LONGEST_SENTENCE = 2000;

  private static final String PLAN =
      """
      place = "Field (invented)"
      date = "2026-05-01"
      crew = ["A (invented)", "B (invented)"]
      technique = "lateral"
      [conditions]
      craft = "trainer"
      mass-kg = "560"
      [encounter]
      state = "primed,startled"
      height-ft = "300.5"
      [run]
      wind-from-deg = "020"
      [agreed]
      least_height_ft = 500.0
      abort_height_ft = 1250.5
      """;

  private static void assertReadOrRefused(String name, String text, Consumer<Texts> reader) {
    Soak.assertNoFaults(
        name,
        CASES,
        number -> {
          String mutated = Mutation.of(text, new SplittableRandom(number));
          try {
            reader.accept((file, what, largest) -> mutated);
            return "";
          } catch (UserError refused) {
            return fault(String.valueOf(refused.getMessage()));
          } catch (RuntimeException | StackOverflowError fault) {
            return fault.toString();
          }
        });
  }

  private static String fault(String message) {
    boolean sentence =
        message.lines().count() == 1
            && message.length() < LONGEST_SENTENCE
            && Unprintable.first(message).isEmpty();
    return sentence ? "" : "no sentence: " + message;
  }

  @Test
  void aCraftFileIsReadOrRefused() {
    assertReadOrRefused(
        "craft-files",
        String.join("\n", CraftWriter.lines(DemoCraft.TRAINER)),
        texts -> CraftFile.read("x.toml", texts));
  }

  @Test
  void aSweepFileIsReadOrRefused() {
    assertReadOrRefused(
        "sweep-files",
        SweepFile.example(),
        texts -> SweepFile.read("x.toml", Extensions.NONE, texts));
  }

  @Test
  void aPlanFileIsReadOrRefused() {
    assertReadOrRefused("plan-files", PLAN, texts -> PlanFile.read("x.toml", texts));
  }

  /** The largest craft file that is read at all, nearly all of it comments. */
  @Test
  @Timeout(value = 10, unit = TimeUnit.SECONDS)
  void aMistakeBehindManyCommentsIsFoundSoon() {
    String text = "# a comment\n".repeat(5000) + "mass_gk = 3\n";
    try {
      CraftFile.read("x.toml", (file, what, largest) -> text);
      throw new AssertionError("read");
    } catch (UserError refused) {
      assertTrue(String.valueOf(refused.getMessage()).contains("line 5001"), refused.getMessage());
    }
  }
}
