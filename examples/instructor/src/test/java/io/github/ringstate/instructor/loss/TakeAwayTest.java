package io.github.ringstate.instructor.loss;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.conditions.HoverPower;
import io.github.ringstate.pilot.Technique;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The sentence below a table, on tables that are made up. */
class TakeAwayTest {

  private static final Conditions CONDITIONS =
      new Conditions(DemoCraft.TRAINER, StandardAtmosphere.at(0), new HoverPower(80, 82, 88));

  /** G ends on the ground, X is not arrested, N is no ring state, a number is a loss in feet. */
  private static LossBlock block(List<Double> delays, List<Technique> ways, List<String> cells) {
    List<LossRow> rows = new ArrayList<>();
    OptionalDouble none = OptionalDouble.empty();
    for (int i = 0; i < cells.size(); i++) {
      Technique way = ways.get(i / delays.size());
      double delay = delays.get(i % delays.size());
      Ending ending =
          switch (cells.get(i)) {
            case "G" -> Ending.GROUND;
            case "X" -> Ending.NOT_ARRESTED;
            case "N" -> Ending.NO_ONSET;
            default -> Ending.ARRESTED;
          };
      OptionalDouble loss =
          ending == Ending.ARRESTED
              ? OptionalDouble.of(0.3048 * Double.parseDouble(cells.get(i)))
              : ending == Ending.GROUND ? OptionalDouble.of(61) : none;
      rows.add(
          new LossRow(
              way,
              delay,
              new Outcome(ending, loss, loss, none, none, none, none, List.of()),
              false,
              Optional.empty()));
    }
    return new LossBlock(CONDITIONS, ways, delays, rows, List.of(), OptionalDouble.empty());
  }

  private static final List<Double> FOUR = List.of(0.0, 1.0, 2.0, 3.0);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // one recovery
        "FORWARD|60 90 120 180|Act at once: each second of delay costs on average 40 ft with forward.",
        "FORWARD|60 90 G G|Act at once: each second of delay costs on average 30 ft with forward"
            + " (up to 1 s); forward ends on the ground at 2 and 3 s.",
        "FORWARD|G G G G|Forward ends on the ground at every delay.",
        "FORWARD|60 G G G|Forward ends on the ground at 1 to 3 s.",
        "FORWARD|X X X X|Forward arrests the descent at no delay.",
        "NONE|X X X X|Doing nothing arrests the descent at no delay.",
        "FORWARD|N N N N|These conditions do not lead into the ring state, so the table says nothing"
            + " of what a recovery would cost.",
        // printed as 60, 60, 60, 60
        "FORWARD|60 60.1 60.2 60.4|Forward loses 60 ft at 0 s.",
        "COLLECTIVE|20 30 X X|Collective alone is not a way out and, with 10 % more power than the hover takes, loses"
            + " 20 ft at 0 s and 30 ft at 1 s and does not arrest the descent at 2 and 3 s.",
        // two recoveries
        "FORWARD LATERAL|60 90 120 180 30 60 150 200|Act at once: each second of delay costs on"
            + " average 40 ft with forward and 57 ft with lateral; forward loses least at"
            + " 2 and 3 s and lateral loses least at 0 and 1 s.",
        // 181 and 179 are both printed as 180: equal to a reader
        "FORWARD LATERAL|181 G G G 179 G G G|Forward loses least at 0 s and"
            + " lateral loses least at 0 s (alike where they share a delay); forward ends on the ground at 1 to 3 s; lateral ends on the"
            + " ground at 1 to 3 s.",
      })
  void saysWhatTheTableSays(String ways, String cells, String sentence) {
    List<Technique> columns =
        Arrays.stream(ways.split(" ", -1))
            .map(way -> Technique.named(way.toLowerCase(Locale.ROOT)).orElseThrow())
            .toList();
    assertEquals(
        sentence,
        new TakeAway(block(FOUR, columns, List.of(cells.split(" ", -1))), UnitSystem.AVIATION)
            .sentence());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void isOneSentenceForAnyTableAndCallsNothingSafe(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int n = 0; n < 300; n++) {
      List<Technique> ways = Technique.ALL.subList(random.nextInt(0, 4), random.nextInt(4, 6));
      List<Double> delays = FOUR.subList(0, random.nextInt(1, 5));
      List<String> cells = new ArrayList<>();
      for (int i = 0; i < ways.size() * delays.size(); i++) {
        cells.add(
            switch (random.nextInt(4)) {
              case 0 -> "G";
              case 1 -> "X";
              default -> Integer.toString(random.nextInt(1, 1500));
            });
      }
      String sentence = new TakeAway(block(delays, ways, cells), UnitSystem.AVIATION).sentence();
      assertTrue(sentence.matches("[A-Z][^.]*\\."), sentence);
      assertTrue(!sentence.toLowerCase(Locale.ROOT).contains("safe"), sentence);
      assertTrue(sentence.length() > 10, sentence);
    }
  }
}
