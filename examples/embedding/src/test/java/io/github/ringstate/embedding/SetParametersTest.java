package io.github.ringstate.embedding;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.ringstate.quantity.OutOfRangeException;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.util.List;
import org.junit.jupiter.api.Test;

class SetParametersTest {

  @Test
  void theProgramPrintsTheSetTheSpeedInSiUnitsAndTheRefusal() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    SetParameters.run(new PrintStream(bytes, true, UTF_8));

    List<String> lines = bytes.toString(UTF_8).lines().toList();
    assertEquals("mass_kg = 600.0, descent_rate_fpm = 800.0", lines.get(0));
    assertEquals("7.62 m/s", lines.get(1)); // 1500 x 0.3048 / 60, exactly
    assertEquals("mass 25.0 kg" + OutOfRangeException.OUTSIDE + "300 to 2000 kg", lines.get(2));
    assertEquals(3, lines.size());
  }
}
