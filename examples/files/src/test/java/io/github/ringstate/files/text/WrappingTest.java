package io.github.ringstate.files.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WrappingTest {

  @Test
  void linesBreakAtBlanksAndLongWordsAreCut() {
    assertEquals(List.of("ab cd", "efghi", "jkl m"), Wrapping.lines(" ab  cd efghijkl m", 5));
    assertEquals(List.of(""), Wrapping.lines("", 5));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void noWordIsLostAndNoLineIsTooLong(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 500; i++) {
      text.append("x".repeat(random.nextInt(0, 12))).append(' ');
    }
    int width = random.nextInt(12, 40);
    List<String> lines = Wrapping.lines(text.toString(), width);
    assertTrue(lines.stream().allMatch(line -> line.length() <= width && !line.isEmpty()));
    assertEquals(text.toString().strip().replaceAll("\\s+", " "), String.join(" ", lines));
  }
}
