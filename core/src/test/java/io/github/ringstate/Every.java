package io.github.ringstate;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/** The cases of a test that tries each value of one list with each of the others. */
public final class Every {

  private Every() {}

  /**
   * All combinations.
   *
   * @param lists the values of each argument
   * @return a case for each combination; the last argument changes fastest
   */
  public static Stream<Arguments> of(List<?>... lists) {
    Stream<Object[]> cases = Stream.of(new Object[][] {{}});
    for (List<?> list : lists) {
      cases = cases.flatMap(before -> list.stream().map(value -> with(before, value)));
    }
    return cases.map(Arguments::of);
  }

  private static Object[] with(Object[] before, Object value) {
    return Stream.concat(Stream.of(before), Stream.of(value)).toArray();
  }
}
