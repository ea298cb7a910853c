package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FallThroughTest {

  @ParameterizedTest
  @CsvSource({
    // with nothing done, the model lets a craft sink past the exit of the ring state unless the
    // ground is met before; the events of the flight say where it left
    "fly --recovery none, true",
    "fly --recovery none --height-ft 20, false", // the ground is met inside
    "fly --recovery lateral, false"
  })
  void aCraftThatFallsThroughTheRingStateIsSaidTo(String line, boolean through) {
    String said = Run.words(line);
    assertEquals(through, said.contains("falling through it"), said);
    assertEquals(through || line.contains("lateral"), said.contains("ring state left"), said);
  }

  @ParameterizedTest
  @CsvSource({"--recovery none, true", "--recovery none --clock limits, false", "'', false"})
  void aTableSaysSoToo(String options, boolean through) {
    String line = "loss --delays 1 --format text " + options;
    String said = Run.words(line.strip());
    assertEquals(through, said.contains("fell through not arrested, and the craft left"), said);
    assertEquals(through, said.contains("1.0 fell through"), said);
  }

  @ParameterizedTest
  @CsvSource({"none, through, \"yes\"", "forward, '', \"no\"", "none --clock limits, '', null"})
  void theSheetAndTheDataSayIt(String options, String word, String told) {
    String line = "loss --delays 1 --recovery " + options;
    String sheet = Run.line(line + " --pilots 20 --format html").out();
    assertEquals(!word.isEmpty(), sheet.contains("<td class=\"one\">through</td>"), sheet);
    assertEquals(!word.isEmpty(), sheet.contains("<b>through</b>"), sheet);
    String data = Run.line(line + " --format json").out().replaceAll("\\s+", "");
    assertTrue(data.contains("\"fell_through\":" + told), data);
  }
}
