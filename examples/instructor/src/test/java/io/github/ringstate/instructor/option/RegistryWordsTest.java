package io.github.ringstate.instructor.option;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.pilot.Technique;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** What the options say of entries and recoveries is what there is. */
class RegistryWordsTest {

  @Command
  @SuppressWarnings("UnusedVariable") // picocli reads them
  private static final class Options {
    @Mixin private final EntryOptions entry = new EntryOptions();
    @Mixin private final RecoveriesOption recoveries = new RecoveriesOption();
  }

  private static String words(String option) {
    return String.join(
        "", new CommandLine(new Options()).getCommandSpec().findOption(option).description());
  }

  @Test
  void everyEntryIsOfferedAndTheStandardOneNamed() {
    String words = words("--entry");
    EntryKind.ALL.forEach(kind -> assertTrue(words.contains(kind.name()), kind::name));
    assertTrue(words.endsWith("Unless given: " + EntryKind.STANDARD.name() + "."), words);
    for (EntryKind kind : EntryKind.ALL) {
      double standard = kind.wind().standard();
      String number = Math.round(standard) + " for " + kind.name();
      assertEquals(standard != 0, words("--wind-kt").contains(number), number);
    }
  }

  @Test
  void everyRecoveryIsOffered() {
    String words = words("--recovery");
    Technique.ALL.forEach(one -> assertTrue(words.contains(one.name()), one::name));
  }

  @Test
  void aWindBelowZeroComesFromTheOtherEnd() {
    Approach ahead = new Approach(EntryKind.TAILWIND_APPROACH, -5, OptionalDouble.empty());
    assertEquals("5 kt from ahead", ahead.wind(UnitSystem.AVIATION));
    Approach behind = Approach.standard(EntryKind.TAILWIND_APPROACH);
    assertEquals("8 kt from behind", behind.wind(UnitSystem.AVIATION));
  }
}
